package thwartwise.walk.engine;

import thwartwise.measured.Property;

/**
 * The subject of several questions, such as the battery or one chamber: the beginning of their keys
 * and subjects. The table of properties says what is asked.
 *
 * @param key the common beginning of their keys, without the dot
 * @param subject the common beginning of their subjects, without the comma
 */
public record QuestionTopic(String key, String subject) {
  public String key(Property<?, ?> property) {
    return key + "." + property.key();
  }

  public String subject(Property<?, ?> property) {
    return subject + ", " + property.subject();
  }
}
