package thwartwise.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.boat.Kit;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.measured.PropertyDifference;

/**
 * What changed between two records and what came of it. Nothing is computed again: both sides are
 * as they were saved.
 *
 * @param changes on the boat, in what was stated of it, and in the rules and the program
 * @param answers every question whose answer is not the same
 * @param margins of the crew recommended in each
 */
public record Comparison(
    InspectionRecord before,
    InspectionRecord after,
    List<BoatChange> changes,
    List<AnswerChange> answers,
    List<MarginChange> margins) {
  public Comparison {
    changes = List.copyOf(changes);
    answers = List.copyOf(answers);
    margins = List.copyOf(margins);
  }

  public static Comparison of(InspectionRecord before, InspectionRecord after) {
    return new Comparison(
        before,
        after,
        BoatChanges.between(before, after),
        AnswerChange.between(before.report().findings(), after.report().findings()),
        MarginChange.between(
            before.report().recommendation().margins(), after.report().recommendation().margins()));
  }

  /**
   * The only possible cause of the difference: one piece of kit, one chamber or the hull's mass,
   * when nothing else changed. Empty with two changes, since either may be the cause.
   */
  public Optional<BoatChange> cause() {
    return changes.size() == 1 && sameBoat() && isDeed(changes.get(0))
        ? Optional.of(changes.get(0))
        : Optional.empty();
  }

  public boolean sameBoat() {
    return before.boat().name().equals(after.boat().name());
  }

  private static boolean isDeed(BoatChange change) {
    return change instanceof BoatChange.Carried
        || change instanceof BoatChange.Space
        || change instanceof BoatChange.HullMass;
  }

  /** How far inside its limit the recommended crew stays in one figure, before and after. */
  public record MarginChange(
      CheckQuestion question, Optional<Margin> before, Optional<Margin> after) {

    /** All margins that differ, in the order of the later record. */
    static List<MarginChange> between(List<QuestionMargin> before, List<QuestionMargin> after) {
      List<QuestionMargin> left = new ArrayList<>(before);
      List<MarginChange> changes = new ArrayList<>();
      for (QuestionMargin now : after) {
        Optional<QuestionMargin> was =
            left.stream().filter(old -> old.question().equals(now.question())).findFirst();
        was.ifPresent(left::remove);
        changes.add(
            new MarginChange(
                now.question(), was.map(QuestionMargin::margin), Optional.of(now.margin())));
      }
      left.forEach(
          old ->
              changes.add(
                  new MarginChange(old.question(), Optional.of(old.margin()), Optional.empty())));
      return changes.stream().filter(change -> !change.before.equals(change.after)).toList();
    }
  }

  /** One difference between the boats of two records. */
  public sealed interface BoatChange {

    /** A thing carried; without a before it was added, without an after removed. */
    record Carried(Optional<Kit> before, Optional<Kit> after) implements BoatChange {}

    /** A chamber; without a before it was added, without an after removed. */
    record Space(Optional<Chamber> before, Optional<Chamber> after) implements BoatChange {}

    /**
     * A chamber with the same measurements and tests that counts differently, for example because a
     * test expired.
     */
    record Counts(ChamberFigures before, ChamberFigures after) implements BoatChange {}

    /** The bare hull became lighter or heavier, kg. */
    record HullMass(double before, double after) implements BoatChange {}

    /**
     * Anything else: an opening, a place, a cleat, somebody aboard, what is electric.
     *
     * @param name which of several; blank where there is but one
     * @param differences of its single values, where it was changed
     */
    record Named(String noun, String name, Turn turn, List<PropertyDifference<?, ?>> differences)
        implements BoatChange {
      public Named {
        differences = List.copyOf(differences);
      }
    }

    /** A single value of the boat itself. */
    record Single(PropertyDifference<?, ?> difference) implements BoatChange {}

    /** What was stated or measured besides, in words. */
    record Stated(String what) implements BoatChange {}

    /** How its outcome changed. */
    enum Turn {
      ADDED,
      REMOVED,
      CHANGED
    }
  }
}
