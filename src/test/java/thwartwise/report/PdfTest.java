package thwartwise.report;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.page.Block.Illustration;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Markup;
import thwartwise.page.Page;
import thwartwise.page.ParsedPage;
import thwartwise.page.Pdf;
import thwartwise.page.PdfPage.SupportedLetters;
import thwartwise.page.ReadBack;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

class PdfTest {
  private static final String NUMBER = "2026-06-14T090507-1a2b3c4d";
  private static final OffsetDateTime THEN = OffsetDateTime.parse("2026-06-14T09:05:07+02:00");

  /** ANSI letter size, 8.5 by 11 inches, in points. */
  private static final double LETTER_WIDTH = 8.5 * 72;

  private static final double LETTER_HEIGHT = 11 * 72;

  /** 16 mm at each side. */
  private static final double MARGIN = 16 / 25.4 * 72;

  private static final Map<String, byte[]> NAMED = new ConcurrentHashMap<>();
  private static final Map<String, ReadBack> READ = new ConcurrentHashMap<>();

  private final InspectionRecord soup = SampleBoat.record(SampleRecords.report());

  /** The page of the boat as it is; each is set once for all that is asked of it. */
  private byte[] ofSoup() {
    return NAMED.computeIfAbsent("", unnamed -> HtmlPage.pdf(soup, NUMBER));
  }

  private ReadBack readOfSoup() {
    return READ.computeIfAbsent("", unnamed -> ReadBack.of(ofSoup()));
  }

  private static ReadBack readOf(String name) {
    return READ.computeIfAbsent(name, n -> ReadBack.of(named(n)));
  }

  /** The page of a boat of which everything has this name. */
  private static byte[] named(String name) {
    return NAMED.computeIfAbsent(
        name, n -> HtmlPage.pdf(OddNames.in(SampleBoat.boat(), n), NUMBER));
  }

  @Test
  void people_kilograms_and_number_read_back_are_those_of_the_report() {
    ReadBack pdf = readOfSoup();
    Recommendation crew = soup.report().recommendation();
    assertThat(pdf.text())
        .contains((int) crew.crew() + " kg all people together, dressed, with one person aboard")
        .contains(crew.people() + " adult of " + (int) crew.adult() + " kg")
        .contains((int) crew.load() + " kg total load")
        .contains("Record " + NUMBER + ". Valid until")
        .contains("Worked out by thwartwise 0.1.0 on 14 June 2026, 09:05 (UTC+02:00).");
  }

  @Test
  void every_sentence_of_the_html_page_is_in_the_pdf() {
    String text = squeezed(readOfSoup().text());
    ParsedPage html = ParsedPage.of(HtmlPage.of(soup, NUMBER));
    for (String element : new String[] {"h1", "h2"}) {
      html.all(element).forEach(e -> assertThat(text).contains(squeezed(ParsedPage.words(e))));
    }
    // A paragraph may run over two sheets, with the foot of the first between.
    html.all("strong").stream()
        .filter(PdfTest::isPrinted)
        .forEach(e -> assertThat(text).contains(squeezed(ParsedPage.words(e))));
  }

  /** Some details are for a screen alone. */
  private static boolean isPrinted(Node element) {
    Node above = element.getParentNode();
    return above == null
        || !(above instanceof Element e && e.getAttribute("class").equals("screen"))
            && isPrinted(above);
  }

  private static String squeezed(String words) {
    return words.replace(" ", "");
  }

  @Test
  void each_sheet_says_which_record_it_is_of_and_how_many_there_are() {
    ReadBack pdf = readOfSoup();
    assertThat(pdf.sheets()).isGreaterThan(2);
    for (int sheet = 1; sheet <= pdf.sheets(); sheet++) {
      assertThat(pdf.text()).contains(sheet + " of " + pdf.sheets());
    }
    assertThat(pdf.text().split("Record " + NUMBER + " ", -1)).hasSizeGreaterThan(pdf.sheets());
  }

  @Test
  void a_sheet_is_a4_and_what_is_on_it_fits_a_letter_sheet_too() {
    ReadBack pdf = readOfSoup();
    assertThat(pdf.width()).isBetween(594f, 596f);
    assertThat(pdf.height()).isBetween(841f, 843f);
    assertThat(pdf.ink().getHeight()).isBetween(600.0, LETTER_HEIGHT - 2 * 18);
    assertThat(pdf.ink().getWidth()).isBetween(400.0, LETTER_WIDTH - 2 * 18);
  }

  /** What prints it cuts off there, without a word. */
  @ParameterizedTest
  @MethodSource("thwartwise.report.OddNames#all")
  void no_line_runs_into_the_margin_of_a_sheet(String name) {
    ReadBack pdf = readOf(name);
    assertThat(pdf.ink().getMinX()).isGreaterThan(MARGIN - 1);
    assertThat(pdf.ink().getMaxX()).isLessThan(pdf.width() - MARGIN + 1);
  }

