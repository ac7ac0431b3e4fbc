package thwartwise.remedy;

import thwartwise.boat.Boat;

/**
 * One change that somebody could make.
 *
 * @param topic what it is about; of several changes to one topic only the best is worth telling
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
   * Both, where the other one is made after this one.
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

  /** What a change costs, least first; judgement. */
  public enum Effort {
    NONE,
    AN_HOUR,
    AN_AFTERNOON,
    A_WEEKEND;

    /** Of two things: two that take an hour take an afternoon (judgement). */
    public Effort and(Effort other) {
      Effort greater = compareTo(other) < 0 ? other : this;
      boolean twice = this == other && this != NONE;
      return twice ? values()[Math.min(ordinal() + 1, values().length - 1)] : greater;
    }
  }
}
