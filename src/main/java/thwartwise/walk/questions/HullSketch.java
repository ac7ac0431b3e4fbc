package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
  private final ToDoubleFunction<Vector3> up;
  private final double low;
  private final char[][] cells;

  private HullSketch(Outline outline, ToDoubleFunction<Vector3> up, double low, double high) {
    this.aft = outline.aft();
    this.up = up;
    this.low = low;
    this.scale = (COLUMNS - 1) / Math.max(outline.fore() - aft, 1e-3);
    this.cells = new char[1 + (int) Math.round((high - low) * scale / TALL)][COLUMNS];
    Arrays.stream(cells).forEach(row -> Arrays.fill(row, ' '));
  }

  static List<String> of(List<Station> stations) {
    Outline outline = new Outline(stations);
    double half = outline.halfBeam();
    HullSketch above = new HullSketch(outline, Vector3::y, -half, half);
    above.side(stations, Station::port);
    above.side(stations, Station::starboard);
    HullSketch side = new HullSketch(outline, Vector3::z, outline.lowest(), outline.highest());
    side.side(stations, Station::port);
    List<String> lines = new ArrayList<>(List.of("From above, the bow on the right:"));
    lines.addAll(above.drawn());
    lines.add("From the side, to the same scale:");
    lines.addAll(side.drawn());
    return lines;
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
    int row = cells.length - 1 - (int) Math.round((up.applyAsDouble(p) - low) * scale / TALL);
    boolean inside = column >= 0 && column < COLUMNS && row >= 0 && row < cells.length;
    if (inside && cells[row][column] != 'o') {
      cells[row][column] = mark;
    }
  }

  private List<String> drawn() {
    return Arrays.stream(cells).map(row -> ("  " + new String(row)).stripTrailing()).toList();
  }
}
