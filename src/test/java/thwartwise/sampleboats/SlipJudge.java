package thwartwise.sampleboats;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.checks.FindingText;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.hull.UnusableBoat;
import thwartwise.inspection.QuickAnswer;
import thwartwise.json.UnusableInput;
import thwartwise.plausibility.Plausibility;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.rules.RuleSet;

/** Puts a boat written down wrongly through reader, doubts and limits, as its owner would. */
final class SlipJudge {
  /** A millimetre of tape or a tenth of a kilogram may move an answer by as much. */
  private static final double LITTLE = 2;

  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private final Map<Boat, QuickAnswer> known = new ConcurrentHashMap<>();
  private final Map<Boat, Optional<String>> caught = new ConcurrentHashMap<>();

  /**
   * What became of it.
   *
   * @param note the message, the doubt, or both answers
   */
  record Verdict(SlipOutcome outcome, String note) {}

  /** The message or doubt by which it is caught; quick. */
  Optional<String> caught(SlippedBoat slip) {
    return caught.computeIfAbsent(slip.entered(), SlipJudge::caughtIn);
  }

  private static Optional<String> caughtIn(Boat entered) {
    try {
      Boat read = BoatFile.parse(BoatFile.write(entered), "the boat");
      List<PlausibilityFinding> doubts =
          Plausibility.of(BoatModel.of(read, OrdinaryBoats.TODAY), RULES);
      return doubts.stream()
          .filter(PlausibilityFinding::withholds)
          .findFirst()
          .map(d -> FindingText.check(d.finding()) + ": " + d.finding().note());
    } catch (UnusableInput | UnusableBoat e) {
      return Optional.of(e.getMessage());
    }
  }

  Verdict of(SlippedBoat slip) {
    Optional<String> caught = caught(slip);
    if (caught.isPresent()) {
      return new Verdict(SlipOutcome.CAUGHT, caught.get());
    }
    QuickAnswer right = answer(slip.truth());
    QuickAnswer wrong = answer(slip.entered());
    String note = words(right) + " became " + words(wrong);
    if (isAbove(wrong, right)) {
      return new Verdict(SlipOutcome.RAISED, note);
    }
    return new Verdict(isAbove(right, wrong) ? SlipOutcome.LOWERED : SlipOutcome.UNCHANGED, note);
  }

  private static boolean isAbove(QuickAnswer a, QuickAnswer b) {
    return a.crew() > b.crew() + LITTLE || a.load() > b.load() + LITTLE;
  }

  private static String words(QuickAnswer a) {
    return String.format(
        Locale.ROOT, "%d adults, %.0f kg of people, load %.0f kg", a.people(), a.crew(), a.load());
  }

  private QuickAnswer answer(Boat boat) {
    return known.computeIfAbsent(boat, b -> QuickAnswer.of(b, RULES, OrdinaryBoats.TODAY));
  }
}
