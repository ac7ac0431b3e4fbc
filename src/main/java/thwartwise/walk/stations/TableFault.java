package thwartwise.walk.stations;

/** An error in a table, in one line: where, what, what was expected. */
final class TableFault extends RuntimeException {
  private static final long serialVersionUID = 1L;

  TableFault(String message) {
    super(message, null, false, false);
  }

  static TableFault at(int line, int column, String what) {
    return new TableFault("Line %s, column %s: %s".formatted(line, column, what));
  }

  static TableFault at(int line, String what) {
    return new TableFault("Line %s: %s".formatted(line, what));
  }
}
