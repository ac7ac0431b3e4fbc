package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import thwartwise.geometry.Vector3;

/** A section drawn in characters from the points so far, port on the left. */
final class SectionSketch {
  private static final int COLUMNS = 61;
  private static final int ROWS = 13;

  /** The height of a character in units of its width, about. */
  private static final double TALL = 2;

  private final char[][] cells = new char[ROWS][COLUMNS];
  private final double scale;

  private SectionSketch(double half, double height) {
    Arrays.stream(cells).forEach(row -> Arrays.fill(row, ' '));
    double across = (COLUMNS / 2 - 1) / Math.max(half, 1e-3);
    double up = (ROWS - 1) * TALL / Math.max(height, 1e-3);
    this.scale = Math.min(across, up);
  }

  /**
   * @param port keel to rail, y to port
   * @param starboard likewise, y negative
   */
  static List<String> of(List<Vector3> port, List<Vector3> starboard) {
    double half =
        Math.max(
            port.stream().mapToDouble(Vector3::y).max().orElse(0),
            starboard.stream().mapToDouble(p -> -p.y()).max().orElse(0));
    double height = port.stream().mapToDouble(Vector3::z).max().orElse(0);
    SectionSketch sketch = new SectionSketch(half, height);
    sketch.line(port);
    sketch.line(starboard);
    return sketch.drawn();
  }

  private void line(List<Vector3> points) {
    for (int i = 1; i < points.size(); i++) {
      between(points.get(i - 1), points.get(i));
    }
    points.forEach(p -> set(p.y(), p.z(), 'o'));
  }

  private void between(Vector3 a, Vector3 b) {
    int steps = COLUMNS;
    for (int i = 0; i <= steps; i++) {
      Vector3 p = a.toward(b, (double) i / steps);
      set(p.y(), p.z(), '.');
    }
  }

  /** Port on the left hand, as seen from aft. */
  private void set(double y, double z, char mark) {
    int column = COLUMNS / 2 - (int) Math.round(y * scale);
    int row = ROWS - 1 - (int) Math.round(z * scale / TALL);
    if (column >= 0 && column < COLUMNS && row >= 0 && row < ROWS && cells[row][column] != 'o') {
      cells[row][column] = mark;
    }
  }

  private List<String> drawn() {
    List<String> lines = new ArrayList<>();
    for (char[] row : cells) {
      String line = new String(row).stripTrailing();
      if (!line.isEmpty() || !lines.isEmpty()) {
        lines.add(("  | " + line).stripTrailing());
      }
    }
    lines.add("  +-" + "-".repeat(COLUMNS) + " baseline");
    return lines;
  }
}
