package thwartwise.remedy;

/** What a change costs, least first; judgement. */
public enum Effort {
  NONE,
  AN_HOUR,
  AN_AFTERNOON,
  A_WEEKEND
}
