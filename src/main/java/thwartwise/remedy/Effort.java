package thwartwise.remedy;

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
