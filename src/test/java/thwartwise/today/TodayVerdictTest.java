package thwartwise.today;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.SomeWaters;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.report.OldNames;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitSystem;
import thwartwise.record.SampleRecords;
import thwartwise.sampleboats.ElectricBoat;
import thwartwise.today.TodayVerdict.Figures;
import thwartwise.today.TodayVerdict.Point;

/** The questions carry the figures of the report and of the waters. */
class TodayVerdictTest {
  private static final Boat BOAT = BoxBoat.of(4, 1.5, 0.6).place("thwart", 2, 0.3, 0.3, 2).boat();

  private static final LocalDate DAY = LocalDate.of(2026, 6, 14);

  private static List<String> questions(Boat boat) {
    return TodayVerdict.of(SampleRecords.report(), boat, DAY).points().stream()
        .map(point -> point.question().replace('\u00a0', ' '))
        .toList();
  }

  private static Map<String, String> figures(Boat boat) {
    return TodayVerdict.of(SampleRecords.report(), boat, DAY).figures().stream()
        .collect(Collectors.toMap(Figures::label, f -> f.words().replace('\u00a0', ' ')));
  }

  /** The boat of the demo, one with motor and battery, and a canoe without anything, as asked. */
  static Stream<Boat> threeBoats() {
    Boat demo;
    try (var in = TodayVerdictTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      demo = BoatFile.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), "demo");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Boat motor = BoatFile.parse(ElectricBoat.JSON, "motor");
    Boat canoe = BoxBoat.of(4.8, 0.85, 0.32).place("seat", 2, 0.25, 0.3, 2).boat();
    Stream<Boat> wet = Stream.of(demo, motor, canoe).map(TodayVerdictTest::seenAndCold);
    return Stream.concat(Stream.of(demo, motor, canoe), wet)
        .flatMap(boat -> Stream.of(boat, boat.in(UnitSystem.FEET_INCHES_POUNDS)));
  }

  private static Boat seenAndCold(Boat boat) {
    return boat.withWaters(SomeWaters.sheltered().celsius(12.9).waters())
        .withObservedTrial(Optional.of(seen(DAY)));
  }

  /** Ten of two lines can be read out at the slipway while everybody stands by. */
  @ParameterizedTest
  @MethodSource("threeBoats")
  void ten_questions_of_two_lines_are_asked(Boat boat) {
    for (Report report : List.of(SampleRecords.report(), climbing(), unproven())) {
      List<Point> points = TodayVerdict.of(report, boat, DAY).points();
      assertThat(points).hasSize(10);
      for (int i = 0; i < points.size(); i++) {
        assertThat(TodayPage.question(i + 1, points.size(), points.get(i)).lines())
            .hasSizeLessThanOrEqualTo(2)
            .allMatch(line -> line.length() <= 80);
      }
      assertThat(points.stream().map(Point::name)).doesNotHaveDuplicates();
    }
  }

  /** Neither over the side nor over the stern: the longest of the questions. */
  private static Report climbing() {
    List<Finding> findings =
        Stream.of("climbing in over the side", "climbing in over the stern")
            .map(
                act ->
                    OldNames.finding(
                        act,
                        Role.FORBIDS_AN_ACT,
                        Outcome.FALLS_SHORT,
                        OptionalDouble.of(1),
                        0,
                        true,
                        Unit.DEGREE,
                        "our own rule (judgement)",
                        "one person of 95 kg",
                        ""))
            .toList();
    return SampleRecords.report(SampleRecords.recommendation(), findings);
  }

  /** Its trial counts, since none of its chambers does. */
  private static Report unproven() {
    Report r = SampleRecords.report();
    return new Report(
        r.boat(),
        r.asLoaded(),
        r.atLimit(),
        List.of(),
        r.findings(),
        r.recommendation(),
        r.capacityFigures(),
        r.assumptions(),
        r.ruleSet(),
        r.waters(),
        r.advice());
  }

  @Test
  void kilograms_are_told_with_the_figures_rounded_down() {
    assertThat(figures(BOAT).get("People"))
        .isEqualTo(
            "one person up to 110 kg; 2 people up to 75 kg each; never more than 2 people."
                + " Dressed, jacket on");
    assertThat(figures(BOAT).get("Load")).contains("no more than 17 kg besides");
    assertThat(questions(BOAT).get(0))
        .isEqualTo(
            "Was everyone weighed, dressed, jacket on: each within the weights above, all together"
                + " within 110 kg?");
    assertThat(questions(BOAT).get(1)).contains("within 140 kg");
  }

  @Test
  void seatings_that_are_left_out_are_named() {
    assertThat(figures(BOAT).get("Seats"))
        .isEqualTo("not like this: one person on stern seat; 2 people on midships thwart");
  }

  @Test
  void an_act_that_falls_short_or_was_not_assessed_is_named_with_those_never_worked_out() {
    assertThat(figures(BOAT).get("Nobody"))
        .isEqualTo(
            "changing places under way; hard against one side; hauling something heavy in over the"
                + " side; jumping in; standing");
  }

  /** What no longer stands on the screen is told again where it is asked about. */
  @ParameterizedTest
  @MethodSource("threeBoats")
  void why_repeats_the_figures_a_question_speaks_of(Boat boat) {
    TodayVerdict today = TodayVerdict.of(SampleRecords.report(), boat, DAY);
    String whys = today.points().stream().map(Point::why).collect(Collectors.joining(" "));
    assertThat(today.figures()).hasSizeGreaterThanOrEqualTo(5);
    assertThat(today.figures()).allMatch(f -> whys.contains(f.words()));
  }

  @Test
  void the_temperature_the_file_names_is_in_the_question_rounded_to_the_cold_side() {
    Boat cold = BOAT.withWaters(SomeWaters.sheltered().celsius(12.9).waters());
    assertThat(questions(cold)).anyMatch(q -> q.contains("(the file says 12 degrees)"));
    assertThat(questions(BOAT)).noneMatch(q -> q.contains("the file says"));
  }

  @Test
  void nothing_is_asked_of_a_boat_that_is_held() {
    Report held =
        SampleRecords.report(SampleRecords.nothing(List.of(), "it is outside"), List.of());
    assertThat(TodayVerdict.of(held, BOAT, DAY).held()).containsExactly("it is outside");
    assertThat(TodayVerdict.of(held, BOAT, DAY).points()).isEmpty();
  }

  @Test
  void a_boat_is_never_held_without_a_word() {
    Report held = SampleRecords.report(SampleRecords.nothing(List.of()), List.of());
    assertThat(TodayVerdict.of(held, BOAT, DAY).held()).isNotEmpty();
  }

  /** The file's own loading may fail; then it is told not to go like that. */
  @Test
  void a_loading_of_the_file_that_falls_short_is_named_among_the_seats() {
    Report good = SampleRecords.report();
    Finding meets = good.findings().get(0);
    Finding loaded =
        new Finding(
            meets.question(),
            meets.role(),
            Outcome.FALLS_SHORT,
            meets.margin(),
            meets.source(),
            good.asLoaded().loadCase(),
            Note.NONE);
    Report report = SampleRecords.report(SampleRecords.recommendation(), List.of(loaded));
    assertThat(TodayVerdict.of(report, BOAT, DAY).held()).isEmpty();
    assertThat(TodayVerdict.of(report, BOAT, DAY).figures().get(2).words())
        .endsWith("; as loaded: helm 80 kg on stern seat");
  }

  private static ObservedTrial seen(LocalDate day) {
    return new ObservedTrial(day, "Ann Lee", 2, 150, 12, true, true, List.of("thwart", "thwart"));
  }

  @Test
  void where_a_trial_counts_only_those_go_who_sat_in_it() {
    Boat seen = BOAT.withObservedTrial(Optional.of(seen(DAY)));
    assertThat(TodayVerdict.of(unproven(), seen, DAY).points().get(0).question())
        .isEqualTo(
            "Do only those go who sat in it in today's trial, dressed as then, each on the same"
                + " seat, each within the weights above?");
  }

  private static List<String> afterTrial(LocalDate day) {
    return TodayVerdict.of(
            SampleRecords.report(), BOAT.withObservedTrial(Optional.of(seen(day))), DAY)
        .points()
        .stream()
        .map(Point::question)
        .toList();
  }

  /** A chamber counts in the report of the sample, so no trial does. */
  @Test
  void a_trial_is_asked_about_only_where_it_counts() {
    assertThat(afterTrial(DAY)).isEqualTo(afterTrial(DAY.minusDays(1)));
    assertThat(afterTrial(DAY)).noneMatch(q -> q.contains("trial"));
  }
}
