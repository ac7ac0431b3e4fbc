package thwartwise.picture;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A picture in letters, for a terminal. A letter is twice as high as it is wide. */
final class LetterGrid implements Canvas {
  private static final String NO_FILL = "none";
  private static final String WHITE = "#fff";
  private static final int BLANK = ' ';

  private final double column;
  private final double row;
  private final int[][] cells;

  LetterGrid(double height, int columns) {
    this.column = WIDTH / columns;
    this.row = 2 * column;
    this.cells = new int[(int) Math.ceil(height / row)][columns];
    for (int[] line : cells) {
      Arrays.fill(line, BLANK);
    }
  }

  @Override
  public void path(String kind, List<Point> points, Pen pen) {
    for (int i = 0; i + 1 < points.size(); i++) {
      stroke(points.get(i), points.get(i + 1), pen);
    }
  }

  @Override
  public void polygon(String kind, List<Point> points, String fill, Pen pen) {
    area(kind, points, fill);
    path(kind, points, pen);
    stroke(points.get(points.size() - 1), points.get(0), pen);
  }

  @Override
  public void area(String kind, List<Point> points, String fill) {
    if (!fill.equals(NO_FILL)) {
      fill(points, fill.equals(WHITE) ? BLANK : '~');
    }
  }

  @Override
  public void hatched(String kind, List<Point> area, Hatching hatching) {
    fill(area, hatching.letter());
  }

  @Override
  public void strokes(String kind, List<List<Point>> strokes, Pen pen) {
    strokes.forEach(stroke -> path(kind, stroke, pen));
  }

  @Override
  public void circle(String kind, Point at, double radius, String fill, Pen pen) {
    put(at, fill.equals(WHITE) ? 'O' : '@');
  }

  @Override
  public void mark(String kind, Point middle) {
    put(middle, '*');
  }

  @Override
  public void words(String kind, Point at, Anchor anchor, String words) {
    int[] letters = words.codePoints().toArray();
    int from = (int) Math.round(at.x() / column - anchor.before() * letters.length);
    int start = Math.max(0, Math.min(cells[0].length - letters.length, from));
    // Lettering stands on its point and is about as high as a row.
    int line = line(at.y() - row / 2);
    for (int i = 0; i < letters.length && start + i < cells[line].length; i++) {
      cells[line][start + i] = letters[i];
    }
  }

  @Override
  public void small(String kind, Point at, Anchor anchor, String words) {
    words(kind, at, anchor, words);
  }

  private int line(double y) {
    return Math.max(0, Math.min(cells.length - 1, (int) Math.floor(y / row)));
  }

  private void put(Point at, int letter) {
    int x = (int) Math.floor(at.x() / column);
    int y = (int) Math.floor(at.y() / row);
    if (y >= 0 && y < cells.length && x >= 0 && x < cells[y].length) {
      cells[y][x] = letter;
    }
  }

  /** One letter in each column or row that it crosses, whichever are more. */
  private void stroke(Point from, Point to, Pen pen) {
    double across = (to.x() - from.x()) / column;
    double down = (to.y() - from.y()) / row;
    int steps = (int) Math.ceil(Math.max(Math.abs(across), Math.abs(down)));
    int letter = letter(across, down, pen);
    for (int i = 0; i <= steps; i++) {
      double share = steps == 0 ? 0 : (double) i / steps;
      Point at =
          new Point(from.x() + share * (to.x() - from.x()), from.y() + share * (to.y() - from.y()));
      if (!pen.isBroken() || (int) Math.floor(at.x() / column) % 2 == 0) {
        put(at, letter);
      }
    }
  }

  private static int letter(double across, double down, Pen pen) {
    if (pen.isDotted()) {
      return '.';
    }
    if (Math.abs(across) >= 2 * Math.abs(down)) {
      return pen.isBroken() ? '-' : '_';
    }
    if (Math.abs(down) >= 2 * Math.abs(across)) {
      return '|';
    }
    return across * down > 0 ? '\\' : '/';
  }

  private void fill(List<Point> area, int letter) {
    for (int y = 0; y < cells.length; y++) {
      for (int x = 0; x < cells[y].length; x++) {
        if (holds(area, new Point((x + 0.5) * column, (y + 0.5) * row))) {
          cells[y][x] = letter;
        }
      }
    }
  }

  /** Whether a point is inside: an odd number of edges lies to the right of it. */
  private static boolean holds(List<Point> area, Point p) {
    boolean inside = false;
    for (int i = 0; i < area.size(); i++) {
      Point a = area.get(i);
      Point b = area.get((i + 1) % area.size());
      boolean between = a.y() > p.y() != b.y() > p.y();
      if (between && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
    return inside;
  }

  String whole() {
    return Arrays.stream(cells)
            .map(line -> new String(line, 0, line.length).stripTrailing())
            .collect(Collectors.joining("\n"))
            .stripTrailing()
        + "\n";
  }
}
