package thwartwise.walk.stations;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.measure.PrintableText;
import thwartwise.walk.stations.PlanTerms.Direction;
import thwartwise.walk.stations.StationTable.TablePoint;
import thwartwise.walk.stations.StationTable.TableStation;

/**
 * A table of offsets as plans print it: stations in columns, the lines of the hull in rows, first
 * their heights above the base, then their half-breadths. One row holds the distance of each
 * station.
 */
final class OffsetsTable {
  private static final int FEWEST = 3;

  private final Map<Direction, Map<String, TableRow>> lines = new EnumMap<>(Direction.class);
  private Optional<TableRow> names = Optional.empty();
  private Optional<TableRow> along = Optional.empty();
  private Optional<Direction> block = Optional.empty();

  private OffsetsTable() {
    for (Direction direction : Direction.values()) {
      lines.put(direction, new LinkedHashMap<>());
    }
  }

  /** Whether the rows of the table are the lines of a hull. */
  static boolean isOne(List<TableRow> rows) {
    return rows.stream()
        .anyMatch(
            row ->
                row.figures() >= FEWEST
                    && !TableFigure.isLike(row.first())
                    && (PlanTerms.isLine(row.first()) || PlanTerms.isOtherLine(row.first())));
  }

  /**
   * The stations.
   *
   * @param length overall in the unit of the table, for a table that counts from the fore end
   */
  static List<TableStation> stations(
      List<TableRow> rows, Optional<TableFigure> length, List<String> lineNames) {
    OffsetsTable table = new OffsetsTable();
    rows.forEach(table::take);
    return table.stations(length, lineNames);
  }

  private void take(TableRow row) {
    String label = row.first();
    if (PlanTerms.isStation(label)) {
      names = Optional.of(row);
    } else if (row.isTitle() && !PlanTerms.isSpacing(label) && nothingMeasured()
        || row.figures() == 0) {
      heading(row);
    } else if (PlanTerms.isOtherLine(label)) {
      throw TableFault.at(
          row.line(),
          PrintableText.excerpt(label)
              + " is no line along the hull. Expected rows such as keel, chine and sheer; leave"
              + " out buttocks, waterlines and diagonals.");
    } else if (PlanTerms.isLine(label)) {
      line(row);
    } else if (PlanTerms.isSpacing(label)
        || PlanTerms.direction(label).equals(Optional.of(Direction.ALONG))) {
      along = Optional.of(row);
    } else if (PlanTerms.direction(label).isPresent()) {
      heading(row);
    } else if (names.isEmpty() && nothingMeasured()) {
      names = Optional.of(row);
    } else {
      throw unknown(row);
    }
  }

  private boolean nothingMeasured() {
    return lines.values().stream().allMatch(Map::isEmpty);
  }

  private void heading(TableRow row) {
    PlanTerms.direction(row.words()).ifPresent(found -> block = Optional.of(found));
  }

  private static TableFault unknown(TableRow row) {
    return TableFault.at(
        row.line(),
        1,
        PrintableText.excerpt(row.first())
            + " is not known. Expected station, forward, or a line of the hull such as keel,"
            + " chine or sheer.");
  }

  private void line(TableRow row) {
    Direction direction =
        PlanTerms.direction(row.first())
            .or(() -> block)
            .orElseThrow(
                () ->
                    TableFault.at(
                        row.line(),
                        "are these heights or half-breadths? Expected a line before it that says"
                            + " so: Heights above base, or Half-breadths."));
    String name = PlanTerms.line(row.first());
    if (lines.get(direction).put(name, row) != null) {
      throw TableFault.at(
          row.line(),
          1,
          PrintableText.excerpt(name)
              + " stands twice under the same heading. Expected each line once, such as chine 1"
              + " and chine 2.");
    }
  }

  private List<TableStation> stations(Optional<TableFigure> length, List<String> lineNames) {
    Map<String, TableRow> heights = lines.get(Direction.UP);
    if (heights.size() < 2) {
      throw new TableFault(
          "The table has no heights of two lines. Expected a line Heights above base, and below it"
              + " rows such as keel, chine and sheer.");
    }
    List<String> order = keelToRail(heights);
    int count = count(heights.get(order.get(0)));
    heights.values().forEach(row -> sameCount(row, count));
    checkBreadths(order);
    lineNames.addAll(order);
    List<String> headings = names.map(row -> headings(row, count)).orElse(List.of());
    List<TableStation> stations = new ArrayList<>();
    for (int station = 1; station <= count; station++) {
      List<TablePoint> points = new ArrayList<>();
      for (String name : order) {
        points.add(point(name, station, count, length));
      }
      stations.add(new TableStation(name(headings, station), points));
    }
    return stations;
  }

