package thwartwise.walk.borrowed;

import java.util.List;
import java.util.stream.IntStream;
import thwartwise.geometry.Vector3;

/** The shape of a section by eye, for a boat that nobody has time to measure. */
public enum SectionForm {
  FLAT("flat") {
    @Override
    public List<Vector3> points(double x, double keel, double rail, double half, double bottom) {
      return List.of(
          Vector3.of(x, 0, keel), Vector3.of(x, bottom, keel), Vector3.of(x, half, rail));
    }
  },
  SHALLOW_V("shallow V") {
    @Override
    public List<Vector3> points(double x, double keel, double rail, double half, double bottom) {
      double chine = keel + CHINE_UP * (rail - keel);
      return List.of(
          Vector3.of(x, 0, keel),
          Vector3.of(x, CHINE_OUT * half, chine),
          Vector3.of(x, half, rail));
    }
  },
  ROUND("round") {
    @Override
    public List<Vector3> points(double x, double keel, double rail, double half, double bottom) {
      return IntStream.rangeClosed(0, ARCS)
          .mapToObj(i -> quarter(i * Math.PI / 2 / ARCS, x, keel, rail, half))
          .toList();
    }
  };

  /** The rise of a V bottom to its chine, as a share of the depth (judgement, on the lean side). */
  private static final double CHINE_UP = 0.25;

  private static final double CHINE_OUT = 0.85;

  /** The number of straight pieces for a quarter of an ellipse. */
  private static final int ARCS = 6;

  private final String word;

  SectionForm(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /**
   * The section on the port side, keel to rail.
   *
   * @param bottom half-breadth of a flat bottom
   */
  public abstract List<Vector3> points(
      double x, double keel, double rail, double half, double bottom);

  private static Vector3 quarter(double t, double x, double keel, double rail, double half) {
    return Vector3.of(x, half * Math.sin(t), keel + (rail - keel) * (1 - Math.cos(t)));
  }
}
