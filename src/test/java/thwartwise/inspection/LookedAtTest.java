package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Opening;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Role;
import thwartwise.crew.Refusal;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.record.SampleBoats;
import thwartwise.report.RefusalWords;
import thwartwise.sampleboats.ElectricBoat;

/** Each fact moves a figure or a verdict, and none of them for the better. */
class LookedAtTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final Boat PLAIN = SampleBoats.plain();

  /** Litres of the chamber that count; the foam block counts nine tenths while it is fastened. */
  @ParameterizedTest
  @CsvSource({
    "fore locker, CHAMBER_OPEN, false",
    "fore locker, CHAMBER_LEAKS, false",
    "fore locker, SEAL_CLAIMED, true",
    "side foam, FOAM_LOOSE, false"
  })
  void what_was_found_takes_the_chamber_out_of_the_count(
      String chamber, BoatFact fact, boolean ifProven) {
    assertThat(counted(PLAIN, chamber)).isPositive();
    Boat found = found(PLAIN, chamber, PointGravity.ADVICE, fact);
    assertThat(counted(found, chamber)).isZero();
    assertThat(
            BoatModel.of(found, TODAY).spaces().stream()
                .filter(s -> s.part().isNamedBy(chamber))
                .anyMatch(s -> s.counting().ifProven() > 0))
        .isEqualTo(ifProven);
  }

  @Test
  void a_hatch_with_a_torn_seal_means_the_chamber_behind_it() {
    Opening hatch =
        new Opening(
            "hatch",
            Vector3.of(2.75, 0, 0.2),
            0.2,
            true,
            Optional.of("lid"),
            Optional.of("fore locker"),
            Optional.empty());
    Boat boat = PLAIN.withOpenings(List.of(hatch));
    assertThat(counted(boat, "fore locker")).isPositive();
    assertThat(
            counted(
                found(boat, "hatch", PointGravity.ADVICE, BoatFact.SEAL_CLAIMED), "fore locker"))
        .isZero();
  }

  /** 17.5 kg that slide to the low side move the boat's centre of gravity there. */
  @Test
  void kit_that_is_not_fastened_slides_to_the_low_side() {
    Boat found = found(PLAIN, "battery", PointGravity.ADVICE, BoatFact.KIT_LOOSE);
    assertThat(toSide(PLAIN)).isZero();
    assertThat(toSide(found)).isGreaterThan(0.01);
  }

  @Test
  void a_bung_that_is_not_tied_counts_as_lost_with_its_minutes() {
    Opening drain =
        new Opening(
            "drain",
            Vector3.of(0, 0.2, 0.08),
            0.03,
            true,
            Optional.of("bung"),
            Optional.empty(),
            Optional.of(0.03));
    Boat boat = PLAIN.withOpenings(List.of(drain));
    assertThat(drains(boat)).isNotEmpty().allMatch(f -> f.role() == Role.INFORMATION);
    assertThat(drains(found(boat, "drain", PointGravity.ADVICE, BoatFact.BUNG_LOST)))
        .isNotEmpty()
        .allMatch(Finding::holdsBack)
        .allMatch(f -> f.value().orElseThrow() < 10 * 60);
  }

  @Test
  void a_point_that_holds_the_launch_withholds_the_recommendation_with_its_words() {
    Boat found = looked(PLAIN, "", PointGravity.HOLDS_THE_LAUNCH, Optional.empty());
    Report report = report(found);
    assertThat(report.recommendation().withheld()).isTrue();
    assertThat(report.recommendation().reasons())
        .contains(new Refusal.LookedAt("2026-06-01", "Iris", "The thing is so"))
        .extracting(refusal -> RefusalWords.of(refusal, new UnitFormat(UnitSystem.METRIC)))
        .contains(
            "Iris looked on 2026-06-01 and found this not as it should be, so nothing is"
                + " recommended: The thing is so");
  }

  @Test
  void a_point_to_be_put_right_first_holds_back_and_advice_does_not() {
    Boat first = looked(PLAIN, "", PointGravity.PUT_RIGHT_FIRST, Optional.empty());
    Boat advice = looked(PLAIN, "", PointGravity.ADVICE, Optional.empty());
    assertThat(ChecklistFindings.of(first)).hasSize(1).allMatch(Finding::holdsBack);
    assertThat(ChecklistFindings.of(advice)).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(
      value = PointCondition.class,
      names = {"AS_IT_SHOULD_BE", "NOT_LOOKED_AT", "DOES_NOT_APPLY"})
  void no_other_answer_changes_the_boat(PointCondition condition) {
    for (BoatFact fact : BoatFact.values()) {
      PointAnswer answer =
          answer("fore locker", PointGravity.HOLDS_THE_LAUNCH, Optional.of(fact), condition);
      Boat looked = PLAIN.withPointAnswers(List.of(answer));
      assertThat(BoatModel.of(looked, TODAY).boat()).isSameAs(looked);
      assertThat(ChecklistFindings.of(looked)).isEmpty();
    }
  }

  /** A claim is not made of what is known to be open. */
  @Test
  void a_torn_seal_makes_nothing_better_of_a_chamber_that_is_open() {
    Boat open = found(PLAIN, "fore locker", PointGravity.ADVICE, BoatFact.CHAMBER_OPEN);
    PointAnswer torn =
        answer(
            "fore locker",
            PointGravity.ADVICE,
            Optional.of(BoatFact.SEAL_CLAIMED),
            PointCondition.NOT_AS_IT_SHOULD_BE);
    Boat both = open.withPointAnswers(List.of(open.pointAnswers().get(0), torn));
    assertThat(BoatModel.of(both, TODAY).boat().chambers())
        .isEqualTo(BoatModel.of(open, TODAY).boat().chambers());
  }

  @Test
  void answers_stand_in_the_boat_file_and_come_back_the_same() {
    Boat found = found(PLAIN, "battery", PointGravity.PUT_RIGHT_FIRST, BoatFact.KIT_LOOSE);
    assertThat(BoatFile.parse(BoatFile.write(found), "soup.json").pointAnswers())
        .isEqualTo(found.pointAnswers());
  }

  @Test
  void an_answer_is_due_again_after_its_days_or_when_its_thing_is_changed_and_a_bad_one_stays() {
    PointAnswer good =
        answer("battery", PointGravity.ADVICE, Optional.empty(), PointCondition.AS_IT_SHOULD_BE);
    Boat same = BoatFile.parse(SampleBoats.json(), "again.json");
    assertThat(good.isDue(same, TODAY.plusDays(29))).isFalse();
    assertThat(good.isDue(same, TODAY.plusDays(30))).isTrue();
    assertThat(good.isDue(SampleBoats.with("\"mass\": 17.5", "\"mass\": 18.5"), TODAY)).isTrue();
    assertThat(
            answer(
                    "battery",
                    PointGravity.ADVICE,
                    Optional.empty(),
                    PointCondition.NOT_AS_IT_SHOULD_BE)
                .isDue(same, TODAY.plusYears(9)))
        .isFalse();
  }

  /** Nothing else of it changes: a lithium one in the place of an AGM one, weighed the same. */
  @Test
  void another_battery_in_the_place_of_the_one_looked_at_is_looked_at_again() {
    Boat before = ElectricBoat.boat();
    Boat after = BoatFile.parse(ElectricBoat.JSON.replace("\"AGM\"", "\"LiFePO4\""), "boat.json");
    assertThat(PointAnswer.mark(after, "battery"))
        .isNotEqualTo(PointAnswer.mark(before, "battery"));
    assertThat(PointAnswer.mark(after, "oars")).isEqualTo(PointAnswer.mark(before, "oars"));
  }

  /** A slip of the calendar is no look: it would stand for years. */
  @Test
  void an_answer_of_tomorrow_is_due_today() {
    PointAnswer good =
        answer("battery", PointGravity.ADVICE, Optional.empty(), PointCondition.AS_IT_SHOULD_BE);
    assertThat(good.isDue(PLAIN, TODAY.minusDays(1))).isTrue();
    assertThat(good.isDue(PLAIN, TODAY)).isFalse();
  }

  private static double counted(Boat boat, String chamber) {
    return BoatModel.of(boat, TODAY).spaces().stream()
        .filter(s -> s.part().isNamedBy(chamber))
        .mapToDouble(s -> s.counting().share())
        .sum();
  }

  private static double toSide(Boat boat) {
    LoadedBoat level = LoadedBoat.of(BoatModel.of(boat, TODAY), List.of());
    Disturbance nobodyMoves = Disturbance.moved(LoadCaseStep.of(LoadCaseStep.Act.OPEN), List.of());
    return level.toSide(nobodyMoves, 1).stream()
        .mapToDouble(b -> Math.abs(b.loading().centre().y()))
        .max()
        .orElseThrow();
  }

  private static List<Finding> drains(Boat boat) {
    return report(boat).findings().stream()
        .filter(f -> f.question().check() == CheckId.DRAIN_OPEN)
        .toList();
  }

  private static Report report(Boat boat) {
    return Inspection.of(boat, RuleSetFile.cautiousDefault(), TODAY);
  }

  private static Boat found(Boat boat, String thing, PointGravity gravity, BoatFact fact) {
    return looked(boat, thing, gravity, Optional.of(fact));
  }

  private static Boat looked(
      Boat boat, String thing, PointGravity gravity, Optional<BoatFact> fact) {
    return boat.withPointAnswers(
        List.of(answer(thing, gravity, fact, PointCondition.NOT_AS_IT_SHOULD_BE)));
  }

  private static PointAnswer answer(
      String thing, PointGravity gravity, Optional<BoatFact> fact, PointCondition condition) {
    return new PointAnswer(
        "point-" + thing,
        "System",
        thing,
        "The thing is so",
        condition,
        gravity,
        fact,
        30,
        "a note",
        "Iris",
        TODAY,
        PointAnswer.mark(PLAIN, thing));
  }
}
