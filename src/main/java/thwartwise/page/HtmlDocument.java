package thwartwise.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * A whole file of markup that asks for nothing outside itself: well formed, so that it is read as
 * HTML by browsers and as XML by whatever makes paper of it.
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
   * @param title as the browser's window shows it
   * @param kind which of the looks: "page" or "card"
   * @param more rules of style after those of its kind
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
