package thwartwise.files.boat;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.HeelMeasurement;
import thwartwise.boat.AfloatProof.MovedWeight;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.AfloatProof.TimedRoll;
import thwartwise.boat.AfloatProof.WeightToSide;
import thwartwise.boat.Boat;
import thwartwise.boat.HullWeight;
import thwartwise.boat.KeptProof;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.boat.ProofOutcome;
import thwartwise.boat.ProofOutcome.CorrectedHull;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.boat.ReadingLabel;
import thwartwise.boat.ReadingLabel.FloatedState;
import thwartwise.boat.ReadingLabel.ReadingPoint;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.PlainHulls;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;

/** Proofs afloat in the boat file, and what they are tied to. */
class ProofCodecTest {
  private static final HullWeight STATED = new HullWeight(28, 1.17, 0.16);
  private static final ProofOutcome AGREES =
      new ProofOutcome(
          true,
          STATED,
          new HullWeight(1.4, 0.02, 0.05),
          List.of("EDGE_HEIGHTS"),
          Optional.of(
              new CorrectedHull(
                  new HullWeight(29.25, 1.18, 0.17), new HullWeight(1, 0.01, 0.02), true)),
          Optional.empty());
  private static final ProofOutcome FAILS =
      new ProofOutcome(
          false,
          STATED,
          new HullWeight(1.4, 0.02, 0.05),
          List.of("EDGE_HEIGHTS"),
          Optional.empty(),
          Optional.of(
              new SuspectedMeasurement(
                  "FREEBOARD_READ",
                  "",
                  Optional.of(new ReadingLabel(FloatedState.EMPTY, ReadingPoint.BOW)),
                  0.1,
                  0.9)));

  private static AfloatProof readings(boolean kit, List<Person> people, HeelMeasurement heel) {
    Optional<RailHeights> rails = Optional.of(new RailHeights(0.421, 0.424, 0.384, 0.383));
    return new AfloatProof(
        LocalDate.of(2026, 6, 1),
        "Bea",
        kit,
        rails,
        people,
        people.isEmpty() ? Optional.empty() : rails,
        Optional.of(
            new MovedWeight(
                15, 1.1, 0.2, new WeightToSide(0.3, heel), new WeightToSide(0.31, heel))),
        Optional.of(new TimedRoll(10, 21.5)));
  }

  private static final HeelMeasurement RAILS = new HeelMeasurement.ByRails(0.345, 0.4);

  private static KeptProof kept(Boat boat, AfloatProof readings, ProofOutcome outcome) {
    return new KeptProof(readings, outcome, BoatMark.ofProof(boat, readings), true);
  }

  private static Boat readBack(Boat boat) {
    return BoatFile.parse(BoatFile.write(boat), "boat.json");
  }

  private static Boat proved(AfloatProof readings) {
    Boat pram = readBack(PlainHulls.pram());
    return pram.withProofs(List.of(kept(pram, readings, AGREES)));
  }

  private static List<Person> ann() {
    return List.of(
        new Person("Ann", 70, PlainHulls.pram().places().get(0).name(), 0, Optional.empty()));
  }

  @Test
  void proofs_come_back_as_they_were_and_fit_the_schema() {
    Boat pram = readBack(PlainHulls.pram());
    Boat proved =
        pram.withProofs(
            List.of(
                kept(pram, readings(true, ann(), RAILS), AGREES),
                kept(
                    pram,
                    readings(false, List.of(), new HeelMeasurement.ByPendulum(1.2, 0.06)),
                    FAILS),
                kept(
                    pram,
                    readings(false, List.of(), new HeelMeasurement.ByLevel(Math.toRadians(4.5))),
                    AGREES)));

    assertThat(readBack(proved)).isEqualTo(proved);
    SchemaCheck schema =
        new SchemaCheck(
            JsonText.parse(
                Layout.of(CanonicalNumbers.in(BoatSchema.tree())), Location.whole("schema")));
    assertThat(schema.faults(JsonText.parse(BoatFile.write(proved), Location.whole("boat.json"))))
        .isEmpty();
  }

  @Test
  void a_proof_of_a_hull_that_was_measured_otherwise_is_no_longer_current() {
    Boat heavier = proved(readings(false, ann(), RAILS)).withHullMass(30);

    assertThat(readBack(heavier).proofs()).extracting(KeptProof::current).containsExactly(false);
    assertThat(readBack(readBack(heavier)).proofs())
        .extracting(KeptProof::current)
        .containsExactly(false);
  }

  /** Kit that stayed ashore, and a seat nobody sat on, were not aboard. */
  @Test
  void what_was_not_aboard_does_not_matter_to_a_proof() {
    Kit cushion =
        new Kit("cushion", 1, Vector3.of(1, 0, 0.3), Optional.empty(), false, Optional.empty());
    assertThat(current(proved(readings(false, List.of(), RAILS)), cushion)).isTrue();
    assertThat(current(proved(readings(true, List.of(), RAILS)), cushion)).isFalse();
  }

  private static boolean current(Boat boat, Kit more) {
    List<Kit> kit = new ArrayList<>(boat.kit());
    kit.add(more);
    return readBack(boat.withKit(kit)).proofs().get(0).current();
  }

  @Test
  void a_proof_without_an_outcome_is_refused_in_one_line() {
    String json =
        BoatFile.write(proved(readings(false, List.of(), RAILS)))
            .replace("\"outcome\"", "\"outcom\"");

    Assertions.assertThatThrownBy(() -> BoatFile.parse(json, "boat.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "boat.json: proof 1: the key \"outcom\" is not known here; the nearest known one is"
                + " \"outcome\". Correct it or take it out.");
  }

  @Test
  void the_last_proof_by_its_day_holds_the_launch_or_lifts_that() {
    Boat pram = readBack(PlainHulls.pram());
    AfloatProof first = readings(false, List.of(), RAILS);
    KeptProof fails = kept(pram, first, FAILS);
    KeptProof agrees = kept(pram, on(first, LocalDate.of(2026, 6, 3)), AGREES);

    assertThat(KeptProof.holding(List.of())).isEmpty();
    assertThat(KeptProof.holding(List.of(fails))).contains(fails);
    assertThat(KeptProof.holding(List.of(agrees, fails))).isEmpty();
    assertThat(KeptProof.holding(List.of(kept(pram, first, AGREES), fails))).contains(fails);
    assertThat(KeptProof.holding(List.of(fails, kept(pram, first, AGREES)))).isEmpty();
  }

  private static AfloatProof on(AfloatProof proof, LocalDate day) {
    return new AfloatProof(
        day,
        proof.by(),
        proof.withKit(),
        proof.empty(),
        proof.people(),
        proof.seated(),
        proof.moved(),
        proof.roll());
  }
}
