package thwartwise.sheet;

import java.util.List;
import thwartwise.sheet.SheetRun.Asked;

/** What a measuring sheet is about: most boats have no wires, and need one of the two. */
public enum SheetTopic {
  BOAT("Measuring sheet", "measuring sheet"),
  ELECTRICS("Measuring sheet: battery, motor and wires", "measuring sheet electrics");

  private static final String WIRED = "electrics.";

  private final String title;
  private final String fileName;

  SheetTopic(String title, String fileName) {
    this.title = title;
    this.fileName = fileName;
  }

  String title() {
    return title;
  }

  /** Of its file, without the boat and the ending. */
  public String fileName() {
    return fileName;
  }

  List<Asked> of(List<Asked> run) {
    return run.stream()
        .filter(asked -> asked.question().key().startsWith(WIRED) == (this == ELECTRICS))
        .toList();
  }
}
