package thwartwise.walk.stations;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.measure.Reading;
import thwartwise.walk.stations.StationTable.TablePoint;

/**
 * All stations of a boat at once, aft to forward, each from the keel up to the rail.
 *
 * @param lines their names, keel to rail
 * @param unit of all its figures
 */
public record StationTable(List<TableStation> stations, List<String> lines, TableUnit unit) {
  private static final int FEWEST_STATIONS = 3;
  private static final int MOST_STATIONS = 21;
  private static final int MOST_POINTS = 12;

  /** How far the fore end of the table may be off the length overall, m. */
  private static final double LEEWAY = 0.10;

  private static final Pattern IN_BRACKETS = Pattern.compile("\\(([A-Za-z]+)\\)");

  public StationTable {
    stations = List.copyOf(stations);
    lines = List.copyOf(lines);
  }

  /** The table before the length of the boat is known; its unit may not be known yet. */
  public static Optional<String> fault(String text) {
    try {
      new Parsed(text);
      return Optional.empty();
    } catch (TableFault fault) {
      return Optional.of(fault.getMessage());
    }
  }

  /**
   * Reads a table.
   *
   * @param length overall as measured, m; it decides the unit where the table does not
   * @param shown a length in words
   */
  public static Reading<StationTable> of(
      String text, double length, Function<Double, String> shown) {
    try {
      StationTable table = new Parsed(text).in(length, shown);
      return Reading.understood(table, table.unit().words());
    } catch (TableFault fault) {
      return Reading.refused(fault.getMessage());
    }
  }

  /** The rows of a table, as far as they can be read without knowing the boat. */
  private static final class Parsed {
    private final List<TableRow> rows = new ArrayList<>();
    private Optional<TableUnit> stated = Optional.empty();
    private final List<TableStation> found;

    Parsed(String text) {
      TableRow.of(text).forEach(this::take);
      this.found = stations(Optional.empty(), new ArrayList<>());
      checkSize();
    }

    private void take(TableRow row) {
      Optional<TableUnit> unit = TableUnit.stated(row.words());
      if (unit.isPresent()) {
        stated = unit;
        return;
      }
      if (TableUnit.isStatement(row.words())) {
        throw TableFault.at(
            row.line(),
            "that unit is not known. Expected m, cm, mm, feet, inches or feet-inches-eighths.");
      }
      if (row.isWords()) {
        Matcher brackets = IN_BRACKETS.matcher(row.words());
        while (brackets.find() && stated.isEmpty()) {
          stated = TableUnit.stated(brackets.group(1));
        }
      }
      rows.add(row);
    }

    private List<TableStation> stations(Optional<TableFigure> length, List<String> lines) {
      return OffsetsTable.isOne(rows)
          ? OffsetsTable.stations(rows, length, lines)
          : StationRows.stations(rows, lines);
    }

    private void checkSize() {
      int points = found.get(0).points().size();
      if (found.size() < FEWEST_STATIONS || found.size() > MOST_STATIONS) {
        throw new TableFault(
            "The table has %s stations. Expected %s to %s."
                .formatted(found.size(), FEWEST_STATIONS, MOST_STATIONS));
      }
      if (points < 2 || points > MOST_POINTS) {
        throw new TableFault(
            "Its stations have %s points. Expected 2 to %s, from the keel up to the rail."
                .formatted(points, MOST_POINTS));
      }
    }

    StationTable in(double length, Function<Double, String> shown) {
      TableUnit unit = unit(length, shown);
      BigDecimal inUnit =
          new BigDecimal(length).divide(new BigDecimal(unit.metres(BigDecimal.ONE)), FINE);
      List<String> lines = new ArrayList<>();
      List<TableStation> read =
          new ArrayList<>(stations(Optional.of(new TableFigure(inUnit, false, 0, 0)), lines));
      if (forward(read.get(0)).compareTo(forward(read.get(read.size() - 1))) > 0) {
        Collections.reverse(read);
      }
      return fromTheMiddleLine(new StationTable(read, lines, unit));
    }

    private TableUnit unit(double length, Function<Double, String> shown) {
      Optional<TableFigure> dashed = figures(true).stream().findFirst();
      if (dashed.isPresent()) {
        figures(false).stream()
            .filter(f -> !f.isZero() && f.line() > 0)
            .findFirst()
            .ifPresent(
                bare -> {
                  throw TableFault.at(
                      bare.line(),
                      bare.column(),
                      "%s has no dashes, and others are feet-inches-eighths. Expected one notation"
                              .formatted(TableUnit.shown(bare.value()))
                          + " throughout, such as 1-4-3.");
                });
        return TableUnit.EIGHTHS;
      }
      return stated.orElseGet(() -> fitting(length, shown));
    }

