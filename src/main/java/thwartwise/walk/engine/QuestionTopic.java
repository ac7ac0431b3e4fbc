package thwartwise.walk.engine;

import thwartwise.measured.Property;

/**
 * What several questions are about, as a battery or one of the chambers: the beginning of their
 * keys and of their subjects. What is asked of it stands in the table of properties.
 *
 * @param key of all of them, without the dot
 * @param subject of all of them, without the comma
 */
public record QuestionTopic(String key, String subject) {
  public String key(Property<?, ?> property) {
    return key + "." + property.key();
  }

  public String subject(Property<?, ?> property) {
    return subject + ", " + property.subject();
  }
}
