package thwartwise.plausibility;

import java.util.Optional;

/**
 * Which doubt it is, whatever its figures come to.
 *
 * @param name of the station, chamber, kit, cleat, place or opening it is about; blank for the
 *     whole hull
 */
public record PlausibilityId(PlausibilityTopic topic, String name) {
  private static final String BEFORE_NAME = ":";

  static PlausibilityId of(PlausibilityTopic topic) {
    return new PlausibilityId(topic, "");
  }

  /** As it stands in a boat file: {@code hull-mass}, {@code station:middle}. */
  public String text() {
    return topic.isNamed() ? topic.key() + BEFORE_NAME + name : topic.key();
  }

  /** The inverse of {@link #text}; empty when there is no such doubt. */
  public static Optional<PlausibilityId> parse(String text) {
    String[] parts = text.split(BEFORE_NAME, 2);
    String name = parts.length == 2 ? parts[1] : "";
    return PlausibilityTopic.of(parts[0])
        .filter(topic -> topic.isNamed() ? !name.isBlank() : parts.length == 1)
        .map(topic -> new PlausibilityId(topic, name));
  }
}
