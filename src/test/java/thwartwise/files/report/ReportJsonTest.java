package thwartwise.files.report;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Advice;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.inspection.Report;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.loadcase.Allowance;
import thwartwise.record.SampleRecords;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.FormulaNote;
import thwartwise.rules.ValidWaters.WaterStatement;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.CrewChance;
import thwartwise.spread.FigureSpread;
import thwartwise.spread.InputKind;
import thwartwise.spread.Remeasurement;
import thwartwise.uncertainty.CoverageInterval;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

class ReportJsonTest {
  private final Report report = SampleRecords.report();
  private final JsonNode json = JsonText.parse(ReportJson.write(report), Location.whole(""));

  @Test
  void the_state_afloat_has_the_promised_keys_in_the_promised_units() {
    JsonNode afloat = json.at("/asLoaded/afloat");
    assertThat(afloat.propertyNames())
        .containsExactly(
            "displacementKg",
            "centreOfGravity",
            "pose",
            "immersedVolumeM3",
            "centreOfBuoyancy",
            "waterplaneAreaM2",
            "gmM",
            "leastFreeboardM",
            "leastFreeboardAt",
            "stable");
    assertThat(afloat.at("/pose/trimDeg").doubleValue()).isCloseTo(-1.24, within(1e-12));
    assertThat(afloat.at("/pose/waterAtOriginM").doubleValue()).isEqualTo(0.1399);
    assertThat(afloat.at("/centreOfGravity/z").doubleValue()).isEqualTo(0.3);
  }

  @Test
  void the_righting_curve_is_in_whole_degrees() {
    JsonNode righting = json.at("/atLimit/righting");
    assertThat(righting.propertyNames())
        .containsExactly(
            "toward",
            "curve",
            "floodingHeelDeg",
            "floodingAt",
            "greatestMomentNm",
            "greatestMomentHeelDeg",
            "workToFloodingNm",
            "endsBecause",
            "openings");
    assertThat(righting.at("/curve/1").toString())
        .isEqualTo("{\"heelDeg\":1.0,\"armM\":0.0125,\"momentNm\":20.7}");
    assertThat(righting.at("/greatestMomentHeelDeg").doubleValue()).isEqualTo(22);
    assertThat(righting.at("/openings").toString())
        .isEqualTo(
            "[{\"name\":\"locker hatch\",\"heelDeg\":21.3,\"into\":\"fore locker\"},"
                + "{\"name\":\"drain\",\"heelDeg\":null,\"into\":\"\"}]");
  }

  @Test
  void the_margins_are_in_shown_units_and_a_share_of_the_limit() {
    assertThat(json.at("/recommendation/margins/0").toString())
        .isEqualTo(
            "{\"check\":\"swamped, fore locker lost\","
                + "\"asks\":{\"check\":\"ONE_CHAMBER_LOST\",\"measure\":\"LIFT\","
                + "\"things\":[\"fore locker\"]},\"value\":23.5,\"limit\":20.0,"
                + "\"atLeast\":true,\"unit\":\"kg\",\"shareOfLimit\":0.175}");
  }

  @Test
  void a_report_from_before_the_margins_is_read_without_them() {
    assertThat(((ObjectNode) json.at("/recommendation")).remove("margins")).isNotNull();
    String older = json.toString();
    assertThat(ReportJson.parse(older, "older").recommendation().margins()).isEmpty();
  }

  @Test
  void loose_water_is_in_litres() {
    assertThat(json.at("/asLoaded/looseWater/0").toString())
        .isEqualTo(
            "{\"litres\":40.0,\"leastFreeboardM\":0.187,\"gmM\":0.52,\"heelDeg\":0.0,\"comesBack\":true}");
  }

  @Test
  void the_swamped_state_says_how_it_lies_and_what_is_to_spare() {
    JsonNode swamped = json.at("/asLoaded/swamped");
    assertThat(swamped.at("/floats").booleanValue()).isTrue();
    assertThat(swamped.at("/stable").booleanValue()).isTrue();
    assertThat(swamped.at("/pose/word").stringValue()).isEqualTo("upright");
    assertThat(swamped.at("/spareBuoyancyKg").doubleValue()).isEqualTo(74.3);
    assertThat(swamped.at("/posesReached")).hasSize(1);
  }

