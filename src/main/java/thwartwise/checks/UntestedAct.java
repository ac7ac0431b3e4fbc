package thwartwise.checks;

/** Acts that are forbidden because they are not assessed. */
public enum UntestedAct {
  JUMPING_IN,
  CHANGING_PLACES,
  HAULING_IN
}
