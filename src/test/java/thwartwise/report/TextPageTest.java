package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.advice.Advice;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.MethodAssumption;
import thwartwise.boat.MethodAssumption.RuleFigure;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.report.OldNames;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.page.LineWrap;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;
import thwartwise.record.SampleRecords;
import thwartwise.rules.ValidWaters.WaterStatement;

@Isolated("sets the locale of the process")
class TextPageTest {
  private final Boat boat = BoatFile.parse(resource("files/soup-ladle.json"), "soup.json");

  @Test
  void the_whole_page_reads_as_one_story() {
    assertThat(page(SampleRecords.report())).isEqualTo(resource("report/soup-ladle.txt"));
  }

  @Test
  void what_was_kept_stands_with_its_reason_under_the_title() {
    String head = "by M. Quill. Who measured it was\nnot noted.\n";
    String page = resource("report/soup-ladle.txt");
    assertThat(page).contains(head);
    assertThat(TextPage.of(SampleRecords.of(SampleBoat.withKept(), SampleRecords.report())))
        .isEqualTo(page.replace(head, head + SampleBoat.KEPT));
  }

  @Test
  void how_it_was_measured_stands_under_the_title_and_what_nobody_measured_counts_for_nothing() {
    Boat said =
        boat.withMethods(
            List.of(
                new MeasuringMethod(
                    MeasurementKind.HULL_WEIGHT, Optional.empty(), MeasuringWay.BATHROOM_SCALES),
                new MeasuringMethod(
                    MeasurementKind.SOAKED_DENSITY, Optional.empty(), MeasuringWay.OFFCUT)));
    assertThat(TextPage.of(SampleRecords.of(said, SampleRecords.report())))
        .contains(
            """
            by M. Quill. Who measured it was
            not noted. How, as far as it was said: hull weight: bathroom scales. Said, but
            the boat file has no such measurement, so it counts for nothing: soaked density:
            soaked offcut.
            """);
  }

  /** By hand: 1.96 times 2 % of bathroom scales and 5 mm of a taut line. */
  @Test
  void what_the_ways_count_as_stands_among_what_was_taken_for_granted() {
    List<Assumption> assumed =
        List.of(
            new Assumption.OfMethod(
                new MethodAssumption.MeasuringWays(
                    0.033,
                    List.of(
                        new RuleFigure("bathroom-scales", 0.02, "judgement"),
                        new RuleFigure("guess", 3, "judgement"),
                        new RuleFigure("steel-tape-from-a-taut-line", 0.005, "judgement")))));
    assertThat(AssumptionWords.of(assumed, UnitFormat.METRIC))
        .containsExactly(
            "To hull and kit 4 % is added, as it was said how things were measured: bathroom"
                + " scales right to 4 % in 95 of 100 (judgement); guess off by 3 times what counts"
                + " where nobody says how (judgement); taut line right to 10\u00a0mm in 95 of 100"
                + " (judgement).");
  }

  @Test
  void a_boat_that_is_held_on_to_says_so_beside_how_many_it_holds_up() {
    assertThat(page(SampleRecords.heldOnTo()))
        .contains(
            """
            Dry, it stays up with two adults. Full of water, it holds up one adult, in the
            water and holding on. It carries two adults once a leak test proves every
            chamber tight.
            """)
        .contains(
            """
            Nobody can sit in it when it is swamped: everybody holds on to it from the
            water.
            One stiff, sleeping or frightened person a hand's breadth off the middle can tip
            it.
            """);
    assertThat(page(SampleRecords.report())).doesNotContain("holding on", "Nobody can sit in it");
  }

  @Test
  void people_ask_may_it_then_how_much_then_where_then_what_not() {
    assertThat(page(SampleRecords.report()))
        .containsSubsequence(
            "May it be launched?",
            "110 kg    all people together",
            "1 adult   of 95",
            "1 person 110 kg",
            "What nobody may do",
            "What to change, and what nobody may do",
            "Every check",
            "What holds it up when swamped",
            "How it floats",
            "What was measured",
            "What was assumed",
            "What was not looked at",
            "Before anybody steps in");
    assertThat(page(SampleRecords.report()))
        .containsOnlyOnce("not a capacity plate and not a builder's plate");
  }

  @Test
  void a_withheld_launch_is_held_with_its_reasons_and_has_no_crew() {
    String page =
        page(
            SampleRecords.report(
                SampleRecords.nothing(List.of(), "The hull was not weighed."), List.of()));
    assertThat(page)
        .contains("*** Launch held\n* The hull was not weighed.\n")
        .contains("Nobody and nothing goes aboard, as the boat stands.")
        .doesNotContain("Sitting like this")
        .doesNotContain("people in all");
  }

