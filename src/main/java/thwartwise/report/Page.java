package thwartwise.report;

import java.util.ArrayList;
import java.util.List;

/** A page in the making: piece after piece in the order it is read. */
final class Page {
  private final List<Block> blocks = new ArrayList<>();

  Page title(String words) {
    return with(new Block.Title(words));
  }

  Page heading(String words) {
    return with(new Block.Heading(words));
  }

  /** Sentences run together into one paragraph; nothing when all of them are blank. */
  Page paragraph(String... sentences) {
    Telling telling = Telling.of(sentences);
    return telling.isEmpty() ? this : with(new Block.Paragraph(telling));
  }

  Page point(String... sentences) {
    return with(new Block.Point(Telling.of(sentences)));
  }

  Page points(List<String> texts) {
    texts.forEach(this::point);
    return this;
  }

  /** Numbered, for what is done one after the other. */
  Page numbered(int number, String... sentences) {
    return with(new Block.Numbered(number, Telling.of(sentences)));
  }

  /** A point with a box for somebody's pen. */
  Page ticked(String... sentences) {
    return with(new Block.Ticked(Telling.of(sentences)));
  }

  /** A line that stands as it is: a picture in characters, at most as wide as the page. */
  Page picture(String line) {
    return with(new Block.Picture(line));
  }

  Page gap() {
    return with(new Block.Gap());
  }

  /** What is read first, from farther away than the rest. */
  Page banner(String words) {
    return with(new Block.Banner(words));
  }

  /** A figure to be read at arm's length, and what it is of. */
  Page figure(String figure, String of) {
    return with(new Block.Figure(figure, of));
  }

  Page load(LoadBar bar) {
    return with(new Block.Load(bar));
  }

  Page table(Table table) {
    return with(new Block.Rows(table));
  }

  /** A picture, for the forms that can show one; the sentences of the page do without it. */
  Page drawn(Drawn drawn) {
    return with(new Block.Drawing(drawn));
  }

  /** A line for somebody to write on. */
  Page writtenOn(String label) {
    return with(new Block.WrittenOn(label));
  }

  List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** The next piece, as another page has it. */
  Page with(Block block) {
    blocks.add(block);
    return this;
  }

  /** The page as plain text. */
  @Override
  public String toString() {
    return TextForm.of(this);
  }
}
