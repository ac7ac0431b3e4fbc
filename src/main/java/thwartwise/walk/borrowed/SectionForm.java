package thwartwise.walk.borrowed;

import java.util.List;
import java.util.stream.IntStream;
import thwartwise.geometry.Vector3;

/** The shape across a boat as the eye sees it, for a boat nobody has time to measure. */
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

  /** Judgement, on the lean side: the bottom of a V rises a quarter of the depth to its chine. */
  private static final double CHINE_UP = 0.25;

  private static final double CHINE_OUT = 0.85;

  /** Straight pieces that a quarter of an ellipse is made of. */
  private static final int ARCS = 6;

  private final String word;

  SectionForm(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Keel to rail on the port side; {@code bottom} is the half-breadth of a flat bottom. */
  public abstract List<Vector3> points(
      double x, double keel, double rail, double half, double bottom);

  private static Vector3 quarter(double t, double x, double keel, double rail, double half) {
    return Vector3.of(x, half * Math.sin(t), keel + (rail - keel) * (1 - Math.cos(t)));
  }
}
