package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import thwartwise.inspection.Report;
import thwartwise.measure.PrintableText;
import thwartwise.page.Block;
import thwartwise.page.Page;
import thwartwise.page.ParsedPage;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

class HtmlPageTest {
  private static final String NUMBER = "2026-06-14T090507-1a2b3c4d";

  private final InspectionRecord soup = SampleBoat.record(SampleRecords.report());

  @Test
  void every_sentence_of_the_text_page_is_on_the_html_page_in_the_same_order() {
    String html = ParsedPage.of(HtmlPage.of(soup, NUMBER)).text();
    Page told = new Page();
    PageSheets.write(told, soup, new Pictures(List.of(), List.of()));
    PageFrame.foot(told, soup, NUMBER);
    int at = html.indexOf("This page") + 1;
    for (Block block : opened(told.blocks()).toList()) {
      String words = words(block);
      int there = html.indexOf(words, at);
      assertThat(there).as("%s after %s", words, html.substring(0, at)).isNotNegative();
      at = there + words.length();
    }
  }

  private static Stream<Block> opened(List<Block> blocks) {
    return blocks.stream()
        .flatMap(b -> b instanceof Block.Folded folded ? opened(folded.blocks()) : Stream.of(b))
        .filter(b -> !words(b).startsWith("The HTML page and the PDF have pictures"));
  }

  private static String words(Block block) {
    String words =
        block instanceof Block.Heading heading
            ? heading.words()
            : block instanceof Block.Paragraph paragraph
                ? paragraph.sentences().joined()
                : block instanceof Block.Point point
                    ? point.sentences().joined()
                    : block instanceof Block.Ticked ticked
                        ? ticked.sentences().joined()
                        : block instanceof Block.WrittenOn line ? line.label() : "";
    return words.replace('\u00a0', ' ');
  }

  @Test
  void the_page_asks_for_nothing_outside_itself_and_runs_nothing() {
    String html = HtmlPage.of(soup, NUMBER);
    ParsedPage page = ParsedPage.of(html);
    assertThat(html.toLowerCase(Locale.ROOT))
        .startsWith("<!doctype html>")
        .doesNotContain("@import", "javascript:", "data:")
        .doesNotContainPattern("url\\((?!#)");
    assertThat(page.all("*")).allSatisfy(HtmlPageTest::refersToNothing);
    for (String name : List.of("script", "link", "img", "iframe", "object", "base", "form")) {
      assertThat(page.all(name)).as(name).isEmpty();
    }
  }

  private static void refersToNothing(Element element) {
    NamedNodeMap attributes = element.getAttributes();
    for (int i = 0; i < attributes.getLength(); i++) {
      if (attributes.item(i).getNodeValue().startsWith("#part-")) {
        continue;
      }
      assertThat(attributes.item(i).getNodeName())
          .doesNotMatch("(?i)src|href|xlink:href|srcset|action|poster|background|on.*");
    }
  }

