package thwartwise.shell;

import java.util.Locale;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.measure.Reading;
import thwartwise.measure.YesOrNo;

/** Reads the answer to a point of a checklist: as it should be or not, not looked at, or n/a. */
final class ConditionReader {
  private static final String NOT_UNDERSTOOD =
      " is none of the answers. Type yes, no or n/a, Enter for not looked at, a note behind a"
          + " comma; or why, back, list or leave.";

  private static final String NOT_CLEAR =
      " may mean two things. Type no (not as it should be) or n/a (does not apply).";

  private ConditionReader() {}

  /**
   * The word none means n/a for a thing that the boat does not have, and no for a requirement that
   * is not met.
   */
  static Reading<PointCondition> read(String word) {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "", "?", "skip", "don't know", "not looked at" ->
          understood(PointCondition.NOT_LOOKED_AT);
      case "n/a", "na", "does not apply" -> understood(PointCondition.DOES_NOT_APPLY);
      case "none", "nothing", "never", "-" -> Reading.refused(NOT_CLEAR);
      case "ok" -> understood(PointCondition.AS_IT_SHOULD_BE);
      default -> yesOrNo(word);
    };
  }

  private static Reading<PointCondition> yesOrNo(String word) {
    return YesOrNo.read(word) instanceof Reading.Understood<Boolean> said
        ? understood(
            said.value() ? PointCondition.AS_IT_SHOULD_BE : PointCondition.NOT_AS_IT_SHOULD_BE)
        : Reading.refused(NOT_UNDERSTOOD);
  }

  private static Reading<PointCondition> understood(PointCondition condition) {
    return Reading.understood(condition, condition.word());
  }
}
