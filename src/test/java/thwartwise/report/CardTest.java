package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.files.report.OldNames;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.page.LineWrap;
import thwartwise.page.ParsedPage;
import thwartwise.page.ReadBack;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;
import thwartwise.report.Card.SwampedWords;

class CardTest {
  private static final String NUMBER = "2026-06-14T090507-1a2b3c4d";

  private final InspectionRecord soup = SampleBoat.record(SampleRecords.report());
  private final InspectionRecord held =
      SampleBoat.record(
          SampleRecords.report(
              SampleRecords.nothing(
                  List.of(new CrewLimit(1, 78, List.of())), "The hull was not weighed."),
              List.of()));

  @Test
  void the_whole_card_reads_as_whoever_steps_in_needs_it() {
    assertThat(CardPage.text(soup, NUMBER))
        .isEqualTo(SampleBoat.resource("report/soup-ladle-card.txt"));
  }

  @Test
  void what_was_kept_stands_with_its_reason_before_any_figure() {
    String banner = "*** Nothing found against it within the limits of this inspection\n";
    String card = SampleBoat.resource("report/soup-ladle-card.txt");
    assertThat(card).contains(banner);
    InspectionRecord kept = SampleRecords.of(SampleBoat.withKept(), SampleRecords.report());
    assertThat(CardPage.text(kept, NUMBER))
        .isEqualTo(card.replace(banner, banner + SampleBoat.KEPT));
  }

  @Test
  void the_card_of_a_boat_that_is_held_on_to_says_that_nobody_sits_in_it() {
    String card = SampleBoat.resource("report/soup-ladle-card.txt");
    String load =
        "140 kg    (309 lb) total load: people, kit and everything that is not built in\n";
    String sit =
        """
          for help at once. Full of water, it floats upright by calculation: sit low in
          the middle, keep still and bail.
        """;
    assertThat(card).contains(load, sit);
    assertThat(CardPage.text(SampleBoat.record(SampleRecords.heldOnTo()), NUMBER))
        .isEqualTo(
            card.replace(
                    load,
                    load
                        + """
                        Nobody can sit in it when it is swamped: everybody holds on to it from the
                        water.
                        One stiff, sleeping or frightened person a hand's breadth off the middle can tip
                        it.
                        """)
                .replace(
                    sit,
                    """
                      for help at once. Full of water, it carries nobody inside: stay in the water
                      and hold on from both sides.
                    """)
                .replace(
                    "Never in this boat: standing and hard against one side.",
                    "Never in this boat: standing, hard against one side and sitting stiff a"
                        + " little\n"
                        + "  off the middle."));
  }

  @Test
  void the_card_has_one_text_in_all_its_forms() {
    String text = squeezed(CardPage.text(soup, NUMBER)).replaceAll("={3,}|-{3,}|[*]", "");
    assertThat(squeezed(ParsedPage.of(CardPage.html(soup, NUMBER)).text())).isEqualTo(text);
    assertThat(squeezed(ReadBack.of(CardPage.pdf(soup, NUMBER)).text()).replace("•", ""))
        .contains("110kg", "1adult", "140kg")
        .contains(squeezed("Record " + NUMBER + " of 14 June 2026"))
        .contains(squeezed("Local rules come first"));
  }

  private static String squeezed(String words) {
    return words.replaceAll("[\\s\u00a0]+", "");
  }

  @Test
  void a_held_launch_says_so_in_large_words_and_names_no_number_of_people() {
    String text = CardPage.text(held, NUMBER);
    assertThat(text)
        .startsWith("Soup Ladle\n==========\n*** Launch held\n")
        .contains("Nobody and nothing goes aboard")
        .contains("* The hull was not weighed.\n")
        .contains("Record " + NUMBER)
        .doesNotContainPattern("(?i)\\b(one|two|three|\\d+) (person|people|adult)")
        .doesNotContainPattern("\\bkg\\b")
        .doesNotContain("Where they sit", "Good until");
    assertThat(CardPage.html(held, NUMBER)).contains("<p class=\"banner large\">Launch held</p>");
  }

