package thwartwise.inspection;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.HullCorrection;
import thwartwise.boat.HullWeight;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ProofOutcome;
import thwartwise.boat.ProofOutcome.CorrectedHull;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadCase;
import thwartwise.rules.RuleBook;

/**
 * What proofs that agree do to the answer: one may take from it, two of different days may give.
 */
class HullCorrectionTest {
  private static final Boat BOAT = PlainHulls.skiff();
  private static final RuleBook BOOK = RuleBook.of(RuleSetFile.cautiousDefault());
  private static final HullWeight MEASURED = BoatModel.of(BOAT, PlainHulls.TODAY).hullWeight();
  private static final HullWeight SPREAD = new HullWeight(3, 0.02, 0.03);
  private static final HullWeight HEAVIER = moved(3, 0.02, 0.1);
  private static final HullWeight LIGHTER = moved(-3, 0.02, -0.1);

  private static HullWeight moved(double mass, double along, double height) {
    return new HullWeight(
        MEASURED.mass() + mass, MEASURED.along() + along, MEASURED.height() + height);
  }

  private static KeptProof proof(int day, HullWeight measured, HullWeight afloat, boolean current) {
    return SampleProofs.of(
        day,
        new ProofOutcome(
            true,
            measured,
            SPREAD,
            List.of(),
            Optional.of(new CorrectedHull(afloat, new HullWeight(day, 0.01, 0.02), false)),
            Optional.empty()),
        current);
  }

  private static KeptProof proof(int day, HullWeight afloat, boolean current) {
    return proof(day, MEASURED, afloat, current);
  }

  private static Boat proved(KeptProof... proofs) {
    return BOAT.withProofs(List.of(proofs));
  }

  private static HullWeight inForce(Boat boat) {
    return BoatModel.of(boat, PlainHulls.TODAY).hullWeight();
  }

  private static final double LOAD = answer(BOAT).load();

  private static QuickAnswer answer(Boat boat) {
    return QuickAnswer.of(boat, BOOK, PlainHulls.TODAY);
  }

  private static Boat stated(HullWeight weight) {
    return BOAT.withHull(
        BOAT.hull()
            .weighing(weight.mass())
            .centredAt(Vector3.of(weight.along(), 0, weight.height())));
  }

  @Test
  void one_proof_makes_the_hull_heavier_and_its_weight_higher_at_once() {
    Boat heavier = proved(proof(1, HEAVIER, true));

    assertThat(inForce(heavier).mass()).isEqualTo(HEAVIER.mass());
    assertThat(inForce(heavier).height()).isEqualTo(HEAVIER.height());
    assertThat(answer(heavier).load())
        .isLessThan(LOAD)
        .isLessThanOrEqualTo(answer(stated(HEAVIER)).load());
  }

  @Test
  void one_proof_of_a_lighter_boat_raises_nothing() {
    Boat lighter = proved(proof(1, LIGHTER, true));

    assertThat(inForce(lighter)).isEqualTo(MEASURED);
    assertThat(answer(lighter).load()).isLessThanOrEqualTo(LOAD);
    assertThat(inForce(proved(proof(1, LIGHTER, true), proof(1, LIGHTER, true))))
        .isEqualTo(MEASURED);
  }

  /** Of the two the heavier and the higher counts, and the greater spread. */
  @Test
  void two_proofs_of_different_days_raise_it() {
    HullWeight other = moved(-2, 0.04, -0.08);
    Boat twice = proved(proof(1, LIGHTER, true), proof(2, other, true));

    assertThat(inForce(twice).mass()).isCloseTo(other.mass(), within(1e-9));
    assertThat(inForce(twice).height()).isCloseTo(other.height(), within(1e-9));
    assertThat(inForce(twice).along()).isCloseTo(MEASURED.along() + 0.03, within(1e-9));
    assertThat(spread(twice)).isEqualTo(2);
    assertThat(answer(twice).load())
        .isGreaterThan(LOAD)
        .isEqualTo(answer(stated(inForce(twice))).load());
  }

  private static double spread(Boat boat) {
    return HullCorrection.of(boat).orElseThrow().mayBeOff().orElseThrow().mass();
  }

  @Test
  void a_proof_of_a_boat_that_is_measured_otherwise_now_corrects_nothing() {
    assertThat(inForce(proved(proof(1, HEAVIER, false)))).isEqualTo(MEASURED);
    Boat supposed = proved(proof(1, HEAVIER, true)).withHullMass(20);
    assertThat(inForce(supposed).mass()).isEqualTo(20);
  }

  /** A heavier hull is steadier where its weight is low: no act may gain by that. */
  @Test
  void no_act_is_allowed_by_one_proof_that_was_forbidden_without_it() {
    Boat pram = PlainHulls.pram();
    HullWeight stated = BoatModel.of(pram, PlainHulls.TODAY).hullWeight();
    HullWeight low = new HullWeight(stated.mass() + 20, stated.along(), stated.height());
    Map<String, Outcome> before = acts(pram);
    Map<String, Outcome> after = acts(pram.withProofs(List.of(proof(1, stated, low, true))));

    assertThat(before).isNotEmpty();
    assertThat(after).containsOnlyKeys(before.keySet());
    assertThat(after.keySet()).noneMatch(act -> before.get(act).isWorseThan(after.get(act)));
  }

  private static Map<String, Outcome> acts(Boat boat) {
    return Inspection.withoutAdvice(boat, BOOK, PlainHulls.TODAY).findings().stream()
        .filter(finding -> finding.role() == Role.FORBIDS_AN_ACT)
        .filter(finding -> finding.loadCase().kind() == LoadCase.Kind.AT_LIMIT)
        .collect(Collectors.toMap(f -> f.question().toString(), Finding::outcome));
  }
}
