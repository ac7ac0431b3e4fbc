package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thwartwise.archive.RecordFile;
import thwartwise.page.PdfPage;
import thwartwise.record.InspectionRecord;

/** A paper that is too long is not read. The record is the demo's, as an older version kept it. */
class PaperLengthTest {
  private static final String NUMBER = "2026-06-14T090507-1a2b3c4d";

  private static final InspectionRecord DEMO =
      RecordFile.parse(SampleBoat.resource("files/record-with-report-1.json"), "the demo's record");

  @Test
  void the_demo_fills_at_most_six_sheets_and_two_hundred_and_fifty_lines() {
    assertThat(PdfPage.sheets(HtmlPage.pdf(DEMO, NUMBER))).isLessThanOrEqualTo(6);
    assertThat(TextPage.of(DEMO, NUMBER).lines().count()).isLessThan(250);
  }

  /** A fact once. */
  @Test
  void no_sentence_of_the_page_comes_twice() {
    Set<String> seen = new HashSet<>();
    List<String> twice = new ArrayList<>();
    String page = TextPage.of(DEMO, NUMBER).replaceAll("[\\s\u00a0]+", " ");
    Arrays.stream(page.split("(?<=[.!?]) "))
        .filter(sentence -> sentence.split(" ").length > 4)
        // Where the lowest edge is belongs to each act by itself.
        .filter(sentence -> !sentence.startsWith("Lowest at"))
        // How foam is fastened was part of each piece in the records of that time.
        .filter(sentence -> !sentence.startsWith("Fasten it so"))
        .filter(sentence -> !seen.add(sentence))
        .forEach(twice::add);
    assertThat(twice).isEmpty();
  }
}
