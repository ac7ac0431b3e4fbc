package thwartwise.afloat;

import java.util.List;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** Plain bodies with closed-form answers, for tests. */
final class Blocks {
  private Blocks() {}

  /** A block over the middle of its length, bottom at z = 0. */
  static Solid block(double length, double breadth, double depth) {
    return Solid.block(
        new Box(
            new Span(-length / 2, length / 2),
            new Span(-breadth / 2, breadth / 2),
            new Span(0, depth)));
  }

  /** A block floating in water of density 1 kg/m³ at a draft, with G at a height. */
  static Floating floating(Solid solid, double volume, double heightOfG) {
    return new Floating(volume, Vector3.of(0, 0, heightOfG), List.of(new Lift(solid, 1)), 1);
  }
}
