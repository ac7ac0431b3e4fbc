package thwartwise.checks;

/** Which of the figures of a check it is. */
public enum Measure {
  OFF_THE_MIDDLE,
  HALF_TO_ONE_SIDE,
  HEEL,
  FREEBOARD,
  HIGHER_END,
  LIFT,
  LOWER_END,
  OUT_OF_UPRIGHT,
  SWING,
  PULL,
  PULL_ABEAM,
  WORK,
  EFFORT,
  EFFORT_WITH_A_LINE,
  TIME,
  RAIN,
  FIRST_EDGE_UNDER,
  NO_LONGER_COMES_BACK,
  POWER,
  VOLUME,
  DISTANCE,
  MASS,
  SEATS,
  AS_MEASURED
}
