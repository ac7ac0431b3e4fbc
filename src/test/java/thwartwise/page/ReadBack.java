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
      Ink ink = new Ink();
      String text = ink.getText(document);
      return new ReadBack(
          text.replaceAll("[\\s\u00a0]+", " "),
          document.getNumberOfPages(),
          first.getMediaBox().getWidth(),
          first.getMediaBox().getHeight(),
          fonts,
          ink.under);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All that lies under letters on any sheet, in points from its upper left corner. */
  private static final class Ink extends PDFTextStripper {
    private final Rectangle2D under = new Rectangle2D.Double();

    @Override
    protected void processTextPosition(TextPosition letter) {
      super.processTextPosition(letter);
      if (letter.getUnicode().isBlank()) {
        return;
      }
      Rectangle2D one =
          new Rectangle2D.Double(
              letter.getX(),
              letter.getY() - letter.getHeight(),
              letter.getWidth(),
              letter.getHeight());
      under.setRect(under.isEmpty() ? one : under.createUnion(one));
    }
  }
}
