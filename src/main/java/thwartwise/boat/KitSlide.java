package thwartwise.boat;

import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * The distance that loose kit slides across a heeled boat: at its own height, to the hull's inside
 * or the first chamber in the way. Kit of known volume is a cube and stops with its face at the
 * wall; other kit stops with its centre there (judgement, the farther of the two). It never slides
 * away from the side it slides to.
 */
record KitSlide(BoatModel model, Kit kit) {
  /** Kit climbs a rising bottom up to this height, m (judgement). */
  private static final double CLIMBS = 0.05;

  private static final double HALF_SLICE = 0.01;
  private static final double NEGLIGIBLE = 1e-9;
  private static final Vector3 TO_PORT = Vector3.of(0, 1, 0);

  /** The centre after sliding; unchanged if it is outside the hull. */
  Vector3 toward(double side) {
    Box slice = slice();
    Solid inside = model.form().inside().within(slice);
    if (!(inside.volume() > NEGLIGIBLE)) {
      return kit.at();
    }
    double wall = outward(inside, side).to();
    for (Space space : model.spaces()) {
      if (space.box().overlaps(slice)) {
        wall = Math.min(wall, nearFace(space.solid().within(slice), side, wall));
      }
    }
    double half = kit.volume().map(v -> Math.cbrt(v) / 2).orElse(0.0);
    double listed = side * kit.at().y();
    return Vector3.of(kit.at().x(), side * Math.max(listed, wall - half), kit.at().z());
  }

  private Box slice() {
    Vector3 at = kit.at();
    double top = Math.max(at.z(), model.boat().hull().floor()) + CLIMBS;
    return new Box(
        new Span(at.x() - HALF_SLICE, at.x() + HALF_SLICE), Span.ALL, new Span(at.z(), top));
  }

  private double nearFace(Solid chamber, double side, double wall) {
    if (!(chamber.volume() > NEGLIGIBLE)) {
      return wall;
    }
    double near = outward(chamber, side).from();
    return near >= side * kit.at().y() ? near : wall;
  }

  /** The stretch across the boat, measured toward the side. */
  private static Span outward(Solid solid, double side) {
    Span across = solid.extent(TO_PORT);
    return side > 0 ? across : across.mirrored();
  }
}
