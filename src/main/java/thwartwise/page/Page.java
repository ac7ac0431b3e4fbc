package thwartwise.page;

import java.util.ArrayList;
import java.util.List;
import thwartwise.page.Block.Illustration;

/** A page being built, piece after piece in the order it is read. */
public final class Page {
  private final List<Block> blocks = new ArrayList<>();

  public Page title(String words) {
    return with(new Block.Title(words));
  }

  public Page heading(String words) {
    return with(new Block.Heading(words));
  }

  /** Adds the heading of a part that can be asked for by itself. */
  public Page part(String words) {
    return with(new Block.Part(words, false));
  }

  /** Adds the heading of a part on a new sheet of paper, to be printed by itself. */
  public Page sheet(String words) {
    return with(new Block.Part(words, true));
  }

  /** Adds the headings of the page, if the form has links. */
  public Page contents() {
    return with(new Block.Contents());
  }

  /** Adds details that can be folded away under a summary. */
  public Page folded(String summary, Page details) {
    return with(new Block.Folded(summary, true, details.blocks()));
  }

  /** Adds details that are shown on a screen and not printed. */
  public Page screenOnly(String summary, Page details) {
    return with(new Block.Folded(summary, false, details.blocks()));
  }

  /** Adds sentences as one paragraph; nothing when all of them are blank. */
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

  /** Adds a short note, which may stand next to another one. */
  public Page note(String words) {
    return with(new Block.Note(words));
  }

  /** Adds numbered points, for what is done one after the other. */
  public Page numbered(int number, String... sentences) {
    return with(new Block.Numbered(number, Sentences.of(sentences)));
  }

  /** Adds a point with a box for a pen. */
  public Page ticked(String... sentences) {
    return with(new Block.Ticked(Sentences.of(sentences)));
  }

  /** Adds a line as it is: a picture in characters, at most as wide as the page. */
  Page picture(String line) {
    return with(new Block.Picture(line));
  }

  public Page gap() {
    return with(new Block.Gap());
  }

  /** Adds the text that is read first and from farther away. */
  public Page banner(String words) {
    return with(new Block.Banner(words));
  }

  /** Adds a figure to be read at arm's length, and its label. */
  public Page figure(String figure, String of) {
    return with(new Block.Figure(figure, of));
  }

  public Page load(LoadBar bar) {
    return with(new Block.Load(bar));
  }

  public Page table(Table table) {
    return with(new Block.Rows(table));
  }

  /** Adds a picture, for forms that can show one; the sentences of the page do without it. */
  public Page drawn(Illustration drawn) {
    return with(new Block.Drawing(drawn));
  }

  /** Adds a line to write on. */
  public Page writtenOn(String label) {
    return with(new Block.WrittenOn(label));
  }

  public List<Block> blocks() {
    return List.copyOf(blocks);
  }

  /** Adds a piece of another page. */
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
