package thwartwise.walk.stations;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.hull.LineName;
import thwartwise.measure.PrintableText;
import thwartwise.walk.stations.PlanTerms.Direction;
import thwartwise.walk.stations.StationTable.TablePoint;
import thwartwise.walk.stations.StationTable.TableStation;

/**
 * A table with one row for each station or for each point. The heads in its first line say what the
 * columns are; without heads the columns stand in the order of the walk.
 */
final class StationRows {
  private final List<Column> columns;
  private final List<TableRow> rows;

  private StationRows(List<Column> columns, List<TableRow> rows) {
    this.columns = columns;
    this.rows = rows;
  }

  /**
   * @param line blank where the column is about the whole station or about any point
   * @param direction empty for the name
   */
  private record Column(String line, Optional<Direction> direction) {
    boolean isName() {
      return direction.isEmpty();
    }

    boolean is(String ofLine, Direction wanted) {
      return line.equals(ofLine) && direction.equals(Optional.of(wanted));
    }

    String words() {
      return isName()
          ? "station"
          : (line.isEmpty() ? "" : line + " ")
              + switch (direction.get()) {
                case ALONG -> "x";
                case OUT -> "y";
                case UP -> "z";
              };
    }
  }

  static List<TableStation> stations(List<TableRow> all, List<String> lineNames) {
    if (all.isEmpty()) {
      throw new TableFault(
          "There is nothing in the table. Expected a row for each station, or a table of offsets.");
    }
    int first = firstOfFigures(all);
    if (first == all.size()) {
      throw TableFault.at(all.get(0).line(), "no figures follow. Expected a row for each station.");
    }
    List<TableRow> rows = all.subList(first, all.size());
    List<Column> columns =
        first > 0 && isHeads(all.get(first - 1), rows.get(0))
            ? heads(all.get(first - 1))
            : usual(rows.get(0));
    StationRows table = new StationRows(columns, rows);
    rows.forEach(table::checked);
    return table.isPoints() ? table.fromPoints(lineNames) : table.fromStations(lineNames);
  }

  private static int firstOfFigures(List<TableRow> all) {
    return (int) all.stream().takeWhile(TableRow::isTitle).count();
  }

  /** Whether a line holds heads; a title above the figures holds none. */
  private static boolean isHeads(TableRow row, TableRow figures) {
    return row.isWords()
        && (row.cells().size() == figures.cells().size()
            || PlanTerms.isStation(row.words())
            || PlanTerms.direction(row.words()).isPresent());
  }

