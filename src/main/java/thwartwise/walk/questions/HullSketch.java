package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;

/**
 * The plan and the side view of a hull, drawn from its stations in characters to one scale, bow on
 * the right.
 */
final class HullSketch {
  private static final int COLUMNS = 70;

  /** The height of a character in units of its width, about. */
  private static final double TALL = 2;

  private final double aft;
  private final double scale;
  private final ToIntFunction<Vector3> row;
  private final char[][] cells;

  /**
   * @param row of a point, the top one 0
   */
  private HullSketch(double aft, double scale, int rows, ToIntFunction<Vector3> row) {
    this.aft = aft;
    this.scale = scale;
    this.row = row;
    this.cells = new char[rows][COLUMNS];
    Arrays.stream(cells).forEach(one -> Arrays.fill(one, ' '));
  }

  static List<String> of(List<Station> stations) {
    Outline outline = new Outline(stations);
    HullSketch above = fromAbove(outline);
    above.side(stations, Station::port);
    above.side(stations, Station::starboard);
    HullSketch side = fromTheSide(outline);
    side.side(stations, Station::port);
    List<String> lines = new ArrayList<>(List.of("From above, the bow on the right:"));
    lines.addAll(above.drawn());
    lines.add("From the side, to the same scale:");
    lines.addAll(side.drawn());
    return lines;
  }

  /** Columns for a metre. */
  private static double scale(Outline outline) {
    return (COLUMNS - 1) / Math.max(outline.fore() - outline.aft(), 1e-3);
  }

  /** Rows of a length that stands upright on the screen. */
  private static int rows(double scale, double length) {
    return (int) Math.round(length * scale / TALL);
  }

  /** Rounded outward on either side: rounded upward, a boat alike on both sides was not. */
  private static HullSketch fromAbove(Outline outline) {
    double scale = scale(outline);
    int half = rows(scale, outline.halfBeam());
    return new HullSketch(
        outline.aft(),
        scale,
        2 * half + 1,
        p -> half - (int) Math.signum(p.y()) * rows(scale, Math.abs(p.y())));
  }

  private static HullSketch fromTheSide(Outline outline) {
    double scale = scale(outline);
    double lowest = outline.lowest();
    int top = rows(scale, outline.highest() - lowest);
    return new HullSketch(outline.aft(), scale, top + 1, p -> top - rows(scale, p.z() - lowest));
  }

  /** All lines of one side from aft to forward, and both end stations. */
  private void side(List<Station> stations, Function<Station, List<Vector3>> of) {
    for (int line = 0; line < of.apply(stations.get(0)).size(); line++) {
      int number = line;
      path(stations.stream().map(s -> of.apply(s).get(number)).toList());
    }
    path(of.apply(stations.get(0)));
    path(of.apply(stations.get(stations.size() - 1)));
    stations.forEach(station -> of.apply(station).forEach(p -> set(p, 'o')));
  }

  private void path(List<Vector3> points) {
    for (int i = 1; i < points.size(); i++) {
      for (int step = 0; step <= COLUMNS; step++) {
        set(points.get(i - 1).toward(points.get(i), (double) step / COLUMNS), '.');
      }
    }
  }

  private void set(Vector3 p, char mark) {
    int column = (int) Math.round((p.x() - aft) * scale);
    int at = row.applyAsInt(p);
    boolean inside = column >= 0 && column < COLUMNS && at >= 0 && at < cells.length;
    if (inside && cells[at][column] != 'o') {
      cells[at][column] = mark;
    }
  }

  /** A row that the narrower side of a lopsided hull does not come to is left out. */
  private List<String> drawn() {
    return Arrays.stream(cells)
        .map(one -> ("  " + new String(one)).stripTrailing())
        .filter(line -> !line.isBlank())
        .toList();
  }
}
