package thwartwise.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF as somebody else reads it. */
record ReadBack(String text, int sheets, float width, float height, List<PDFont> fonts) {

  static ReadBack of(byte[] pdf) {
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
          fonts);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
