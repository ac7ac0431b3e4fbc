package thwartwise.page;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A PDF as somebody else reads it. */
public record ReadBack(
    String text, int sheets, float width, float height, List<PDFont> fonts, Rectangle2D ink) {

  public static ReadBack of(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      List<PDFont> fonts = new ArrayList<>();
      for (PDPage page : document.getPages()) {
        for (var name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name));
        }
      }
      PDPage first = document.getPage(0);
      String text = new PDFTextStripper().getText(document);
      return new ReadBack(
          text.replaceAll("[\\s\u00a0]+", " "),
          document.getNumberOfPages(),
          first.getMediaBox().getWidth(),
          first.getMediaBox().getHeight(),
          fonts,
          Ink.of(document));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All that lies under letters on any sheet, in points from its upper left corner. */
  private static final class Ink extends PDFTextStripper {
    private final Rectangle2D ink = new Rectangle2D.Double();

    public static Rectangle2D of(PDDocument document) throws IOException {
      Ink all = new Ink();
      all.getText(document);
      return all.ink;
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
      Rectangle2D under =
          new Rectangle2D.Double(
              letter.getX(),
              letter.getY() - letter.getHeight(),
              letter.getWidth(),
              letter.getHeight());
      if (letter.getUnicode().isBlank()) {
        return;
      }
      ink.setRect(ink.isEmpty() ? under : ink.createUnion(under));
    }
  }
}