  @Test
  void it_says_its_language_its_title_and_one_heading_of_the_first_rank() {
    ParsedPage page = ParsedPage.of(HtmlPage.of(soup, NUMBER));
    assertThat(page.document().getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(ParsedPage.words(page.all("title").get(0))).isEqualTo("Soup Ladle, " + NUMBER);
    assertThat(page.all("h1")).hasSize(1).allMatch(h -> ParsedPage.words(h).equals("Soup Ladle"));
    assertThat(page.all("h2")).hasSizeGreaterThan(8);
    assertThat(page.all("ul")).isNotEmpty();
    assertThat(page.all("li")).allMatch(li -> li.getParentNode().getNodeName().matches("[uo]l"));
  }

  @Test
  void verdict_kilograms_people_seats_and_what_nobody_does_stand_before_everything_else() {
    assertThat(ParsedPage.of(HtmlPage.of(soup, NUMBER)).text())
        .containsSubsequence(
            "Soup Ladle",
            "Inspected on 14 June 2026, 09:05 (UTC+02:00) by M. Quill.",
            "Nothing found against it within the limits of this inspection",
            "110 kg all people together, dressed, with one person aboard",
            "1 adult of 95 kg",
            "140 kg total load: people, kit and everything that is not built in",
            "Sitting like this",
            "110 kgmidships thwart",
            "Never more than two people, however light they are",
            "What nobody may do:",
            "Never in this boat: standing and hard against one side.",
            "Every check");
  }

  @Test
  void a_held_launch_has_no_figure_of_people_or_load_before_its_reasons() {
    Report held =
        SampleRecords.report(
            SampleRecords.nothing(List.of(), "The hull was not weighed."), List.of());
    ParsedPage page = ParsedPage.of(HtmlPage.of(SampleBoat.record(held), NUMBER));
    assertThat(page.all("p"))
        .noneMatch(p -> p.getAttribute("class").equals("figure"))
        .anyMatch(
            p ->
                p.getAttribute("class").equals("banner large")
                    && ParsedPage.words(p).equals("Launch held"));
    assertThat(page.text()).contains("Launch held The hull was not weighed.");
  }

  @ParameterizedTest
  @MethodSource("thwartwise.report.OddNames#all")
  void an_odd_name_is_words_on_the_page_and_nothing_else(String name) {
    String html = HtmlPage.of(OddNames.in(SampleBoat.boat(), name), NUMBER);
    ParsedPage page = ParsedPage.of(html);
    String shown = PrintableText.of(name.strip().replaceAll("\\s+", " "));
    assertThat(ParsedPage.words(page.all("h1").get(0))).isEqualTo(shown);
    assertThat(page.text()).contains("by " + (shown.isEmpty() ? "somebody not named" : shown));
    assertThat(page.all("script")).isEmpty();
    assertThat(html.codePoints().filter(c -> c != '\n')).noneMatch(Character::isISOControl);
  }

  @Test
  void the_foot_says_number_date_with_zone_version_rule_set_and_has_lines_to_sign() {
    ParsedPage page = ParsedPage.of(HtmlPage.of(soup, NUMBER));
    assertThat(page.text())
        .containsSubsequence(
            "This page",
            "Limits: Cautious default, 2026.",
            "Worked out by thwartwise 0.1.0 on 14 June 2026, 09:05 (UTC+02:00).",
            "Record " + NUMBER + ".",
            "Inspected by (name, date)",
            "Owner (name, date)");
    assertThat(page.all("p").stream().filter(p -> p.getAttribute("class").equals("written")))
        .hasSize(2);
  }

  @Test
  void every_printed_sheet_says_which_record_it_is_of_whatever_the_number_holds() {
    assertThat(HtmlPage.of(soup, "7\"; } </style>"))
        .contains("@bottom-left { content: \"Record 7???????style?\";");
  }

  @Test
  void the_pictures_follow_what_is_read_first_and_each_is_told_to_those_who_cannot_see_it() {
    ParsedPage page = ParsedPage.of(HtmlPage.of(soup, NUMBER));
    assertThat(page.text())
        .containsSubsequence(
            "Sitting like this",
            "From above",
            "What nobody may do:",
            "In pictures",
            "From the side",
            "Full of water, from the side",
            "Cut across",
            "What brings it back",
            "Every check");
    assertThat(page.all("div").stream().filter(d -> d.getAttribute("role").equals("img")))
        .hasSizeGreaterThanOrEqualTo(4)
        .allMatch(d -> d.getAttribute("aria-label").length() > 40);
    assertThat(page.all("figcaption")).allMatch(c -> !ParsedPage.words(c).isEmpty());
    List<String> ids =
        page.all("*").stream().map(e -> e.getAttribute("id")).filter(i -> !i.isEmpty()).toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  @Test
  void the_text_page_leaves_the_pictures_out() {
    assertThat(TextPage.of(soup, NUMBER)).doesNotContain("From above", "svg");
  }
}
