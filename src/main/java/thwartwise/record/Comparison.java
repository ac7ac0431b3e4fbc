package thwartwise.record;

import java.util.List;
import java.util.Optional;

/**
 * What changed between two records and what came of it. Nothing is reckoned anew: both sides say
 * what they said when they were kept.
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
   * What alone can have caused the difference: a thing carried, a chamber or the hull's mass, when
   * nothing else changed. With two changes nobody can say which of them it was.
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
}
