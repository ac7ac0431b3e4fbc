package thwartwise.report;

import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Measure;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.measure.Rounding;
import thwartwise.record.Comparison;
import thwartwise.record.InspectionRecord;

/**
 * Why less is recommended than before, although the change may sound like a gain (more buoyancy,
 * ballast, a higher rail): which check governs now, and how more weight or lift works against it.
 */
final class DecreaseWords {
  private static final String DEEPER =
      "everything added has weight, also ballast, foam and planks, and lowers the lowest edge";
  private static final String HEEL =
      "weight high up makes it lean; weight low down steadies it but lowers it, so that less side"
          + " is"
          + " left when it leans";
  private static final String STIFF =
      "people who lean with the boat are weight high up; more people, higher seats or a narrower"
          + " waterline make it come upright less";
  private static final String LIFT =
      "everything added has weight; only what displaces more water than its own weight lifts";
  private static final String SWAMPED_HEEL =
      "full of water, it floats on its remaining buoyancy alone: lift low down or near the middle"
          + " line raises boat and people without steadying them, and lifts chambers along the"
          + " sides"
          + " out of the water, where they steady nothing";
  private static final String ENDS =
      "lift at one end or weight at the other tips it, and the lower end goes deeper";

  private DecreaseWords() {}

  /** The sentence; blank where nothing fell, or where either recommends nothing. */
  static String of(Comparison comparison) {
    Recommendation after = comparison.after().report().recommendation();
    Recommendation before = comparison.before().report().recommendation();
    boolean fell =
        after.people() < before.people()
            || Rounding.wholeDown(after.crew()) < Rounding.wholeDown(before.crew())
            || Rounding.wholeDown(room(comparison.after()))
                < Rounding.wholeDown(room(comparison.before()));
    return fell && !before.withheld() && !after.withheld() ? sentence(after) : "";
  }

  /** What the load limit leaves besides the listed kit; less kit is no decrease. */
  private static double room(InspectionRecord record) {
    return record.report().recommendation().load() - record.boat().kitMass();
  }

  private static String sentence(Recommendation after) {
    return governs(after)
        .map(q -> "Less is recommended because of \"" + CheckWords.of(q) + "\": " + physics(q))
        .orElse("");
  }

  /** What stops the next person, or, where only places are lacking, what is nearest its limit. */
  private static Optional<CheckQuestion> governs(Recommendation after) {
    Stream<CheckQuestion> next =
        after.governedBy().stream()
            .flatMap(
                f ->
                    f instanceof LimitingFactor.ByCheck check
                        ? Stream.of(check.question())
                        : Stream.empty());
    return Stream.concat(next, after.margins().stream().map(QuestionMargin::question))
        .filter(question -> !physics(question).isEmpty())
        .findFirst();
  }

  /** For any lost chamber, lift is what is missing. */
  static String physics(CheckQuestion question) {
    return switch (question.check()) {
      case FREEBOARD_AT_REST -> DEEPER;
      case THREE_FIFTHS_TO_ONE_SIDE -> HEEL;
      case STIFF_OFF_THE_MIDDLE -> STIFF;
      case SWAMPED_LIFT, ONE_CHAMBER_LOST -> LIFT;
      case SWAMPED_LEVEL -> question.measure() == Measure.HEEL ? SWAMPED_HEEL : ENDS;
      case SWAMPED_MARGIN -> SWAMPED_HEEL;
      default -> "";
    };
  }
}
