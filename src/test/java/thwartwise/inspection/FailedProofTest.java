package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.HullWeight;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ProofOutcome;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Refusal;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.UnitFormat;
import thwartwise.report.RefusalWords;
import thwartwise.rules.RuleBook;
import thwartwise.today.TodayVerdict;

/** A boat that did not float as it was measured stays ashore. */
class FailedProofTest {
  private static final SuspectedMeasurement WEIGHT =
      new SuspectedMeasurement("HULL_MASS", "", Optional.empty(), 29.2, 0.96);
  private static final Boat PRAM = PlainHulls.pram();
  private static final Refusal REFUSAL =
      new Refusal.FailedProof("2026-06-01", "Bea", Optional.of(WEIGHT));

  private static KeptProof proof(int day, boolean agrees) {
    HullWeight some = new HullWeight(28, 1.17, 0.16);
    return SampleProofs.of(
        day,
        new ProofOutcome(
            agrees,
            some,
            some,
            List.of(),
            Optional.empty(),
            agrees ? Optional.empty() : Optional.of(WEIGHT)),
        false);
  }

  private static Report inspected(KeptProof... proofs) {
    return Inspection.withoutAdvice(
        PRAM.withProofs(List.of(proofs)),
        RuleBook.of(RuleSetFile.cautiousDefault()),
        PlainHulls.TODAY);
  }

  /** Even where the boat is measured otherwise since: the mark alone proves nothing. */
  @Test
  void nothing_is_recommended_and_nobody_goes_today() {
    Report report = inspected(proof(1, false));

    assertThat(report.recommendation().withheld()).isTrue();
    assertThat(report.recommendation().people()).isZero();
    assertThat(report.recommendation().reasons()).contains(REFUSAL);
    assertThat(report.isUnrestricted()).isFalse();
    assertThat(TodayVerdict.of(report, PRAM, PlainHulls.TODAY).held())
        .contains(RefusalWords.of(REFUSAL, UnitFormat.METRIC));
  }

  @Test
  void a_later_proof_that_agrees_lifts_it_and_an_earlier_one_does_not() {
    assertThat(inspected(proof(1, false), proof(2, true)).recommendation().withheld()).isFalse();
    assertThat(inspected(proof(2, false), proof(1, true)).recommendation().withheld()).isTrue();
  }

  /** A weight moved across alone says nothing of how heavy the boat is. */
  @Test
  void a_later_proof_that_reads_less_does_not_lift_it() {
    KeptProof all = proof(1, false);
    KeptProof less = SampleProofs.reading(proof(2, true), Optional.empty(), false);

    assertThat(KeptProof.holding(List.of(all, less))).contains(all);
    assertThat(KeptProof.holding(List.of(all, less, proof(3, true)))).isEmpty();
  }

  /** What was wrong may lie with what was aboard. */
  @Test
  void one_without_the_kit_does_not_lift_one_with_it() {
    Optional<RailHeights> rails = proof(1, false).readings().empty();
    KeptProof laden = SampleProofs.reading(proof(1, false), rails, true);

    assertThat(KeptProof.holding(List.of(laden, proof(2, true)))).contains(laden);
    assertThat(KeptProof.holding(List.of(laden, SampleProofs.reading(proof(2, true), rails, true))))
        .isEmpty();
  }

  @Test
  void nobody_is_given_a_seat() {
    var answer =
        CrewSeating.of(
            BoatModel.of(PRAM.withProofs(List.of(proof(1, false))), PlainHulls.TODAY),
            RuleBook.of(RuleSetFile.cautiousDefault()),
            List.of(NamedPerson.weighed("Ann", 60)));

    assertThat(answer.allMayGo()).isFalse();
  }

  @Test
  void it_says_when_by_whom_and_what_is_most_likely_wrong() {
    assertThat(RefusalWords.of(REFUSAL, UnitFormat.METRIC))
        .isEqualTo(
            "read afloat on 2026-06-01 by Bea, the boat did not float as it was measured, so"
                + " nothing is recommended until it is measured again and agrees, or a later proof that reads as much does; most likely"
                + " wrong is the hull's weight: about 30\u00a0kg more than stated");
  }
}
