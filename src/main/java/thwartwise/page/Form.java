package thwartwise.page;

import java.util.List;
import thwartwise.page.Block.Illustration;

/** A form of a page, which says how each piece is rendered. */
public interface Form {
  void title(String words);

  void heading(String words);

  void part(String words, boolean fresh);

  void contents();

  void folded(String summary, boolean printed, List<Block> blocks);

  void paragraph(Sentences telling);

  void point(Sentences telling);

  void note(String words);

  void numbered(int number, Sentences telling);

  void ticked(Sentences telling);

  void picture(String line);

  void gap();

  void banner(String words);

  void figure(String figure, String of);

  void load(LoadBar bar);

  void table(Table table);

  void drawn(Illustration drawn);

  void writtenOn(String label);
}