  @Test
  void litres_degrees_and_kilograms_stand_where_the_report_promises_them() {
    assertThat(json.at("/chambers/0/litres").doubleValue()).isEqualTo(39.9);
    assertThat(json.at("/chambers/1/counted").booleanValue()).isFalse();
    assertThat(json.at("/findings/1/value").doubleValue()).isCloseTo(9.11, within(1e-12));
    assertThat(json.at("/findings/1/unit").stringValue()).isEqualTo("deg");
    assertThat(json.at("/findings/1/role").stringValue()).isEqualTo("limits crew");
    assertThat(json.at("/recommendation/crewKg").doubleValue()).isEqualTo(110.9);
    assertThat(json.at("/recommendation/excludedSeatings").toString())
        .isEqualTo("[[\"stern seat\"]]");
    assertThat(json.at("/recommendation/crewLimits/0").toString())
        .isEqualTo("{\"people\":1,\"eachUpToKg\":110.9,\"excludedSeatings\":[[\"stern seat\"]]}");
  }

  @Test
  void a_rule_that_takes_part_and_one_that_stands_beside_are_told_apart() {
    assertThat(json.at("/capacityFigures/0").toString())
        .isEqualTo(
            "{\"ruleSet\":\"United States\",\"formula\":\"33 CFR 183.43 persons\","
                + "\"standing\":\"takes part\",\"applies\":true,\"caps\":\"people's mass\","
                + "\"capsPeople\":true,\"massKg\":121.4,\"value\":121.4,\"unit\":\"kg\","
                + "\"has\":null,\"persons\":1,\"source\":\"33 CFR 183.43 (READ)\","
                + "\"note\":\"taken as rowed\"}");
    JsonNode beside = json.at("/capacityFigures/1");
    assertThat(beside.at("/applies").booleanValue()).isFalse();
    assertThat(beside.at("/massKg").isNull()).isTrue();
    assertThat(beside.at("/has").doubleValue()).isEqualTo(0.0399);
  }

  @Test
  void a_record_of_before_rule_sets_still_reads() {
    String older =
        ReportJson.write(report)
            .replaceFirst(
                "(?s)\"capacityFigures\": .*?\\n  \\],",
                "\"capacityFigures\": [ { \"formula\": \"33 CFR 183.37\", \"applies\": true,"
                    + " \"capsPeople\": false, \"massKg\": 423.5, \"persons\": null,"
                    + " \"source\": \"here\", \"note\": \"\" },"
                    + " { \"formula\": \"33 CFR 183.35\", \"applies\": false,"
                    + " \"capsPeople\": true, \"massKg\": 90, \"persons\": 2,"
                    + " \"source\": \"there\", \"note\": \"\" } ],");
    assertThat(ReportJson.parse(older, "report.json").capacityFigures())
        .containsExactly(
            new CapacityFigure(
                "",
                "33 CFR 183.37",
                FigureStatus.TAKES_PART,
                CapKind.LOAD,
                423.5,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                "here",
                FormulaNote.NONE),
            new CapacityFigure(
                "",
                "33 CFR 183.35",
                FigureStatus.DOES_NOT_APPLY,
                CapKind.PEOPLE,
                90,
                OptionalInt.of(2),
                OptionalDouble.empty(),
                "there",
                FormulaNote.NONE));
  }

  @Test
  void a_state_that_does_not_exist_is_null_with_a_note() {
    JsonNode state = JsonText.parse(ReportJson.write(sunk()), Location.whole("")).at("/asLoaded");
    assertThat(state.at("/afloat").isNull()).isTrue();
    assertThat(state.at("/righting").isNull()).isTrue();
    assertThat(state.at("/swamped/pose").isNull()).isTrue();
    assertThat(state.at("/swamped/stable").isNull()).isTrue();
    assertThat(state.at("/note").stringValue()).startsWith("No pose found");
  }

  @Test
  void a_figure_that_is_not_finite_is_null_and_never_a_number() {
    Finding broken =
        OldNames.finding(
            "freeboard at rest",
            Role.LIMITS_CREW,
            Outcome.NOT_ASSESSED,
            OptionalDouble.of(Double.NaN),
            Double.POSITIVE_INFINITY,
            true,
            Unit.METRE,
            "",
            "",
            "");
    String text =
        ReportJson.write(SampleRecords.report(SampleRecords.recommendation(), List.of(broken)));
    assertThat(text).contains("\"value\": null", "\"limit\": null").doesNotContain("NaN", "Infin");
  }

  @Test
  void a_report_reads_back_as_it_was() {
    assertSame(report);
    assertSame(sunk());
    assertSame(SampleRecords.report(SampleRecords.nothing(List.of(), "no mass"), List.of()));
  }

  @Test
  void how_they_sit_with_something_besides_reads_back() {
    Report there = SampleRecords.report(SampleRecords.nearlyTwo(), List.of());
    assertSame(there);
    assertThat(ReportJson.write(there)).contains("\"besidesLike\"");
  }

