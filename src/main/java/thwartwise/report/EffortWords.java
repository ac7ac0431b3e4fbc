package thwartwise.report;

import thwartwise.remedy.Change.Effort;

/** The effort of a change, in words. */
public final class EffortWords {
  private EffortWords() {}

  public static String of(Effort effort) {
    return switch (effort) {
      case NONE -> "nothing to build";
      case AN_HOUR -> "about an hour";
      case AN_AFTERNOON -> "about an afternoon";
      case A_WEEKEND -> "about a weekend";
    };
  }
}