  private static int count(TableRow row) {
    return row.cells().size() - 1;
  }

  private static void sameCount(TableRow row, int count) {
    if (count(row) != count) {
      throw TableFault.at(
          row.line(),
          "it has %s figures. Expected %s, one for each station.".formatted(count(row), count));
    }
  }

  private static List<String> keelToRail(Map<String, TableRow> heights) {
    List<String> order = new ArrayList<>(heights.keySet());
    TableRow first = heights.get(order.get(0));
    TableRow last = heights.get(order.get(order.size() - 1));
    if (first.figure(1).value().compareTo(last.figure(1).value()) > 0) {
      Collections.reverse(order);
    }
    return order;
  }

  /**
   * Checks the half-breadths. The lowest line is the keel and lies on the middle line unless the
   * table says otherwise.
   */
  private void checkBreadths(List<String> order) {
    for (TableRow row : lines.get(Direction.OUT).values()) {
      String name = PlanTerms.line(row.first());
      if (!order.contains(name)) {
        throw TableFault.at(
            row.line(),
            1,
            "%s has half-breadths and no heights. Expected the lines of the heights: %s."
                .formatted(PrintableText.excerpt(name), String.join(", ", order)));
      }
    }
    for (String name : order.subList(1, order.size())) {
      if (!lines.get(Direction.OUT).containsKey(name)) {
        throw new TableFault(
            "The table has heights of %s and no half-breadths. Expected a row for it under a line"
                    .formatted(PrintableText.excerpt(name))
                + " Half-breadths.");
      }
    }
  }

  private TablePoint point(String name, int station, int count, Optional<TableFigure> length) {
    TableRow out = lines.get(Direction.OUT).get(name);
    if (out != null) {
      sameCount(out, count);
    }
    return new TablePoint(
        along(name, station, count, length),
        out == null ? TableFigure.ZERO : out.figure(station),
        lines.get(Direction.UP).get(name).figure(station));
  }

  private TableFigure along(String name, int station, int count, Optional<TableFigure> length) {
    TableRow ofLine = lines.get(Direction.ALONG).get(name);
    if (ofLine != null) {
      sameCount(ofLine, count);
      return ofLine.figure(station);
    }
    TableRow row =
        along.orElseThrow(
            () ->
                new TableFault(
                    "The table does not say where its stations stand. Expected a row Forward (of"
                        + " the aft end), From stem, or Spacing with one figure."));
    if (PlanTerms.isSpacing(row.first())) {
      return row.figure(1).times(station - 1);
    }
    sameCount(row, count);
    return PlanTerms.isFromAhead(row.first())
        ? before(row.figure(station), length)
        : row.figure(station);
  }

  /** Before the length is known, only checks that the figures can be read. */
  private static TableFigure before(TableFigure fromAhead, Optional<TableFigure> length) {
    return length
        .map(
            all ->
                new TableFigure(
                    all.value().subtract(fromAhead.value()),
                    fromAhead.eighths(),
                    fromAhead.line(),
                    fromAhead.column()))
        .orElse(fromAhead);
  }

  private static String name(List<String> headings, int station) {
    return headings.isEmpty() ? "" : headings.get(station - 1);
  }

  /** The heads of the columns of figures; the first of them may be a letter or a word. */
  private static List<String> headings(TableRow row, int count) {
    String first = PlanTerms.withoutStation(row.first());
    List<String> rest = row.cells().subList(1, row.cells().size());
    Stream<List<String>> begun =
        first.isEmpty() ? Stream.of(List.of()) : Stream.of(List.of(first), PlanTerms.words(first));
    return begun
        .map(before -> Stream.concat(before.stream(), rest.stream()).toList())
        .filter(headings -> headings.size() == count)
        .findFirst()
        .orElseGet(() -> noHeadings(row, count));
  }

  private static List<String> noHeadings(TableRow row, int count) {
    if (row.isTitle() || row.figures() == 0) {
      return List.of();
    }
    throw PlanTerms.isStation(row.first())
        ? TableFault.at(
            row.line(),
            "its stations are not as many as the columns of figures. Expected %s, each a number"
                    .formatted(count)
                + " or one word, such as A, 1 and FP.")
        : unknown(row);
  }
}