  @Test
  void only_our_typeface_is_used_and_it_is_inside_the_file() {
    assertThat(readOfSoup().fonts())
        .isNotEmpty()
        .allMatch(font -> font.isEmbedded())
        .allMatch(font -> font.getName().contains("DejaVuSansCondensed"));
  }

  @Test
  void the_same_record_gives_the_same_file() {
    assertThat(HtmlPage.pdf(soup, NUMBER)).isEqualTo(ofSoup());
  }

  @ParameterizedTest
  @MethodSource("thwartwise.report.OddNames#all")
  void an_odd_name_is_words_in_the_pdf_or_a_visible_mark(String name) {
    String shown = SupportedLetters.of(Markup.bare(name)).words();
    String plain = ParsedPage.of("<p>" + shown + "</p>").all("p").get(0).getTextContent();
    ReadBack pdf = readOf(name);
    // Word by word: the reader puts mixed directions into an order of its own.
    assertThat(squeezed(pdf.text())).contains(plain.strip().split("\\s+"));
  }

  @Test
  void a_letter_the_type_lacks_is_marked_and_the_mark_is_explained() {
    assertThat(readOf("スプーン").text())
        .contains(" □□□□ Inspected on ")
        .contains("A □ stands for a letter that the type of this file lacks;");
    assertThat(readOfSoup().text()).doesNotContain("□");
  }

  @Test
  void words_from_right_to_left_read_back_as_they_were_typed() {
    assertThat(readOf("שלום עולם").text()).contains("שלום עולם Inspected on ");
  }

  @Test
  void a_picture_with_lettering_is_drawn_without_a_font_of_the_machine() throws Exception {
    Page page =
        new Page().title("Ladle").drawn(new Illustration("Side", "a side", "From the side.", SIDE));
    byte[] pdf = Pdf.of(HtmlDocument.of(page, "Ladle", "page", Pdf.STYLE), THEN);
    byte[] without =
        Pdf.of(
            HtmlDocument.of(
                new Page().title("Ladle").paragraph("From the side"), "Ladle", "page", Pdf.STYLE),
            THEN);
    assertThat(ReadBack.of(pdf).text()).contains("Side").contains("From the side.");
    assertThat(pdf.length).isGreaterThan(without.length + 500);
  }

  private static final String SIDE =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"640\" height=\"80\""
          + " viewBox=\"0 0 640 80\"><path d=\"M0 40H640\" stroke=\"#000\"/>"
          + "<text x=\"20\" y=\"30\" font-size=\"14\">waterline, loaded</text></svg>";

  /** The ground of a chamber that counts, and the hatching over it, as a printer would see them. */
  @Test
  void tones_and_hatching_of_the_pictures_reach_the_paper() throws Exception {
    int most = 0;
    int broken = 0;
    for (BufferedImage sheet : sheets(ofSoup())) {
      int tones = 0;
      int ends = 0;
      for (int y = 0; y < sheet.getHeight(); y++) {
        for (int x = 1; x < sheet.getWidth(); x++) {
          boolean tone = sheet.getRGB(x, y) == COUNTED;
          tones += tone ? 1 : 0;
          ends += tone && sheet.getRGB(x - 1, y) != COUNTED ? 1 : 0;
        }
      }
      broken = tones > most ? ends : broken;
      most = Math.max(most, tones);
    }
    assertThat(most).isGreaterThan(1000);
    // Strokes stand some ten pixels apart: the tone is never found in long runs.
    assertThat(broken).isGreaterThan(most / 40);
  }

  private static final int COUNTED = 0xffbdbdbd;

  private static List<BufferedImage> sheets(byte[] pdf) throws IOException {
    List<BufferedImage> sheets = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int sheet = 0; sheet < document.getNumberOfPages(); sheet++) {
        sheets.add(renderer.renderImageWithDPI(sheet, 144));
      }
    }
    return sheets;
  }

  // Marks over letters written from right to left once broke the drawing of lettering.
  @Test
  void a_name_with_vowel_marks_gives_sheets_that_can_be_drawn() throws Exception {
    String name = "مَرْحَبًا";
    assertThat(sheets(named(name))).hasSizeGreaterThan(2);
    assertThat(readOf(name).text()).contains("From above", "What brings it back");
  }

  @Test
  void a_page_that_is_not_well_formed_is_refused() {
    assertThatThrownBy(() -> Pdf.of("<p>a<b></p>", THEN))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("The page is not well formed: ");
  }

  @Test
  void a_held_launch_is_held_in_the_pdf_too() {
    Report held =
        SampleRecords.report(
            SampleRecords.nothing(List.of(), "The hull was not weighed."), List.of());
    assertThat(ReadBack.of(HtmlPage.pdf(SampleBoat.record(held), NUMBER)).text())
        .contains("Launch held")
        .doesNotContain("people in all");
  }
}
