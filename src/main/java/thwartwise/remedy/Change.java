package thwartwise.remedy;

import thwartwise.boat.Boat;

/**
 * One possible change.
 *
 * @param topic its subject; of several changes to one topic only the best is worth reporting
 * @param deed what to do
 * @param onlyToday whether it changes who is aboard today and nothing of the boat
 * @param boat the boat after it
 */
public record Change(String topic, Deed deed, Effort effort, boolean onlyToday, Boat boat) {

  /** A change to the boat or its kit. */
  static Change of(String topic, Deed deed, Effort effort, Boat boat) {
    return new Change(topic, deed, effort, false, boat);
  }

  /**
   * Both changes, the other one after this one.
   *
   * @param other a change to the boat after this one
   */
  Change and(Change other) {
    return new Change(
        topic + " and " + other.topic,
        new Deed.DeedPair(deed, other.deed),
        effort.and(other.effort),
        onlyToday && other.onlyToday,
        other.boat);
  }

  /** The effort of a change, least first; judgement. */
  public enum Effort {
    NONE,
    AN_HOUR,
    AN_AFTERNOON,
    A_WEEKEND;

    /** The effort of two things: two that take an hour take an afternoon (judgement). */
    public Effort and(Effort other) {
      Effort greater = compareTo(other) < 0 ? other : this;
      boolean twice = this == other && this != NONE;
      return twice ? values()[Math.min(ordinal() + 1, values().length - 1)] : greater;
    }
  }
}