  @Test
  void where_no_adult_fits_the_card_counts_lighter_people_by_their_kilograms() {
    Recommendation light =
        new Recommendation(
            0,
            78,
            90,
            12,
            95,
            0,
            0,
            0,
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(new CrewLimit(1, 78.9, List.of())),
            false,
            List.of(),
            List.of(),
            false);
    assertThat(CardPage.text(SampleBoat.record(SampleRecords.report(light, List.of())), NUMBER))
        .contains("78 kg     (171 lb) all people together, dressed, with one person aboard\n")
        .contains("1 person  up to 78 kg; no adult of 95 kg\n")
        .doesNotContain("0 adults");
  }

  @Test
  void what_must_be_done_first_sends_the_reader_to_the_page() {
    Finding loaded = shortOf("as loaded: helm 80 kg on stern seat; leaning");
    Finding anyway = shortOf("at the limit: nobody");
    String first = "*** Launch only after the work listed on the page of this record is done\n";
    assertThat(card(loaded)).contains(first).contains("Not as it was loaded on the day");
    assertThat(card(anyway)).contains(first).doesNotContain("Not as it was loaded on the day");
  }

  private static String card(Finding against) {
    return CardPage.text(
        SampleBoat.record(SampleRecords.report(SampleRecords.recommendation(), List.of(against))),
        NUMBER);
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
  void it_never_promises_more_than_it_knows() {
    Stream.of(soup, held)
        .map(record -> CardPage.text(record, NUMBER).toLowerCase(Locale.ROOT))
        .forEach(
            card ->
                assertThat(card)
                    .contains("not a capacity plate", "local rules come first")
                    .doesNotContainPattern("\\b(safe|safely|approved|certified|pass|passed)\\b"));
  }

  @Test
  void it_is_half_a_sheet() {
    ReadBack pdf = ReadBack.of(CardPage.pdf(soup, NUMBER));
    assertThat(pdf.sheets()).isEqualTo(1);
    // 210 mm by 148 mm.
    assertThat(pdf.width()).isBetween(595f, 596f);
    assertThat(pdf.height()).isBetween(419f, 420f);
    assertThat(pdf.fonts()).isNotEmpty().allMatch(font -> font.isEmbedded());
  }

  @Test
  void longer_words_are_set_smaller_until_they_fit_the_half_sheet() {
    InspectionRecord longer =
        OddNames.in(SampleBoat.boat(), "Soup Ladle of the Quill family ".repeat(5));
    assertThat(ReadBack.of(CardPage.pdf(longer, NUMBER)).sheets()).isEqualTo(1);
  }

  @ParameterizedTest
  @MethodSource("thwartwise.report.OddNames#all")
  void an_odd_name_is_words_on_the_card_and_nothing_else(String name) {
    InspectionRecord odd = OddNames.in(SampleBoat.boat(), name);
    ParsedPage html = ParsedPage.of(CardPage.html(odd, NUMBER));
    assertThat(html.all("script")).isEmpty();
    assertThat(html.text()).contains("110 kg (244 lb) all people together");
    assertThat(CardPage.text(odd, NUMBER).lines())
        .allMatch(line -> LineWrap.columns(line) <= 80)
        .noneMatch(line -> line.startsWith("*** Launch held"));
  }

  @ParameterizedTest
  @EnumSource(names = "UPRIGHT", mode = EnumSource.Mode.EXCLUDE)
  void a_boat_that_turns_over_when_full_is_not_to_be_sat_in(PoseOrientation lies) {
    PoseFigures pose = new PoseFigures(lies, OptionalDouble.empty(), 3, 0, true);
    assertThat(
            SwampedWords.of(new SwampedFigures(true, Optional.of(pose), List.of(pose), 20), false))
        .contains(
            "Full of water, it rolls over or stands on end: get clear and hold on from outside");
  }

  @Test
  void a_boat_that_sinks_or_was_not_found_afloat_is_not_to_be_sat_in_either() {
    assertThat(SwampedWords.of(new SwampedFigures(false, Optional.empty(), List.of(), -9), false))
        .contains("Full of water, it sinks and holds nobody up: hold on to whatever floats");
    assertThat(SwampedWords.of(new SwampedFigures(true, Optional.empty(), List.of(), 9), false))
        .contains("How it floats when full of water is not known: hold on to it from outside");
  }
}
