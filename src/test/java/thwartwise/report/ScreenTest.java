package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.advice.Advice;
import thwartwise.archive.RecordFile;
import thwartwise.boat.Boat;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.files.report.OldNames;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.UnitSystem;
import thwartwise.page.LineWrap;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;
import thwartwise.sampleboats.OrdinaryBoats;

/** One screen holds what an inspection comes to, and says nothing twice. */
class ScreenTest {
  /** What is left of 24 rows above the record and what to type next. */
  private static final int ROWS = 21;

  private static String shown(InspectionRecord record, int rows) {
    List<String> lines = Screen.of(record, rows);
    assertThat(lines).hasSizeLessThanOrEqualTo(rows).allMatch(l -> LineWrap.columns(l) <= 80);
    return String.join("\n", lines);
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ");
  }

  private static void saysNothingTwice(String screen) {
    List<String> sentences =
        Arrays.stream(bare(screen).split("(?<=[.!?]) ")).map(ScreenTest::unlabelled).toList();
    Set<String> once = new HashSet<>();
    assertThat(sentences.stream().filter(s -> !once.add(s))).as(screen).isEmpty();
  }

  private static String unlabelled(String sentence) {
    return sentence.replaceFirst("^(Load|Seats|Dry|Filled|Wrong|First|Nobody|Mind): ", "");
  }

  private static InspectionRecord inspected(Boat boat) {
    return inspected(boat, InspectedBoats.underShipped(boat));
  }

  private static InspectionRecord inspected(Boat boat, Report report) {
    return new InspectionRecord(
        OffsetDateTime.parse("2026-11-26T09:00:00Z"), "somebody", "0.1.0", boat, report);
  }

