package thwartwise.record;

import static thwartwise.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.advice.Advice;
import thwartwise.boat.Boat;
import thwartwise.boat.BuoyancyReason;
import thwartwise.boat.Outfit;
import thwartwise.boat.Waters;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.files.report.OldNames;
import thwartwise.hull.HullMeasurements;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.PropertyDifference;
import thwartwise.record.Comparison.BoatChange;
import thwartwise.record.Comparison.BoatChange.Turn;

class ComparisonTest {
  private final Boat boat = SampleBoats.plain();

  @Test
  void a_record_beside_itself_shows_nothing() {
    Comparison same = compared(boat, boat);
    assertThat(same.changes()).isEmpty();
    assertThat(same.answers()).isEmpty();
    assertThat(same.margins()).isEmpty();
    assertThat(same.cause()).isEmpty();
  }

  @Test
  void kit_added_is_the_cause_when_nothing_else_changed() {
    Boat heavier = SampleBoats.withKit(boat, "second battery", 22);
    Comparison comparison = compared(boat, heavier);
    assertThat(comparison.changes())
        .containsExactly(
            new BoatChange.Carried(Optional.empty(), Optional.of(heavier.kit().get(2))));
    assertThat(comparison.cause()).contains(comparison.changes().get(0));
  }

  @Test
  void of_two_changes_neither_is_the_cause() {
    Boat other = SampleBoats.withoutKit(SampleBoats.withKit(boat, "anchor", 5), "motor");
    Comparison comparison = compared(boat, other);
    assertThat(comparison.changes()).hasSize(2);
    assertThat(comparison.cause()).isEmpty();
  }

  @Test
  void another_boat_is_no_cause() {
    Boat other = SampleBoats.with("Soup Ladle", "Egg Whisk");
    assertThat(compared(boat, SampleBoats.withKit(other, "anchor", 5)).cause()).isEmpty();
  }

  @Test
  void another_version_of_the_program_keeps_everything_else_from_being_the_cause() {
    InspectionRecord later =
        new InspectionRecord(
            OffsetDateTime.parse("2026-07-14T09:05:07Z"),
            "M. Quill",
            "0.2.0",
            SampleBoats.withKit(boat, "anchor", 5),
            SampleRecords.report());
    Comparison comparison = Comparison.of(record(boat, SampleRecords.report()), later);
    assertThat(comparison.changes())
        .contains(new BoatChange.Stated("the version of the program that reckoned"));
    assertThat(comparison.cause()).isEmpty();
  }

  @Test
  void a_leak_test_that_grew_old_is_a_change_of_its_own() {
    ChamberFigures fresh = SampleRecords.report().chambers().get(0);
    ChamberFigures old =
        new ChamberFigures(
            fresh.name(),
            fresh.volume(),
            fresh.centre(),
            0,
            false,
            new BuoyancyReason.Stated("test again"));
    Comparison comparison =
        Comparison.of(
            record(boat, chambers(fresh)),
            record(SampleBoats.withKit(boat, "anchor", 5), chambers(old)));
    assertThat(comparison.changes()).contains(new BoatChange.Counts(fresh, old));
    assertThat(comparison.cause()).isEmpty();
  }