  private static List<Column> heads(TableRow head) {
    List<String> cells = head.cells().size() > 1 ? head.cells() : parted(head.first());
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      columns.add(head(cells.get(i), head.line(), i));
    }
    return columns;
  }

  /** Splits heads that are separated by blanks. A column ends at the word for its direction. */
  private static List<String> parted(String heads) {
    List<String> cells = new ArrayList<>();
    String open = "";
    for (String word : heads.split("\\s+")) {
      open = (open + " " + word).strip();
      boolean name = cells.isEmpty() && PlanTerms.isStation(open);
      if (name || PlanTerms.direction(word).isPresent()) {
        cells.add(open);
        open = "";
      }
    }
    if (!open.isEmpty()) {
      cells.add(open);
    }
    return cells;
  }

  private static Column head(String cell, int line, int index) {
    if (PlanTerms.isLine(cell)) {
      return new Column(
          PlanTerms.line(cell.replaceAll("\\(.*?\\)", "")),
          Optional.of(
              PlanTerms.direction(cell)
                  .orElseThrow(
                      () ->
                          TableFault.at(
                              line,
                              index + 1,
                              PrintableText.excerpt(cell)
                                  + " does not say what is measured. Expected x, y (half-breadth)"
                                  + " or z (height) behind it."))));
    }
    Optional<Direction> direction = PlanTerms.direction(cell);
    if (direction.isPresent() || index == 0 && (cell.isEmpty() || PlanTerms.isStation(cell))) {
      return new Column("", direction);
    }
    throw TableFault.at(
        line,
        index + 1,
        PrintableText.excerpt(cell)
            + " is not known. Expected station, x, or a line with y or z, such as chine y.");
  }

  /**
   * The columns in the order of the walk: the name if there is one, x, the keel's height, then y
   * and z of each line.
   */
  private static List<Column> usual(TableRow row) {
    List<Column> columns = new ArrayList<>();
    if (!TableFigure.isLike(row.first())) {
      columns.add(new Column("", Optional.empty()));
    }
    int figures = row.cells().size() - columns.size();
    columns.add(new Column("", Optional.of(Direction.ALONG)));
    if (figures == 3) {
      columns.add(new Column("", Optional.of(Direction.OUT)));
      columns.add(new Column("", Optional.of(Direction.UP)));
      return columns;
    }
    if (figures < 4 || figures % 2 != 0) {
      throw TableFault.at(
          row.line(),
          ("it has %s figures. Expected x, the keel's height, then half-breadth and height of each"
                  + " line up to the rail: 4, 6, 8 and so on; or x, y and z of one point.")
              .formatted(figures));
    }
    int points = figures / 2;
    columns.add(new Column(LineName.of(0, points), Optional.of(Direction.UP)));
    for (int point = 1; point < points; point++) {
      String line = LineName.of(point, points);
      columns.add(new Column(line, Optional.of(Direction.OUT)));
      columns.add(new Column(line, Optional.of(Direction.UP)));
    }
    return columns;
  }

  private void checked(TableRow row) {
    if (row.cells().size() != columns.size()) {
      throw TableFault.at(
          row.line(),
          "it has %s columns. Expected %s: %s."
              .formatted(
                  row.cells().size(),
                  columns.size(),
                  String.join(", ", columns.stream().map(Column::words).toList())));
    }
  }

  /** Whether each row is one point, which is so where heights belong to no named line. */
  private boolean isPoints() {
    return columns.stream().anyMatch(c -> c.is("", Direction.UP));
  }

  private List<TableStation> fromStations(List<String> lineNames) {
    List<String> lines =
        columns.stream().map(Column::line).filter(l -> !l.isEmpty()).distinct().toList();
    for (String line : lines) {
      column(line, Direction.UP)
          .orElseThrow(() -> missing(PrintableText.excerpt(line) + " has no height.", line + " z"));
      if (!line.equals(lines.get(0))) {
        column(line, Direction.OUT)
            .orElseThrow(
                () -> missing(PrintableText.excerpt(line) + " has no half-breadth.", line + " y"));
      }
    }
    lineNames.addAll(lines);
    return rows.stream()
        .map(row -> new TableStation(name(row), lines.stream().map(l -> point(row, l)).toList()))
        .toList();
  }

  private TableFault missing(String what, String expected) {
    return new TableFault(what + " Expected a column with the head " + expected + ".");
  }

  private TablePoint point(TableRow row, String line) {
    int along =
        column(line, Direction.ALONG)
            .or(() -> column("", Direction.ALONG))
            .orElseThrow(() -> missing("The table does not say where its stations stand.", "x"));
    return new TablePoint(
        row.figure(along),
        column(line, Direction.OUT).map(row::figure).orElse(TableFigure.ZERO),
        row.figure(column(line, Direction.UP).orElseThrow()));
  }

  private Optional<Integer> column(String line, Direction direction) {
    return IntStream.range(0, columns.size())
        .boxed()
        .filter(i -> columns.get(i).is(line, direction))
        .findFirst();
  }

  private String name(TableRow row) {
    return columns.get(0).isName() ? row.first() : "";
  }

  private List<TableStation> fromPoints(List<String> lineNames) {
    if (column("", Direction.OUT).isEmpty()) {
      throw missing("The points have no half-breadth.", "y");
    }
    Map<String, List<TablePoint>> grouped = new LinkedHashMap<>();
    for (TableRow row : rows) {
      TablePoint point = point(row, "");
      String station = columns.get(0).isName() ? row.first() : TableUnit.shown(point.x().value());
      grouped.computeIfAbsent(station, unseen -> new ArrayList<>()).add(point);
    }
    List<TableStation> stations = new ArrayList<>();
    int points = grouped.values().iterator().next().size();
    grouped.forEach(
        (name, group) -> {
          if (group.size() != points) {
            throw TableFault.at(
                group.get(0).z().line(),
                "the station that begins here has %s points and the first has %s. Expected the"
                        .formatted(group.size(), points)
                    + " same number at each, from the keel up to the rail.");
          }
          stations.add(new TableStation(columns.get(0).isName() ? name : "", upward(group)));
        });
    IntStream.range(0, points).forEach(i -> lineNames.add(LineName.of(i, points)));
    return stations;
  }

  private static List<TablePoint> upward(List<TablePoint> points) {
    List<TablePoint> upward = new ArrayList<>(points);
    if (points.get(0).z().value().compareTo(points.get(points.size() - 1).z().value()) > 0) {
      Collections.reverse(upward);
    }
    return upward;
  }
}