  /** Prints the screen of every ordinary boat; some minutes. */
  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    for (Boat boat : OrdinaryBoats.all()) {
      String screen = shown(inspected(boat), ROWS);
      saysNothingTwice(screen);
      out.println(screen + "\n");
    }
  }

  private static InspectionRecord with(Finding... findings) {
    return SampleBoat.record(
        SampleRecords.report(SampleRecords.recommendation(), List.of(findings)));
  }

  private static Finding shortOf(String check, Unit unit, Double value, double limit) {
    return OldNames.finding(
        check,
        Role.LIMITS_CREW,
        Outcome.FALLS_SHORT,
        value == null ? OptionalDouble.empty() : OptionalDouble.of(value),
        limit,
        unit != Unit.DEGREE,
        unit,
        "our own rule (judgement)",
        "as loaded: helm 80 kg on stern seat",
        "");
  }

  /** Six litres in half an hour, watched by somebody, where an hour may not bring forty. */
  @Test
  void a_leak_that_is_wrong_is_also_to_be_put_right_first() {
    Finding leak =
        new Finding(
            CheckQuestion.of(CheckId.LEAK_UNDER_WAY, Measure.TIME),
            Role.LIMITS_CREW,
            Outcome.FALLS_SHORT,
            Margin.atLeast(3600, OptionalDouble.of(1800), Unit.MINUTE),
            "our own rule (judgement)",
            LoadCase.UNNAMED,
            new Note.SeamsLeak(0.04 / 1800, 0.04, "port chine", 0.75));
    InspectionRecord record = with(leak);
    assertThat(bare(shown(record, ROWS)))
        .contains("Wrong: Leaking seams under way")
        .contains("First: 1. Put right: the leaking seams, most of all the port chine.");
    assertThat(bare(TextPage.of(record, "1")))
        .contains("To do first: 1. Put right: the leaking seams, most of all the port chine.");
    Finding moored =
        new Finding(
            CheckQuestion.of(CheckId.LEAK_AT_THE_MOORING, Measure.TIME),
            Role.INFORMATION,
            Outcome.FALLS_SHORT,
            leak.margin(),
            leak.source(),
            leak.loadCase(),
            leak.note());
    assertThat(shown(with(moored), ROWS)).doesNotContain("Put right");
  }

  /** Words, figure and limit of each mishap; what the boat has rounds down, what it lacks up. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "swamped, lift to spare | KILOGRAM | -26.4 | 0"
            + " | It sinks when full of water: 27 kg too heavy.",
        "swamped, lift to spare | KILOGRAM | 12.9 | 20"
            + " | Full of water, it lifts 12 kg more than its load; it needs 20 kg.",
        "swamped, fore locker lost | KILOGRAM | -5 | 0"
            + " | It sinks when full of water with one chamber leaking: 5 kg too heavy.",
        "freeboard at rest | METRE | 0.129 | 0.2"
            + " | Its lowest edge is 0.12 m above the water; it needs 0.20 m.",
        "freeboard at rest | METRE | -0.01 | 0.2 | Its lowest edge goes under the water.",
        "three fifths to one side | DEGREE | 0.5 | 0.4"
            + " | It leans 28.7° when everyone moves to one side; limit 22.9°.",
        "three fifths to one side | DEGREE | | 0.4"
            + " | It rolls over when everyone moves to one side.",
        "swamped, heel | DEGREE | 2 | 0.2 | Full of water, it rolls over.",
        "swamped, lower end under the water | METRE | 0.25 | 0.15"
            + " | Full of water, one end goes 0.25 m under; limit 0.15 m."
      })
  void what_is_wrong_is_told_in_the_words_of_what_happens(
      String check, Unit unit, Double value, double limit, String words) {
    boolean most = check.endsWith("under the water");
    Finding f = shortOf(check, unit, value, limit);
    Finding asked =
        most
            ? new Finding(
                f.question(),
                f.role(),
                f.outcome(),
                new Margin(f.value(), f.limit(), false, unit),
                f.source(),
                f.loadCase(),
                f.note())
            : f;

    assertThat(bare(shown(with(asked), ROWS))).contains(" Wrong: " + words + " ");
  }

  @Test
  void a_boat_that_sinks_is_not_said_to_roll_over_too_and_says_so_once_of_all_its_loadings() {
    Finding sinks = shortOf("swamped, lift to spare", Unit.KILOGRAM, -26.4, 0);
    Finding less = shortOf("swamped, lift to spare", Unit.KILOGRAM, -3.0, 0);
    Finding rolls = shortOf("swamped, heel", Unit.DEGREE, null, 0.2);
    Finding leans = shortOf("three fifths to one side", Unit.DEGREE, null, 0.4);
    Finding side = shortOf("three fifths to one side, freeboard left", Unit.METRE, null, 0.05);

    assertThat(bare(shown(with(less, sinks, rolls, leans, side), ROWS)))
        .startsWith("Soup Ladle: not as it is loaded today. Load and sit as shown here. ")
        .contains(
            " Wrong: It sinks when full of water: 27 kg too heavy. It rolls over when everyone"
                + " moves to one side. Never: ");
  }

  @Test
  void a_launch_that_is_held_names_no_load_and_no_seat() {
    InspectionRecord record =
        SampleBoat.record(
            SampleRecords.report(
                SampleRecords.nothing(List.of(), "not one person meets every check"), List.of()));

    String screen = bare(shown(record, ROWS));

    assertThat(screen)
        .isEqualTo(
            "Soup Ladle: launch held. Nobody and nothing goes aboard, as the boat stands."
                + " Dry: It does not stay within its limits even with one adult."
                + " Filled: Full of water, it holds up no adult of 95 kg."
                + " Wrong: Not one person meets every check. Even with one person: swamped."
                + " Never: Going aboard as the boat stands."
                + " Mind: A recommendation, not a capacity plate and not a builder's plate. Local"
                + " rules come first. Life jackets on; try it in knee-deep water first.");
  }

  /** Who reads "nobody on the stern seat" keeps off it. */
  @Test
  void an_empty_seat_by_the_motor_is_no_seat_that_is_forbidden() {
    assertThat(bare(shown(SampleBoat.record(SampleRecords.report()), ROWS)))
        .contains(" With the stern seat empty, paddle. ")
        .doesNotContain("Nobody on");
  }

  @Test
  void every_part_stands_in_its_order_and_in_the_fewest_rows_nothing_is_lost_but_length() {
    Stream.of(99, ROWS, 17, 15)
        .map(rows -> shown(SampleBoat.record(SampleRecords.report()), rows))
        .forEach(
            screen ->
                assertThat(screen)
                    .containsSubsequence(
                        "Soup Ladle: ",
                        "\nLoad:   ",
                        "\nSeats:  ",
                        "\nDry:    ",
                        "\nFilled: ",
                        "\nWrong:  ",
                        "\nNever:  ",
                        "\nMind:   ",
                        "Local"));
  }

  static List<InspectionRecord> tenBoats() {
    InspectionRecord demo =
        RecordFile.parse(SampleBoat.resource("files/record-with-report-1.json"), "the demo's");
    List<InspectionRecord> all = new ArrayList<>(List.of(demo, with()));
    Stream.of(
            PlainHulls.pram(),
            PlainHulls.skiff(),
            PlainHulls.punt(),
            PlainHulls.canoe(),
            PlainHulls.roundDinghy(),
            PlainHulls.dory())
        .map(ScreenTest::inspected)
        .forEach(all::add);
    OrdinaryBoats.all().stream()
        .filter(boat -> List.of("16 ft canoe", "14 ft pulling boat").contains(boat.name()))
        .map(ScreenTest::inspected)
        .forEach(all::add);
    return all.stream().map(record -> advised(record, demo)).toList();
  }

  /** What could be done takes rows as well; none is looked for here. */
  private static InspectionRecord advised(InspectionRecord record, InspectionRecord demo) {
    return inspected(record.boat(), record.report().with(demo.report().advice()));
  }

  @ParameterizedTest
  @MethodSource("tenBoats")
  void the_screen_fits_a_terminal_and_says_nothing_twice(InspectionRecord record) {
    for (UnitSystem units : UnitSystem.values()) {
      saysNothingTwice(shown(record.in(units), ROWS));
    }
  }

  /** Besides only in one of two seatings: a mass is told with that one, or not at all. */
  @Test
  void what_may_be_aboard_besides_is_told_with_the_seating_it_needs() {
    assertThat(seats(new CrewLimit(1, 95, 12, List.of("stern seat"), List.of(), List.of())))
        .contains(" Seats: 1 up to 95 kg: any of the places; with 12 kg extra only stern seat ");
    assertThat(seats(new CrewLimit(1, 95, 0, List.of("stern seat"), List.of(), List.of())))
        .contains(" Seats: 1 up to 95 kg, 0 kg extra: any of the places ");
    assertThat(seats(new CrewLimit(1, 95, 12, List.of(), List.of(), List.of())))
        .contains(" Seats: 1 up to 95 kg, 12 kg extra: any of the places ");
  }

  private static String seats(CrewLimit limit) {
    Recommendation sample = SampleRecords.recommendation();
    Recommendation one =
        new Recommendation(
            1,
            95,
            130,
            12,
            95,
            1,
            1,
            1,
            sample.governedBy(),
            List.of(),
            List.of(),
            List.of(limit),
            false,
            List.of(),
            List.of(),
            false);
    return bare(shown(SampleBoat.record(SampleRecords.report(one, List.of())), ROWS));
  }

  @Test
  void a_change_that_was_only_tried_would_let_it_carry_more() {
    String kept = "record-with-report-1";
    InspectionRecord whole = RecordFile.parse(SampleBoat.resource("files/" + kept + ".json"), kept);
    assertThat(TextPage.of(whole)).contains("What would let it carry more, of all changes tried:");
  }

  // What is printed while advice is looked for must stand there still once it is found.
  @ParameterizedTest
  @CsvSource({"record-with-report-1", "record-with-report-2"})
  void the_first_lines_stand_before_any_advice_and_stay(String kept) {
    InspectionRecord whole = RecordFile.parse(SampleBoat.resource("files/" + kept + ".json"), kept);
    assertThat(whole.report().advice().pieces()).isNotEmpty();
    InspectionRecord early = inspected(whole.boat(), whole.report().with(Advice.NONE));
    for (int rows = 10; rows <= 40; rows++) {
      List<String> first = Screen.withoutAdvice(early, rows);
      assertThat(Screen.of(whole, rows))
          .as(rows + " rows")
          .startsWith(first.toArray(String[]::new));
      assertThat(first).isNotEmpty().noneMatch(line -> line.startsWith("First:"));
    }
    assertThat(Screen.withoutAdvice(early, ROWS)).anyMatch(line -> line.startsWith("Load:"));
  }
}