  @Test
  void the_waters_stand_on_the_first_sheet() {
    Report plain = SampleRecords.report();
    Report there =
        new Report(
            plain.boat(),
            plain.asLoaded(),
            plain.atLimit(),
            plain.chambers(),
            plain.findings(),
            plain.recommendation(),
            plain.capacityFigures(),
            plain.assumptions(),
            plain.ruleSet(),
            List.of(
                new WaterStatement.Stated(WaterStatement.Kind.HOLDS_FOR, "ripples"),
                new WaterStatement.Stated(WaterStatement.Kind.NOT_FOR, "waves")),
            thwartwise.advice.Advice.NONE);
    assertThat(page(there))
        .contains("Holds for: ripples.\nNot for: waves.\n")
        .containsSubsequence("May it be launched?", "Holds for: ripples", "Every check");
    assertThat(page(plain)).doesNotContain("Holds for");
  }

  @Test
  void a_launch_is_never_held_without_a_word() {
    assertThat(page(SampleRecords.report(SampleRecords.nothing(List.of()), List.of())))
        .contains("*** Launch held\n* No crew meets every check that limits the crew.\n");
  }

  @Test
  void nobody_fitting_holds_the_launch_even_when_nothing_says_withheld() {
    assertThat(page(SampleRecords.report(crew(0, false, List.of()), List.of())))
        .contains("*** Launch held\n");
  }

  @Test
  void a_borderline_check_asks_for_work_first_and_says_why_it_is_borderline() {
    Finding borderline =
        OldNames.finding(
            "freeboard at rest",
            Role.LIMITS_CREW,
            Outcome.BORDERLINE,
            OptionalDouble.of(0.2099),
            0.20,
            true,
            Unit.METRE,
            "",
            "at the limit",
            "");
    assertThat(page(SampleRecords.report(SampleRecords.recommendation(), List.of(borderline))))
        .contains(
            """
            *** Launch only after the work listed here is done
            * Only the proven chamber counts.
            * Its lowest edge is 0.209 m above the water; it needs 0.200 m; tape and scales
              are too coarse to decide.
            """)
        .contains("Freeboard at rest                  0.209 m        min 0.200 m            close")
        .doesNotContain("Nothing found against it");
  }

  @Test
  void a_boat_that_is_only_loaded_wrongly_is_to_be_loaded_otherwise() {
    String otherwise = "Not as it is loaded today. Load and sit as shown here";
    Report loaded =
        SampleRecords.report(
            SampleRecords.recommendation(),
            List.of(shortOf("as loaded: helm 80 kg on stern seat; leaning")));
    Report atLimit =
        SampleRecords.report(
            SampleRecords.recommendation(), List.of(shortOf("at the limit: nobody")));
    assertThat(page(loaded)).contains(otherwise);
    assertThat(page(atLimit)).contains("Launch only after").doesNotContain(otherwise);
  }

  private static Finding shortOf(String condition) {
    return OldNames.finding(
        "freeboard at rest",
        Role.LIMITS_CREW,
        Outcome.FALLS_SHORT,
        OptionalDouble.of(0.1),
        0.20,
        true,
        Unit.METRE,
        "",
        condition,
        "");
  }

  @Test
  void where_no_adult_fits_a_lighter_person_is_named_in_kilograms() {
    Recommendation light = crew(0, false, List.of(new CrewLimit(1, 78.9, List.of())));
    assertThat(page(SampleRecords.report(light, List.of())))
        .contains("*** Nothing found against it within the limits of this inspection")
        .contains("No adult of 95 kg may go; the limits are for somebody lighter.")
        .contains("1 person  up to 78 kg; no adult of 95 kg")
        .contains("Dry, it stays up with no adult.");
  }

  @Test
  void past_a_right_angle_no_figure_is_told() {
    Finding over =
        OldNames.finding(
            "swamped, heel",
            Role.LIMITS_CREW,
            Outcome.FALLS_SHORT,
            OptionalDouble.of(Math.toRadians(174)),
            Math.toRadians(10),
            false,
            Unit.DEGREE,
            "",
            "as loaded",
            "");
    assertThat(page(SampleRecords.report(SampleRecords.recommendation(), List.of(over))))
        .contains("* Full of water, it rolls over.")
        .contains("Swamped, heel                      rolls over     max 10.0°              SHORT")
        .doesNotContain("174");
  }