  @Test
  void a_chamber_that_was_changed_is_not_told_twice() {
    ChamberFigures counted = SampleRecords.report().chambers().get(0);
    ChamberFigures not =
        new ChamberFigures(
            counted.name(),
            counted.volume(),
            counted.centre(),
            0,
            false,
            new BuoyancyReason.OpenChamber());
    Boat opened =
        SampleBoats.with(
            "\"filling\": \"air\", \"seal\": \"proven\",",
            "\"filling\": \"air\", \"seal\": \"claimed\",");
    Comparison comparison =
        Comparison.of(record(boat, chambers(counted)), record(opened, chambers(not)));
    assertThat(comparison.changes()).hasSize(1).hasOnlyElementsOfType(BoatChange.Space.class);
    assertThat(comparison.cause()).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"mass\": 61.0 | \"mass\": 68 | HullMass[before=61.0, after=68.0]",
        "\"thickness\": 0.006 | \"thickness\": 0.008 | the thickness of the shell: 8 mm, was 6 mm",
        "\"floor\": 0.03 | \"floor\": 0.04 | the height of the floor: 0.04 m, was 0.03 m",
        "\"z\": 0.42 | \"z\": 0.43 | Stated[what=the measured stations]",
        "\"fresh\" | \"salt\" | Stated[what=fresh or salt water]",
        "\"plywood\" | \"GRP\" | what the hull is made of: GRP, was plywood",
        "\"halfWidth\": 0.40 | \"halfWidth\": 0.38 | place stern seat CHANGED; how far out people sit: 0.38 m, was 0.4 m",
        "\"width\": 0.30 | \"width\": 0.32 | opening transom cut-out CHANGED; width: 0.32 m, was 0.3 m",
        "\"mass\": 80 | \"mass\": 81 | person aboard helm CHANGED; mass: 81 kg, was 80 kg",
        "\"kit\": | \"cleats\": [ { \"name\": \"ring\", \"x\": 3, \"y\": 0, \"z\": 0.4 } ], \"kit\":"
            + " | cleat ring ADDED",
        "\"kit\": | \"bailer\": 4, \"kit\": | the bailer: 4 litres, was none aboard",
        "\"kit\": | \"propulsion\": { \"kind\": \"manual\" }, \"kit\": | how it is driven: manual, was not said",
        "\"kit\": | \"electrics\": { \"mainSwitch\": \"red key\" }, \"kit\":"
            + " | what cuts off everything at once: red key, was nothing",
        "\"kit\": | \"electrics\": { \"battery\": { \"kit\": \"battery\", \"volts\": 12,"
            + " \"ampHours\": 80 } }, \"kit\": | label of the battery  ADDED",
        "\"kit\": | \"electrics\": { \"latitude\": -34 }, \"kit\":"
            + " | the latitude: -34 degrees, was gives nothing",
        "\"kit\": | \"proofs\": [ { \"date\": \"2026-05-02\", \"by\": \"Bea\", \"withKit\": false,"
            + " \"empty\": { \"bow\": 0.4, \"stern\": 0.4, \"port\": 0.3, \"starboard\": 0.3 },"
            + " \"outcome\": { \"agrees\": false,"
            + " \"measured\": { \"mass\": 61, \"along\": 1.7, \"height\": 0.2 },"
            + " \"measuredMayBeOff\": { \"mass\": 3, \"along\": 0.1, \"height\": 0.1 },"
            + " \"careful\": [], \"corrected\": null, \"suspect\": null }, \"boat\": \"1a\" } ], \"kit\":"
            + " | Stated[what=what was read of it afloat]",
        "\"kit\": | \"kept\": [ { \"about\": \"block\", \"reason\": \"so built\" } ], \"kit\":"
            + " | Stated[what=what looks wrong and was kept with a reason]",
        "\"kit\": | \"waters\": { \"waves\": 0.1, \"weir\": true }, \"kit\":"
            + " | the highest waves: 0.1 m, was taken as sheltered",
        "\"kit\": | \"waters\": { \"waves\": 0.1, \"weir\": true }, \"kit\":"
            + " | whether a weir is near: yes, was taken as sheltered",
        "\"kit\": | \"trialSeen\": { \"date\": \"2026-05-02\", \"by\": \"helm\", \"people\": 2,"
            + " \"mass\": 150, \"minutes\": 4, \"level\": false, \"headsClear\": true }, \"kit\":"
            + " | Stated[what=what was seen of it full of water]",
      })
  void whatever_could_move_a_figure_is_found(String there, String instead, String change) {
    assertThat(compared(boat, SampleBoats.with(there, instead)).changes())
        .extracting(ComparisonTest::text)
        .contains(change);
  }

  private static String text(BoatChange change) {
    if (change instanceof BoatChange.Single single) {
      return text(single.difference());
    }
    return change instanceof BoatChange.Named named
        ? named.noun()
            + " "
            + named.name()
            + " "
            + named.turn()
            + named.differences().stream().map(d -> "; " + text(d)).collect(Collectors.joining())
        : change.toString();
  }

  private static String text(PropertyDifference<?, ?> difference) {
    return "%s: %s, was %s"
        .formatted(
            difference.property().changeLabel(),
            difference.after(UnitFormat.METRIC),
            difference.before(UnitFormat.METRIC))
        .replace(UnitFormat.TIED, " ");
  }

  @Test
  void of_a_battery_that_was_exchanged_every_single_value_is_told() {
    String battery =
        "\"electrics\": { \"battery\": { \"kit\": \"battery\", \"volts\": 12, %s } },\"kit\":";
    Boat before =
        SampleBoats.with("\"kit\":", battery.formatted("\"ampHours\": 80, \"starter\": true"));
    Boat after =
        SampleBoats.with(
            "\"kit\":", battery.formatted("\"ampHours\": 50, \"chemistry\": \"LiFePO4\""));
    assertThat(compared(before, after).changes())
        .extracting(ComparisonTest::text)
        .containsExactly(
            "label of the battery  CHANGED; chemistry: LiFePO4, was the poorest;"
                + " charge: 50 ampere-hours, was 80 ampere-hours; made to start engines:"
                + " as one, was yes");
  }

  /**
   * A field that is not compared would let something else be named as the only cause. Whoever adds
   * one here adds it to the changes, or knows that it moves no figure.
   */
  @Test
  void no_field_of_a_boat_is_forgotten() {
    List<String> byTheTable = BoatProperties.OF_BOAT.stream().map(p -> p.property().key()).toList();
    assertThat(fields(Boat.class))
        .filteredOn(field -> !byTheTable.contains(field))
        .containsExactlyInAnyOrder(
            "name",
            "water",
            "hull",
            "openings",
            "chambers",
            "pointAnswers",
            "places",
            "kit",
            "aboard",
            "propulsion",
            "cleats",
            "waters",
            "measuredBy",
            "assumptions",
            "confirmedMeasurements",
            "observedTrial",
            "electrics",
            "outfit",
            "proofs",
            "methods");
    assertThat(fields(HullMeasurements.class))
        .containsExactlyInAnyOrder(
            "mass",
            "centre",
            "material",
            "density",
            "thickness",
            "floor",
            "stations",
            "decked",
            "skeg");
    assertThat(fields(ElectricalSystem.class))
        .containsExactlyInAnyOrder(
            "battery", "motor", "runs", "panel", "latitude", "mainSwitch", "mainWire", "circuits");
    assertThat(fields(Waters.class)).hasSameSizeAs(BoatProperties.OF_WATERS);
    assertThat(fields(Outfit.class))
        .filteredOn(field -> !byTheTable.contains(field))
        .containsExactlyInAnyOrder("rowlocks", "leaks");
  }

  private static List<String> fields(Class<?> type) {
    return Arrays.stream(type.getRecordComponents()).map(RecordComponent::getName).toList();
  }

  @Test
  void what_is_gone_is_told_as_removed() {
    assertThat(
            compared(
                    SampleBoats.with(
                        "\"kit\":",
                        "\"cleats\": [ { \"name\": \"ring\", \"x\": 3, \"y\": 0, \"z\": 0.4 } ], \"kit\":"),
                    boat)
                .changes())
        .containsExactly(new BoatChange.Named("cleat", "ring", Turn.REMOVED, List.of()));
  }

  @Test
  void an_answer_is_matched_by_question_and_kind_of_loading_whatever_the_crew() {
    Finding before = finding("at the limit: 1 of 95 kg; three fifths to port", 0.24);
    Finding after = finding("at the limit: 2 of 75 kg; three fifths to starboard", 0.18);
    Finding loaded = finding("as loaded: helm; three fifths to port", 0.3);
    Comparison comparison =
        Comparison.of(
            record(boat, findings(before, loaded)), record(boat, findings(loaded, after)));
    assertThat(comparison.answers())
        .containsExactly(new AnswerChange(Kind.AT_LIMIT, Optional.of(before), Optional.of(after)));
  }

  @Test
  void a_question_that_came_or_went_is_told() {
    Finding gone = finding("as loaded: helm", 0.24);
    Finding come = finding("as measured", 0.24);
    Comparison comparison =
        Comparison.of(record(boat, findings(gone)), record(boat, findings(come)));
    assertThat(comparison.answers())
        .containsExactly(
            new AnswerChange(Kind.AS_MEASURED, Optional.empty(), Optional.of(come)),
            new AnswerChange(Kind.AS_LOADED, Optional.of(gone), Optional.empty()));
    assertThat(comparison.answers()).allMatch(AnswerChange::outcomeChanged);
  }

  private Comparison compared(Boat before, Boat after) {
    return Comparison.of(
        record(before, SampleRecords.report()), record(after, SampleRecords.report()));
  }

  private static InspectionRecord record(Boat boat, Report report) {
    return SampleRecords.of(boat, report);
  }

  private static Report findings(Finding... findings) {
    return SampleRecords.report(SampleRecords.recommendation(), List.of(findings));
  }

  private static Report chambers(ChamberFigures... chambers) {
    Report plain = SampleRecords.report();
    return new Report(
        plain.boat(),
        plain.asLoaded(),
        plain.atLimit(),
        List.of(chambers),
        plain.findings(),
        plain.recommendation(),
        plain.capacityFigures(),
        plain.assumptions(),
        plain.ruleSet(),
        List.of(),
        Advice.NONE);
  }

  private static Finding finding(String condition, double value) {
    return OldNames.finding(
        "freeboard",
        Role.LIMITS_CREW,
        Outcome.MEETS,
        OptionalDouble.of(value),
        0.2,
        true,
        Unit.METRE,
        "ours (judgement)",
        condition,
        "");
  }
}
