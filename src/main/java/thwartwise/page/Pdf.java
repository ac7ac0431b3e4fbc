package thwartwise.page;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.Calendar;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * HTML as PDF, in the typeface that comes with the program. It looks up nothing on the machine,
 * fetches nothing and writes no file.
 */
public final class Pdf {
  /** The style that selects our own typeface. */
  public static final String STYLE = "body { font-family: \"" + Typeface.NAME + "\"; }\n";

  static {
    // The terminal belongs to the user and not to the libraries.
    XRLog.setLoggingEnabled(false);
    // Otherwise the library reads every font of the machine and keeps a list in the home folder.
    FontMappers.set(new TypefaceIsolation());
    // A tenth of the time of a PDF is its compression; with the least the file is a sixth larger.
    System.setProperty(Filter.SYSPROP_DEFLATELEVEL, "1");
  }

  private Pdf() {}

  /**
   * The bytes of the PDF.
   *
   * @param written when the record was made; the same record gives the same bytes
   */
  public static byte[] of(String markup, OffsetDateTime written) throws IOException {
    try (PDDocument document = new PDDocument()) {
      render(markup, document);
      document.getDocumentInformation().setCreationDate(calendar(written));
      document.getDocumentInformation().setModificationDate(calendar(written));
      document.setDocumentId(written.toEpochSecond());
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static void render(String markup, PDDocument document) throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    for (Typeface face : Typeface.values()) {
      builder.useFont(
          face::open,
          Typeface.NAME,
          face.weight(),
          FontStyle.NORMAL,
          true,
          EnumSet.of(FSFontUseCase.DOCUMENT));
    }
    builder.useUnicodeBidiSplitter(Bidirectional.BidiSplitting::new);
    builder.useUnicodeBidiReorderer(new Bidirectional());
    builder.useSVGDrawer(new PictureDrawer());
    builder.useExternalResourceAccessControl(
        (uri, kind) -> false,
        com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority
            .RUN_BEFORE_RESOLVING_URI);
    builder.withW3cDocument(Lettering.outlined(markup), null);
    builder.usePDDocument(document);
    try (var renderer = builder.buildPdfRenderer()) {
      renderer.layout();
      renderer.createPDFWithoutClosing();
    }
  }

  private static Calendar calendar(OffsetDateTime written) {
    Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
    calendar.setTimeInMillis(written.toInstant().toEpochMilli());
    return calendar;
  }

  /** Answers every request for a font of the machine with our own. */
  private static final class TypefaceIsolation implements FontMapper {

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(String name, PDFontDescriptor descriptor) {
      return new FontMapping<>(Typeface.REGULAR.font(), true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(String name, PDFontDescriptor descriptor) {
      return new FontMapping<>(Typeface.REGULAR.font(), true);
    }

    @Override
    public CIDFontMapping getCIDFont(
        String name, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
      return new CIDFontMapping(null, Typeface.REGULAR.font(), true);
    }
  }

  /**
   * Reorders runs from right to left, run by run as the HTML page separates them. Letters are not
   * joined: each is set as it stands alone.
   */
  private static final class Bidirectional implements BidiReorderer {
    private static final Pattern LETTER_WITH_ACCENTS = Pattern.compile("\\X");

    @Override
    public String reorderRTLTextToLTR(String text) {
      StringBuilder turned = new StringBuilder();
      LETTER_WITH_ACCENTS
          .matcher(text)
          .results()
          .map(MatchResult::group)
          .forEach(letter -> turned.insert(0, letter));
      return turned.toString();
    }

    @Override
    public String shapeText(String text) {
      return text;
    }

    @Override
    public String deshapeText(String text) {
      return text;
    }

    @Override
    public boolean isLiveImplementation() {
      return true;
    }

    /** The runs of a paragraph, in the form that the library asks for. */
    static final class BidiSplitting implements BidiSplitter {
      private List<BidiRun> stretches = List.of();

      @Override
      public void setParagraph(String paragraph, byte defaultDirection) {
        stretches = BidiRun.of(paragraph);
      }

      @Override
      public int countTextRuns() {
        return stretches.size();
      }

      @Override
      public BidiTextRun getVisualRun(int run) {
        BidiRun stretch = stretches.get(run);
        return new BidiTextRun(
            stretch.start(), stretch.end() - stretch.start(), stretch.rightToLeft() ? RTL : LTR);
      }

      @Override
      public byte getBaseDirection(String paragraph) {
        return LTR;
      }
    }
  }
}
