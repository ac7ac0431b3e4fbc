package thwartwise.report;

/** A form a page can take: how each piece of it is set down. */
interface Form {
  void title(String words);

  void heading(String words);

  void paragraph(Telling telling);

  void point(Telling telling);

  void numbered(int number, Telling telling);

  void ticked(Telling telling);

  void picture(String line);

  void gap();

  void banner(String words);

  void figure(String figure, String of);

  void load(LoadBar bar);

  void table(Table table);

  void drawn(Drawn drawn);

  void writtenOn(String label);
}
