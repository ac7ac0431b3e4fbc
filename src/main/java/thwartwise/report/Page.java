package thwartwise.report;

import java.util.List;

/** A page in the making: headings, paragraphs and points, wrapped to 80 columns. */
final class Page {
  static final int WIDTH = 80;
  private final StringBuilder text = new StringBuilder();

  Page title(String words) {
    return underlined(words, '=');
  }

  Page heading(String words) {
    text.append('\n');
    return underlined(words, '-');
  }

  /** Sentences run together into one paragraph. */
  Page paragraph(String... sentences) {
    String words = Sentence.joined(List.of(sentences));
    if (!words.isEmpty()) {
      Wrap.lines(words, "", "", WIDTH).forEach(this::line);
    }
    return this;
  }

  Page point(String... sentences) {
    Wrap.lines(Sentence.joined(List.of(sentences)), "* ", "  ", WIDTH).forEach(this::line);
    return this;
  }

  Page points(List<String> texts) {
    texts.forEach(this::point);
    return this;
  }

  /** Numbered, for what is done one after the other. */
  Page numbered(int number, String... sentences) {
    Wrap.lines(Sentence.joined(List.of(sentences)), number + ". ", "   ", WIDTH)
        .forEach(this::line);
    return this;
  }

  /** A line that stands as it is: a picture in characters, at most as wide as the page. */
  Page picture(String line) {
    line(line);
    return this;
  }

  Page gap() {
    text.append('\n');
    return this;
  }

  private Page underlined(String words, char under) {
    int longest = 0;
    for (String line : Wrap.lines(words, "", "", WIDTH)) {
      line(line);
      longest = Math.max(longest, Wrap.columns(line));
    }
    line(String.valueOf(under).repeat(longest));
    return this;
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