    private List<TableFigure> figures(boolean eighths) {
      return found.stream()
          .flatMap(s -> s.points().stream())
          .flatMap(p -> List.of(p.x(), p.y(), p.z()).stream())
          .filter(f -> f.eighths() == eighths)
          .toList();
    }

    /** The only unit in which the table is as long as the boat. */
    private TableUnit fitting(double length, Function<Double, String> shown) {
      BigDecimal most =
          found.stream().map(Parsed::forward).max(BigDecimal::compareTo).orElseThrow();
      return TableUnit.bare().stream()
          .filter(u -> Math.abs(u.metres(most) - length) <= LEEWAY)
          .findFirst()
          .orElseThrow(
              () ->
                  new TableFault(
                      ("The table ends at %s forward, which is the length overall (%s) in no unit."
                              + " Expected a station at the fore end; or a first line that says"
                              + " the unit, such as mm or inches.")
                          .formatted(TableUnit.shown(most), shown.apply(length))));
    }

    private static BigDecimal forward(TableStation station) {
      return station.points().stream()
          .map(p -> p.x().value())
          .max(BigDecimal::compareTo)
          .orElseThrow();
    }

    private static final MathContext FINE = new MathContext(9);

    /**
     * Adds the middle line to a station whose bottom begins next to it; the bottom is flat as far
     * as there.
     */
    private static StationTable fromTheMiddleLine(StationTable table) {
      boolean startsOnMiddle =
          table.stations().stream().allMatch(s -> s.points().get(0).y().isZero());
      if (startsOnMiddle) {
        return table;
      }
      List<String> lines = new ArrayList<>(List.of("middle of the bottom"));
      lines.addAll(table.lines());
      return new StationTable(
          table.stations().stream().map(Parsed::withMiddle).toList(), lines, table.unit());
    }

    private static TableStation withMiddle(TableStation station) {
      TablePoint lowest = station.points().get(0);
      List<TablePoint> points =
          new ArrayList<>(List.of(new TablePoint(lowest.x(), TableFigure.ZERO, lowest.z())));
      points.addAll(station.points());
      return new TableStation(station.name(), points);
    }
  }

  /** One answer of the walk and its place in the table. */
  public record TypedCell(String typed, int line, int column) {}

  /**
   * The answers of the walk by the keys of their questions. Answers that no question asks for may
   * remain.
   */
  public Map<String, TypedCell> answers() {
    Map<String, TypedCell> answers = new LinkedHashMap<>();
    answers.put("hull.stations", cell(Integer.toString(stations.size())));
    answers.put("hull.points", cell(Integer.toString(lines.size())));
    for (int i = 0; i < stations.size(); i++) {
      TableStation station = stations.get(i);
      String key = "hull.station." + (i + 1);
      answers.put(key + ".name", cell(name(i)));
      answers.put(key + ".upright", cell(station.isPlumb() ? "yes" : "no"));
      answers.put(key + ".x", cell(station.points().get(0).x()));
      for (int p = 0; p < lines.size(); p++) {
        TablePoint point = station.points().get(p);
        String at = key + ".point." + (p + 1);
        answers.put(at + ".x", cell(point.x()));
        answers.put(at + ".y", cell(point.y()));
        answers.put(at + ".z", cell(point.z()));
      }
    }
    return answers;
  }

  private static TypedCell cell(String typed) {
    return new TypedCell(typed, 0, 0);
  }

  private TypedCell cell(TableFigure figure) {
    return new TypedCell(unit.typed(figure.value()), figure.line(), figure.column());
  }

  /**
   * The name of a station. A bare number is dropped, because messages number the stations from aft.
   */
  String name(int station) {
    String given = stations.get(station).name();
    boolean taken =
        stations.stream().filter(s -> s.name().equals(given)).count() > 1 || given.isBlank();
    return taken
        ? "station " + (station + 1)
        : given.matches("[-+.,]?\\d.*") ? "plan " + given : given;
  }

  /** A point of a station as in the table: x forward, y out from the middle line, z up. */
  record TablePoint(TableFigure x, TableFigure y, TableFigure z) {}

  /**
   * A station of a table.
   *
   * @param name as the table has it; blank when it has none
   * @param points keel to rail
   */
  record TableStation(String name, List<TablePoint> points) {
    TableStation {
      points = List.copyOf(points);
    }

    /** Whether all points have the same x. */
    boolean isPlumb() {
      return points.stream().allMatch(p -> p.x().value().compareTo(points.get(0).x().value()) == 0);
    }
  }
}
