package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.record.FleetRow;
import thwartwise.record.InspectionRecord;
import thwartwise.record.OverdueItem;
import thwartwise.record.RecordEntry;
import thwartwise.record.SampleRecords;

/** The pages in a real browser, where the machine has one. */
class BrowserTest {
  private static final String NUMBER = "2026-06-14T090507-1a2b3c4d";
  private static final InspectionRecord SOUP = SampleBoat.record(SampleRecords.report());
  private static final InspectionRecord LONG = OddNames.in(SampleBoat.boat(), "x".repeat(300));
  private static final Map<String, String> PAGES =
      Map.of(
          "page", HtmlPage.of(SOUP, NUMBER),
          "page of a long name", HtmlPage.of(LONG, NUMBER),
          "card", CardPage.html(SOUP, NUMBER),
          "card of a long name", CardPage.html(LONG, NUMBER),
          "fleet", fleet(SOUP),
          "fleet of a long name", fleet(LONG),
          "comparison", ComparePage.html(kept(1, SOUP), kept(2, LONG)));

  @TempDir Path temp;

  /** 360 is a narrow telephone; 670 is what the margins leave of A4, and Letter is wider. */
  @ParameterizedTest
  @ValueSource(ints = {360, 670})
  void nothing_runs_over_the_side_of_a_page(int width) {
    StringBuilder frames = new StringBuilder("<!DOCTYPE html><body>");
    PAGES.forEach((name, page) -> frames.append(frame(name, page, width)));
    frames.append(frame("too wide", "<p style='width: 800px'>wide</p>", width));
    String measured = measured(frames, "f.contentDocument.documentElement.scrollWidth");
    for (String name : PAGES.keySet()) {
      assertThat(measured).contains("<li>" + name + ": " + width + "</li>");
    }
    assertThat(measured).contains("<li>too wide: 8").doesNotContain("<li>too wide: " + width);
  }

  /** What is said of each frame, as items of a list. */
  private String measured(CharSequence frames, String what) {
    return Browser.in(temp)
        .after(
            frames
                + """
                <ul id="out"></ul>
                <script>
                onload = () => document.querySelectorAll('iframe').forEach(f => {
                  const li = document.createElement('li');
                  li.textContent = f.title + ': ' + WHAT;
                  document.getElementById('out').append(li);
                });
                </script>
                """
                    .replace("WHAT", what));
  }

  /** FigureText whole, as the scroll bar would take its own width from it. */
  private static String frame(String name, String page, int width) {
    String quoted = page.replace("&", "&amp;").replace("\"", "&quot;");
    return "<iframe title=\"%s\" style=\"border: 0; width: %dpx; height: 30000px\" srcdoc=\"%s\"></iframe>"
        .formatted(name, width, quoted);
  }

  /**
   * What the browser itself asks its maker for does not count here: only what a page made it ask.
   */
  @Test
  void a_page_asks_nobody_for_anything() {
    StringBuilder frames = new StringBuilder("<!DOCTYPE html><body>");
    PAGES.forEach((name, page) -> frames.append(frame(name, page, 670)));
    frames.append(frame("asks", "<img src='http://127.0.0.1:9/soup.png'>", 670));
    String asked =
        measured(frames, "f.contentWindow.performance.getEntriesByType('resource').length");
    for (String name : PAGES.keySet()) {
      assertThat(asked).contains("<li>" + name + ": 0</li>");
    }
    assertThat(asked).contains("<li>asks: 1</li>");
  }

  @Test
  void a_page_can_be_seen() {
    Browser browser = Browser.in(temp);
    assertThat(dark(browser.seen("<p></p>", 900, 1200))).isZero();
    assertThat(dark(browser.seen(PAGES.get("page"), 900, 1200))).isGreaterThan(0.01);
  }

  /** The share of it that is darker than middling grey. */
  private static double dark(BufferedImage seen) {
    int dark = 0;
    for (int x = 0; x < seen.getWidth(); x++) {
      for (int y = 0; y < seen.getHeight(); y++) {
        dark += (seen.getRGB(x, y) >> 8 & 0xff) < 128 ? 1 : 0;
      }
    }
    return (double) dark / seen.getWidth() / seen.getHeight();
  }

  private static String fleet(InspectionRecord record) {
    return FleetPage.html(
        List.of(
            new FleetRow.OfBoat(
                record.boat().name(), Optional.of(record), List.of(new OverdueItem.ChangedFile())),
            new FleetRow.OfFile(record.boat().name(), "no boat")),
        LocalDate.of(2026, 6, 20));
  }

  private static RecordEntry kept(int number, InspectionRecord record) {
    return new RecordEntry(
        "soup-ladle/" + number,
        "name",
        OptionalInt.of(number),
        "hash",
        true,
        true,
        true,
        Optional.empty(),
        record);
  }
}
