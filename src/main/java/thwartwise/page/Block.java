package thwartwise.page;

import java.util.List;

/** One piece of a page, the same in every form of the page. */
public sealed interface Block {

  /** Adds this piece to the form. */
  void in(Form form);

  record Title(String words) implements Block {
    @Override
    public void in(Form form) {
      form.title(words);
    }
  }

  record Heading(String words) implements Block {
    @Override
    public void in(Form form) {
      form.heading(words);
    }
  }

  /**
   * The heading of a part of the page that can be asked for by itself.
   *
   * @param fresh whether it begins a new sheet of paper
   */
  record Part(String words, boolean fresh) implements Block {
    @Override
    public void in(Form form) {
      form.part(words, fresh);
    }
  }

  /** The headings of the page, for a form with links. */
  record Contents() implements Block {
    @Override
    public void in(Form form) {
      form.contents();
    }
  }

  /**
   * Details that can be folded away under a summary.
   *
   * @param printed whether they are printed on paper too
   */
  record Folded(String summary, boolean printed, List<Block> blocks) implements Block {
    public Folded {
      blocks = List.copyOf(blocks);
    }

    @Override
    public void in(Form form) {
      form.folded(summary, printed, blocks);
    }
  }

  record Paragraph(Sentences sentences) implements Block {
    @Override
    public void in(Form form) {
      form.paragraph(sentences);
    }
  }

  record Point(Sentences sentences) implements Block {
    @Override
    public void in(Form form) {
      form.point(sentences);
    }
  }

  /** A short note, which may stand next to another one. */
  record Note(String words) implements Block {
    @Override
    public void in(Form form) {
      form.note(words);
    }
  }

  record Numbered(int number, Sentences sentences) implements Block {
    @Override
    public void in(Form form) {
      form.numbered(number, sentences);
    }
  }

  /** A point with a box for somebody's pen. */
  record Ticked(Sentences sentences) implements Block {
    @Override
    public void in(Form form) {
      form.ticked(sentences);
    }
  }

  /** A line of a picture made of characters of the same width. */
  record Picture(String line) implements Block {
    @Override
    public void in(Form form) {
      form.picture(line);
    }
  }

  record Gap() implements Block {
    @Override
    public void in(Form form) {
      form.gap();
    }
  }

  /** The text that is read first and from farther away. */
  record Banner(String words) implements Block {
    @Override
    public void in(Form form) {
      form.banner(words);
    }
  }

  /** A figure to be read at arm's length, and its label. */
  record Figure(String figure, String of) implements Block {
    @Override
    public void in(Form form) {
      form.figure(figure, of);
    }
  }

  record Load(LoadBar bar) implements Block {
    @Override
    public void in(Form form) {
      form.load(bar);
    }
  }

  record Rows(Table table) implements Block {
    @Override
    public void in(Form form) {
      form.table(table);
    }
  }

  record Drawing(Illustration drawn) implements Block {
    @Override
    public void in(Form form) {
      form.drawn(drawn);
    }
  }

  /** A line to write on. */
  record WrittenOn(String label) implements Block {
    @Override
    public void in(Form form) {
      form.writtenOn(label);
    }
  }

  /**
   * A picture, for the forms of the page that can show one.
   *
   * @param title what it shows, in a few words
   * @param alternative the same for a reader who cannot see it
   * @param caption what it means, printed below it
   * @param svg one well-formed {@code svg} element without references to anything outside; size,
   *     weight and anchor of its lettering are attributes and not from a style sheet
   */
  record Illustration(String title, String alternative, String caption, String svg) {}
}
