package thwartwise.checks;

/** Acts that are forbidden because they are not worked out. */
public enum UntestedAct {
  JUMPING_IN("jumping in"),
  CHANGING_PLACES("changing places under way"),
  HAULING_IN("hauling something heavy in over the side");

  private final String words;

  UntestedAct(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