  @Test
  void an_act_that_was_not_assessed_is_not_allowed() {
    assertThat(page(SampleRecords.report()))
        .contains(
            "Hard against one side       Not assessed, so nobody does it. No pose was found.");
  }

  @Test
  void acts_that_were_met_are_named_and_nothing_is_promised() {
    Finding met =
        OldNames.finding(
            "one person standing",
            Role.FORBIDS_AN_ACT,
            Outcome.MEETS,
            OptionalDouble.of(0.09),
            0.05,
            true,
            Unit.METRE,
            "",
            "",
            "");
    assertThat(page(SampleRecords.report(SampleRecords.recommendation(), List.of(met))))
        .contains("Within the limits in calm water: one person standing. This is no")
        .doesNotContain("Never in this boat", "What happens");
  }

  @Test
  void a_boat_without_a_pose_says_so_and_shows_no_figure_for_it() {
    Report sunk =
        new Report(
            "Soup Ladle",
            SampleRecords.sunk("helm 80 kg on stern seat"),
            SampleRecords.sunk("nobody"),
            List.of(),
            List.of(),
            SampleRecords.nothing(List.of()),
            List.of(),
            List.of(),
            "Cautious default, 2026",
            List.of(),
            Advice.NONE);
    assertThat(page(sunk)).contains("No chamber and no foam: only the hull itself.");
    assertThat(sheet(sunk, 4))
        .contains("no way to float was found")
        .containsPattern("Full of water +sinks +sinks")
        .containsPattern("Lift to spare swamped +13 kg too little")
        .contains("No pose found: the water comes over the rail.")
        .doesNotContain(" m to ");
  }

  @Test
  void the_seatings_that_do_stand_beside_the_number_of_people_they_are_for() {
    assertThat(page(SampleRecords.report()))
        .containsPattern("1 person 110 kg +midships thwart\n")
        .containsPattern("2 people 75 kg +midships thwart, stern seat\n");
    assertThat(page(SampleRecords.report()))
        .contains("* Never like this: alone on stern seat; midships thwart (2).");
  }

  @Test
  void a_seating_for_which_no_mass_is_told_is_still_told() {
    Recommendation crew =
        new Recommendation(
            3,
            285,
            300,
            15,
            95,
            3,
            3,
            3,
            OldNames.factor("freeboard at rest"),
            List.of(),
            List.of(List.of("midships thwart", "midships thwart", "stern seat"), List.of()),
            List.of(
                new CrewLimit(1, 95, List.of(List.of("midships thwart"), List.of("stern seat")))),
            false,
            List.of(),
            List.of(),
            false);
    assertThat(page(SampleRecords.report(crew, List.of())))
        .contains("3 adults  of 95 kg")
        .containsPattern("1 person 95 kg +no seating will do\n");
    assertThat(page(SampleRecords.report(crew, List.of())).replaceAll("\\s+", " "))
        .contains("midships thwart (2), stern seat; nobody aboard");
  }

  @Test
  void assumptions_of_boat_and_report_are_said_once_each() {
    String bare = resource("files/soup-ladle.json").replace("\"thickness\": 0.006,", "");
    Boat guessed = BoatFile.parse(bare, "soup.json");
    List<Assumption> texts = new ArrayList<>(guessed.assumptions());
    texts.add(new Assumption.Stated("Hull centre: estimated."));
    Report plain = SampleRecords.report();
    Report report =
        new Report(
            plain.boat(),
            plain.asLoaded(),
            plain.atLimit(),
            plain.chambers(),
            plain.findings(),
            plain.recommendation(),
            plain.capacityFigures(),
            texts,
            plain.ruleSet(),
            List.of(),
            Advice.NONE);
    assertThat(sheet(SampleRecords.of(guessed, report), 6))
        .containsOnlyOnce("Shell thickness 6 mm: usual for plywood, not measured.")
        .containsOnlyOnce("Hull centre: estimated.");
  }

