package thwartwise.sheet;

import java.util.List;
import thwartwise.sheet.SheetRun.Asked;

/**
 * The subject of a sheet: the boat with all it carries, or the fittings and how things were
 * measured, which most people need not write down.
 */
public enum SheetTopic {
  BOAT("Measuring sheet", "measuring sheet"),
  FITTINGS("Measuring sheet: fittings and wires", "measuring sheet fittings");

  private static final List<String> FITTED = List.of("electrics.", "outfit.", "measuredHow.");

  private final String title;
  private final String fileName;

  SheetTopic(String title, String fileName) {
    this.title = title;
    this.fileName = fileName;
  }

  String title() {
    return title;
  }

  /** The beginning of its file name, without the boat and the ending. */
  public String fileName() {
    return fileName;
  }

  List<Asked> of(List<Asked> run) {
    return run.stream()
        .filter(asked -> isFitting(asked.question().key()) == (this == FITTINGS))
        .toList();
  }

  private static boolean isFitting(String key) {
    return FITTED.stream().anyMatch(key::startsWith);
  }
}
