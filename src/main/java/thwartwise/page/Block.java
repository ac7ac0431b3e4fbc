package thwartwise.page;

/** One piece of a page, the same whatever form the page takes. */
public sealed interface Block {

  /** Tells this piece in the form. */
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

  record Paragraph(Sentences telling) implements Block {
    @Override
    public void in(Form form) {
      form.paragraph(telling);
    }
  }

  record Point(Sentences telling) implements Block {
    @Override
    public void in(Form form) {
      form.point(telling);
    }
  }

  record Numbered(int number, Sentences telling) implements Block {
    @Override
    public void in(Form form) {
      form.numbered(number, telling);
    }
  }

  /** A point with a box for somebody's pen. */
  record Ticked(Sentences telling) implements Block {
    @Override
    public void in(Form form) {
      form.ticked(telling);
    }
  }

  /** A line of a picture made of characters, all of the same width. */
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

  /** What is read first, from farther away than the rest. */
  record Banner(String words) implements Block {
    @Override
    public void in(Form form) {
      form.banner(words);
    }
  }

  /** A figure to be read at arm's length, and what it is of. */
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

  record Drawing(Drawn drawn) implements Block {
    @Override
    public void in(Form form) {
      form.drawn(drawn);
    }
  }

  /** A line for somebody to write on. */
  record WrittenOn(String label) implements Block {
    @Override
    public void in(Form form) {
      form.writtenOn(label);
    }
  }
}
