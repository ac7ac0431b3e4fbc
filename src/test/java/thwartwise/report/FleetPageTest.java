package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.measure.PrintableText;
import thwartwise.page.LineWrap;
import thwartwise.page.ParsedPage;
import thwartwise.record.FleetRow;
import thwartwise.record.OverdueItem;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class FleetPageTest {

  @Test
  void the_boats_stand_in_one_table_and_a_bad_file_is_a_row() {
    List<FleetRow> rows =
        List.of(
            new FleetRow.OfBoat(
                "Egg Whisk", Optional.empty(), List.of(new OverdueItem.FirstInspection())),
            new FleetRow.OfBoat(
                "Soup Ladle",
                Optional.of(SampleRecords.of(SampleBoats.plain(), SampleRecords.report())),
                List.of()),
            new FleetRow.OfFile(
                "broken.json",
                "line 1, column 47: the text ends too early."
                    + " Close the open quote or bracket, or copy it again."));
    assertThat(FleetPage.of(rows, LocalDate.of(2026, 6, 20)))
        .isEqualTo(
            """
            Boats on 2026-06-20
            ===================
            Boat             Inspected  Verdict           Crew       Load    Overdue
            ---------------- ---------- ----------------- ---------- ------- ---------------
            Egg Whisk        never      none              not known  not     Never
                                                                     known   inspected.

            Soup Ladle       2026-06-14 Nothing found     one adult, 140 kg  nothing
                                        against it within 110 kg
                                        the limits of
                                        this inspection

            broken.json      Cannot be used: line 1, column 47: the text ends too early.
                             Close the open quote or bracket, or copy it again.

            Crew and load are what the last record recommends, people dressed and with life
            jackets on; its page says for which waters and on what conditions. A
            recommendation, not a capacity plate and not a builder's plate. Local rules come
            first, and whoever is in charge of the water has the last word.
            """);
  }

  @Test
  void no_line_is_wider_than_the_page_whatever_a_boat_is_called() {
    String name = "湯".repeat(40) + " " + "x".repeat(90) + "\u001b[2J";
    String page =
        FleetPage.of(
            List.of(
                new FleetRow.OfBoat(
                    name, Optional.empty(), List.of(new OverdueItem.FirstInspection())),
                new FleetRow.OfFile(name, name)),
            LocalDate.of(2026, 6, 20));
    assertThat(page.lines()).allMatch(line -> LineWrap.columns(line) <= 80);
    assertThat(page).doesNotContain("\u001b");
  }

  @ParameterizedTest
  @MethodSource("thwartwise.report.OddNames#all")
  void as_a_page_for_a_browser_an_odd_name_is_words_and_nothing_else(String name) {
    String html =
        FleetPage.html(
            List.of(
                new FleetRow.OfBoat(
                    name,
                    Optional.of(OddNames.in(SampleBoat.boat(), name)),
                    List.of(new OverdueItem.LeakTest(name, LocalDate.of(2025, 5, 2)))),
                new FleetRow.OfFile(name, name)),
            LocalDate.of(2026, 6, 20));
    ParsedPage page = ParsedPage.of(html);
    String shown = PrintableText.of(name.strip().replaceAll("\\s+", " "));
    assertThat(page.all("th").stream().map(ParsedPage::words))
        .containsSequence("Boat", "Inspected", "Verdict", "Crew", "Load", "Overdue", shown)
        .endsWith(shown);
    assertThat(page.all("script")).isEmpty();
    assertThat(page.text())
        .containsSubsequence(
            "Boats on 2026-06-20",
            "Nothing found against it within the limits of this inspection",
            "one adult, 110 kg",
            "140 kg",
            "Cannot be used: ",
            "not a capacity plate",
            "Local rules come first");
  }
}