  /** Told only of a boat that is held on to; a record from before it was asked is of one sat in. */
  @Test
  void a_boat_that_is_held_on_to_reads_back_as_one() {
    Report held = SampleRecords.heldOnTo();
    assertSame(held);
    JsonNode told =
        JsonText.parse(ReportJson.write(held), Location.whole("")).at("/recommendation");
    assertThat(told.at("/heldOnTo").booleanValue()).isTrue();
    assertThat(json.at("/recommendation").has("heldOnTo")).isFalse();
    assertThat(ReportJson.parse(json.toString(), "older").recommendation().heldOnTo()).isFalse();
  }

  @Test
  void litres_of_a_finding_are_litres_in_the_file_and_cubic_metres_inside() {
    Finding litres =
        OldNames.finding(
            "measured litres",
            Role.INFORMATION,
            Outcome.FALLS_SHORT,
            OptionalDouble.of(0.086),
            0.1,
            true,
            Unit.LITRE,
            "",
            "",
            "");
    Report there = SampleRecords.report(SampleRecords.recommendation(), List.of(litres));
    assertThat(ReportJson.write(there)).contains("\"value\": 86.0", "\"limit\": 100.0");
    assertSame(there);
  }

  private static void assertSame(Report report) {
    assertThat(ReportJson.parse(ReportJson.write(report), "report.json"))
        .usingRecursiveComparison()
        .withComparatorForType(ReportJsonTest::nearly, Double.class)
        .withComparatorForType(
            (a, b) -> nearly(a.orElse(Double.NaN), b.orElse(Double.NaN)), OptionalDouble.class)
        .isEqualTo(report);
  }

  /** Degrees and back cost a last digit. */
  private static int nearly(Double a, Double b) {
    boolean same = Math.abs(a - b) <= 1e-12 * Math.abs(a) || Double.valueOf(a).equals(b);
    return same ? 0 : 1;
  }

  /** Records made before it was asked say nothing of the waters. */
  @Test
  void the_waters_come_back_and_an_older_report_has_none() {
    Report there =
        new Report(
            report.boat(),
            report.asLoaded(),
            report.atLimit(),
            report.chambers(),
            report.findings(),
            report.recommendation(),
            report.capacityFigures(),
            report.assumptions(),
            report.ruleSet(),
            List.of(
                new WaterStatement.Stated(WaterStatement.Kind.HOLDS_FOR, "ripples"),
                new WaterStatement.Stated(WaterStatement.Kind.NOT_FOR, "waves")),
            thwartwise.advice.Advice.NONE);
    assertSame(there);
    String older = ReportJson.write(report).replace("\"waters\": []", "\"others\": []");
    assertThat(older).contains("others");
    assertThat(ReportJson.parse(older, "report.json").waters()).isEmpty();
  }

  /** A range that no boat drawn has is null in the file and NaN again when it is read. */
  @Test
  void how_sure_the_answer_is_comes_back_and_an_older_report_was_not_judged_by_it() {
    CheckQuestion question = CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD);
    Margin margin = Margin.atLeast(0.2, OptionalDouble.of(0.25), Unit.METRE);
    BoatSpread spread =
        new BoatSpread(
            95,
            2,
            95,
            1,
            95,
            List.of(new CrewChance(1, 0.99), new CrewChance(2, 0.9)),
            List.of(
                new FigureSpread(
                    1, question, margin, 0.02, new CoverageInterval(0.21, 0.29), 0.97)),
            List.of(
                new FigureSpread(
                    0,
                    question,
                    margin,
                    Double.NaN,
                    new CoverageInterval(Double.NaN, Double.NaN),
                    0)),
            List.of(),
            List.of(new Remeasurement(InputKind.HULL_MASS, "", question, 0.6, 2)),
            31,
            new Allowance(1.05, 0.9, 0.02));

    assertSame(report.judged(report.findings(), report.recommendation(), spread));
    assertThat(ReportJson.parse(ReportJson.write(report), "report.json").spread()).isEmpty();
  }

  @Test
  void a_report_with_a_piece_cut_out_is_refused() {
    String cut = ReportJson.write(report).replace("\"loading\"", "\"loadin\"");
    assertThatThrownBy(() -> ReportJson.parse(cut, "report.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "report.json: asLoaded: the key \"loading\" is missing."
                + " Take the file as it was written.");
  }

  private static Report sunk() {
    return new Report(
        "Soup Ladle",
        SampleRecords.sunk("helm"),
        SampleRecords.sunk("nobody"),
        List.of(),
        List.of(),
        SampleRecords.nothing(List.of()),
        List.of(),
        List.of(),
        "Cautious default, 2026",
        List.of(),
        Advice.NONE);
  }
}
