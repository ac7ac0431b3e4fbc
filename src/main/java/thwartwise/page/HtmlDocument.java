package thwartwise.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * A whole HTML file without references to anything outside. It is well formed, so that browsers
 * read it as HTML and the PDF renderer as XML.
 */
public final class HtmlDocument {
  private static final String HEAD =
      """
      <!DOCTYPE html>
      <html lang="en" xml:lang="en" xmlns="http://www.w3.org/1999/xhtml">
      <head>
      <meta charset="utf-8"/>
      <meta name="generator" content="thwartwise"/>
      <meta name="viewport" content="width=device-width, initial-scale=1"/>
      <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"/>
      """;

  private HtmlDocument() {}

  /**
   * @param title for the browser's window
   * @param kind of style: "page" or "card"
   * @param more style rules after those of its kind
   */
  public static String of(Page page, String title, String kind, String more) {
    return HEAD
        + "<title>"
        + Markup.bare(title)
        + "</title>\n<style>\n"
        + style("common")
        + style(kind)
        + more
        + "</style>\n</head>\n<body class=\""
        + kind
        + "\">\n<main>\n"
        + HtmlForm.of(page)
        + "</main>\n</body>\n</html>\n";
  }

  private static String style(String name) {
    try (InputStream in =
        HtmlDocument.class.getResourceAsStream("/thwartwise/pages/" + name + ".css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
