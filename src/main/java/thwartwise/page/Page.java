package thwartwise.page;

import java.util.ArrayList;
import java.util.List;
import thwartwise.page.Block.Illustration;

/** A page in the making: piece after piece in the order it is read. */
public final class Page {
  private final List<Block> blocks = new ArrayList<>();

  public Page title(String words) {
    return with(new Block.Title(words));
  }

  public Page heading(String words) {
    return with(new Block.Heading(words));
  }

  /** The heading of a part that can be asked for by itself. */
  public Page part(String words) {
    return with(new Block.Part(words, false));
  }

  /** The same on a fresh sheet of paper, to be printed by itself. */
  public Page sheet(String words) {
    return with(new Block.Part(words, true));
  }

  /** The headings of the page, where the form can jump to one. */
  public Page contents() {
    return with(new Block.Contents());
  }

  /** Details that can be folded away; what they are stands in the summary. */
  public Page folded(String summary, Page details) {
    return with(new Block.Folded(summary, true, details.blocks()));
  }

  /** Details for whoever reads on a screen; paper does without them. */
  public Page screenOnly(String summary, Page details) {
    return with(new Block.Folded(summary, false, details.blocks()));
  }

  /** Sentences run together into one paragraph; nothing when all of them are blank. */
  public Page paragraph(String... sentences) {
    Sentences telling = Sentences.of(sentences);
    return telling.isEmpty() ? this : with(new Block.Paragraph(telling));
  }

  public Page point(String... sentences) {
    return with(new Block.Point(Sentences.of(sentences)));
  }

  public Page points(List<String> texts) {
    texts.forEach(this::point);
    return this;
  }

  /** A short note, which may stand next to another one. */
  public Page note(String words) {
    return with(new Block.Note(words));
  }

  /** Numbered, for what is done one after the other. */
  public Page numbered(int number, String... sentences) {
    return with(new Block.Numbered(number, Sentences.of(sentences)));
  }

  /** A point with a box for somebody's pen. */
  public Page ticked(String... sentences) {
    return with(new Block.Ticked(Sentences.of(sentences)));
  }

  /** A line that stands as it is: a picture in characters, at most as wide as the page. */
  Page picture(String line) {
    return with(new Block.Picture(line));
  }

  public Page gap() {
    return with(new Block.Gap());
  }

  /** What is read first, from farther away than the rest. */
  public Page banner(String words) {
    return with(new Block.Banner(words));
  }

  /** A figure to be read at arm's length, and what it is of. */
  public Page figure(String figure, String of) {
    return with(new Block.Figure(figure, of));
  }

  public Page load(LoadBar bar) {
    return with(new Block.Load(bar));
  }

  public Page table(Table table) {
    return with(new Block.Rows(table));
  }

  /** A picture, for the forms that can show one; the sentences of the page do without it. */
  public Page drawn(Illustration drawn) {
    return with(new Block.Drawing(drawn));
  }

  /** A line for somebody to write on. */
  public Page writtenOn(String label) {
    return with(new Block.WrittenOn(label));
  }

  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** The next piece, as another page has it. */
  public Page with(Block block) {
    blocks.add(block);
    return this;
  }

  /** The page as plain text. */
  @Override
  public String toString() {
    return TextForm.of(this);
  }
}
