package thwartwise.plausibility;

import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;

/**
 * The result of one check of the measurements.
 *
 * @param confirmation the reason for which a measurement that looks wrong was confirmed
 * @param measured the value, short, to distinguish it from another measurement of the same thing
 * @param isConfirmedForOtherValue whether a reason is there that was given for another value
 */
public record PlausibilityFinding(
    PlausibilityId id,
    Finding finding,
    Optional<String> confirmation,
    String measured,
    boolean isConfirmedForOtherValue) {

  /** Whether nothing may be recommended until it is measured again or confirmed with a reason. */
  public boolean withholds() {
    return isDoubtful() && confirmation.isEmpty();
  }

  /** Whether it looks wrong, confirmed or not. */
  public boolean isDoubtful() {
    return finding.outcome() != Outcome.MEETS;
  }

  /**
   * The identity of the doubt, whatever its figures.
   *
   * @param name of the station, chamber, kit, cleat, place or opening it is about; blank for the
   *     whole hull
   */
  public record PlausibilityId(PlausibilityTopic topic, String name) {
    private static final String BEFORE_NAME = ":";

    static PlausibilityId of(PlausibilityTopic topic) {
      return new PlausibilityId(topic, "");
    }

    /** The text in a boat file: {@code hull-mass}, {@code station:middle}. */
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
}
