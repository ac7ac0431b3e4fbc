package thwartwise.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thwartwise.boat.Space;

/** The background and strokes of an area, which distinguish it in black and white as well. */
enum Hatching {
  COUNTS("#bdbdbd", 8, 1, '#', "Counts when swamped"),
  CLAIMED("#ececec", 14, -1, '/', "Only claimed, counts for nothing"),
  OPEN("#ffffff", 10, 0, ':', "Open, vented, leaking or loose, counts for nothing"),
  WATER_COMES_IN("#e4e4e4", 9, 1, '~', "Water comes in");

  private final String ground;
  private final double spacing;
  private final double slope;
  private final char letter;
  private final String legend;

  /**
   * @param spacing level distance of the strokes
   * @param slope units up for one to the right; zero for vertical strokes
   */
  Hatching(String ground, double spacing, double slope, char letter, String legend) {
    this.ground = ground;
    this.spacing = spacing;
    this.slope = slope;
    this.letter = letter;
    this.legend = legend;
  }

  /** The hatching of a chamber. */
  static Hatching of(Space space) {
    if (space.counting().share() > 0) {
      return COUNTS;
    }
    return space.counting().ifProven() > 0 ? CLAIMED : OPEN;
  }

  /** Its meaning, before a list. */
  String legend() {
    return legend;
  }

  String ground() {
    return ground;
  }

  /** Its sign in a picture of letters. */
  char letter() {
    return letter;
  }

  /**
   * The strokes within the area, clipped here. Each is the line {@code x + slope · y = c}; sorted
   * along it, its crossings with the edges alternate between in and out.
   */
  List<List<Point>> strokes(List<Point> area) {
    double least = area.stream().mapToDouble(this::across).min().orElse(0);
    double most = area.stream().mapToDouble(this::across).max().orElse(0);
    List<List<Point>> strokes = new ArrayList<>();
    for (double c = least + spacing / 2; c < most; c += spacing) {
      List<Point> met = met(area, c);
      for (int i = 0; i + 1 < met.size(); i += 2) {
        strokes.add(List.of(met.get(i), met.get(i + 1)));
      }
    }
    return strokes;
  }

  private double across(Point p) {
    return p.x() + slope * p.y();
  }

  private List<Point> met(List<Point> area, double c) {
    List<Point> met = new ArrayList<>();
    for (int i = 0; i < area.size(); i++) {
      Point a = area.get(i);
      Point b = area.get((i + 1) % area.size());
      if (across(a) < c != across(b) < c) {
        double share = (c - across(a)) / (across(b) - across(a));
        met.add(new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
      }
    }
    met.sort(Comparator.comparingDouble(Point::y));
    return met;
  }
}
