package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.record.FleetRow;
import thwartwise.record.OverdueItem;
import thwartwise.record.SampleBoats;
import thwartwise.record.SampleRecords;

class FleetCsvTest {

  @Test
  void each_boat_is_a_line_that_ends_as_the_standard_says() {
    List<FleetRow> rows =
        List.of(
            new FleetRow.OfBoat(
                "Soup Ladle",
                Optional.of(SampleRecords.of(SampleBoats.plain(), SampleRecords.report())),
                List.of(
                    new OverdueItem.LeakTest("fore locker", LocalDate.of(2025, 5, 2)),
                    new OverdueItem.ChangedFile())),
            new FleetRow.OfBoat(
                "Egg Whisk", Optional.empty(), List.of(new OverdueItem.FirstInspection())),
            new FleetRow.OfFile("broken.json", "line 1, column 2: the text ends too early."));
    assertThat(FleetCsv.of(rows))
        .isEqualTo(
            "boat,inspected,verdict,people,crew kg,load kg,overdue,unusable\r\n"
                + "Soup Ladle,2026-06-14,Nothing found against it within the limits of this inspection,"
                + "1,110,140,"
                + "leak test of fore locker of 2025-05-02; boat file changed since the last record,\r\n"
                + "Egg Whisk,,,,,,never inspected,\r\n"
                + "broken.json,,,,,,,\"line 1, column 2: the text ends too early.\"\r\n");
  }

  @Test
  void a_launch_that_is_held_has_no_crew_there_either() {
    var held = SampleRecords.report(SampleRecords.nothing(List.of(), "no"), List.of());
    var record = SampleRecords.of(SampleBoats.plain(), held);
    assertThat(
            FleetCsv.of(List.of(new FleetRow.OfBoat("Soup Ladle", Optional.of(record), List.of()))))
        .endsWith("\r\nSoup Ladle,2026-06-14,Launch held,0,0,0,,\r\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", " =1", "＝1"})
  void what_a_spreadsheet_would_reckon_is_made_words(String name) {
    assertThat(FleetCsv.cell(name)).isEqualTo("'" + name);
  }

  /** An escape character would clear the screen or colour it; a line end would forge a row. */
  @ParameterizedTest
  @ValueSource(strings = {"\u001b[2J", "\n", "\r\n", "\t", "\u0007", "\u202e", "\u2028"})
  void what_a_terminal_would_obey_is_made_harmless(String order) {
    String shown = FleetCsv.cell("Soup" + order + "Ladle");
    assertThat(shown.codePoints()).noneMatch(c -> c < ' ' || c == 0x202E || c == 0x2028);
    assertThat(shown).startsWith("Soup?").endsWith("Ladle");
    assertThat(FleetCsv.cell("=1" + order)).startsWith("'=1?");
  }

  @Test
  void commas_and_quotes_are_quoted() {
    assertThat(FleetCsv.cell("a,b")).isEqualTo("\"a,b\"");
    assertThat(FleetCsv.cell("the \"tin\"")).isEqualTo("\"the \"\"tin\"\"\"");
    assertThat(FleetCsv.cell("=a,\"b\"")).isEqualTo("\"'=a,\"\"b\"\"\"");
    assertThat(FleetCsv.cell("Soup-Ladle + oars")).isEqualTo("Soup-Ladle + oars");
  }
}