  @Test
  void drain_cleats_and_bailer_are_told_where_they_were_measured() {
    String fitted =
        resource("files/soup-ladle.json")
            .replace(
                "\"openings\": [",
                "\"bailer\": 8.75, \"cleats\": [ { \"name\": \"bow ring\", \"x\": 3.5, \"y\": 0,"
                    + " \"z\": 0.5 } ], \"openings\": [ { \"name\": \"drain\", \"x\": 0, \"y\":"
                    + " 0.2,"
                    + " \"z\": 0.09, \"diameter\": 0.025, \"closedBy\": \"bung\" },");
    Boat there = BoatFile.parse(fitted, "soup.json");
    assertThat(sheet(SampleRecords.of(there, SampleRecords.report()), 6).replace('\n', ' '))
        .contains("Openings below the rail: drain (25 mm across, its middle 0.09 m up, closed by")
        .contains("a bung); transom cut-out (0.3 m wide, its edge 0.38 m up).")
        .contains("* Where a line is made fast: bow ring (3.5 m forward of the aft end, on the")
        .contains("* For bailing: a bailer of 8.75 litres.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Soup\u001b[31m Ladle\u0007",
        "Soup\nLaunch only after nothing",
        "\u202eeldaL puoS",
        "an unbroken name of one hundred and more letters:"
            + " xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx"
            + "xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx",
        "🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄🥄",
        "スプーンスプーンスプーンスプーンスプーンスプーンスプーンスプーンスプーンスプーンスプーンスプーン",
        " ",
      })
  void no_name_breaks_the_page(String name) {
    String page = TextPage.of(named(name));
    assertThat(page.codePoints().filter(c -> c != '\n'))
        .noneMatch(Character::isISOControl)
        .noneMatch(c -> Character.getType(c) == Character.FORMAT);
    assertThat(page.lines())
        .allSatisfy(l -> assertThat(LineWrap.columns(l)).isLessThanOrEqualTo(80));
    assertThat(page).doesNotContain("\nLaunch only after");
  }

  @Test
  void no_line_ends_in_a_blank_and_no_figure_is_parted_from_its_unit() {
    assertThat(page(SampleRecords.report()).lines())
        .noneMatch(line -> line.endsWith(" "))
        .noneMatch(line -> line.matches("\\s*(m|kg|Nm|degrees)\\b.*"));
  }

  @Test
  void the_page_never_promises_more_than_it_knows() {
    assertThat(page(SampleRecords.report()).toLowerCase(Locale.ROOT))
        .doesNotContainPattern("\\b(safe|safely|approved|certified|pass|passed|passes|guarantee)");
  }

  @Test
  void the_page_is_the_same_in_a_country_with_other_digits() {
    String here = page(SampleRecords.report());
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(page(SampleRecords.report())).isEqualTo(here);
    } finally {
      Locale.setDefault(usual);
    }
  }

  /** A sheet with its details. */
  private String sheet(Report report, int number) {
    return sheet(SampleRecords.of(boat, report), number);
  }

  private static String sheet(InspectionRecord record, int number) {
    return TextPage.sheets(
            new RecordEntry(
                "soup-ladle/1",
                "name",
                OptionalInt.of(1),
                "hash",
                true,
                true,
                true,
                Optional.empty(),
                record))
        .get(number - 1)
        .text();
  }

  private String page(Report report) {
    return TextPage.of(SampleRecords.of(boat, report));
  }

  private static Recommendation crew(int people, boolean withheld, List<CrewLimit> lighter) {
    return new Recommendation(
        people,
        78,
        90,
        12,
        95,
        people,
        people,
        people,
        OldNames.factor(""),
        List.of(),
        List.of(),
        lighter,
        withheld,
        List.of(),
        List.of(),
        false);
  }

  /** The same boat with every name somebody could have typed replaced. */
  private InspectionRecord named(String name) {
    Boat renamed =
        new Boat(
            name,
            boat.water(),
            boat.hull(),
            List.of(hatch(name)),
            boat.chambers(),
            List.of(new Place(name, 1.7, 0.3, 0.4, 2)),
            List.of(new Kit(name, 5, Vector3.ZERO, Optional.empty(), false, Optional.of(name))),
            List.of(new Person(name, 80, name, 0)),
            boat.propulsion(),
            List.of(new Cleat(name, Vector3.ZERO)),
            Optional.of(0.008),
            boat.waters(),
            Optional.of(name),
            List.of(new Assumption.Stated(name)));
    InspectionRecord plain = SampleRecords.of(renamed, SampleRecords.report());
    return new InspectionRecord(
        plain.date(), name, plain.programVersion(), renamed, plain.report());
  }

  private static Opening hatch(String name) {
    return new Opening(
        name, Vector3.ZERO, 0.3, true, Optional.of(name), Optional.of(name), Optional.empty());
  }

  private static String resource(String name) {
    try (InputStream in = TextPageTest.class.getResourceAsStream("/thwartwise/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(name, e);
    }
  }
}
