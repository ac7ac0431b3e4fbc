package thwartwise.afloat;

import java.util.List;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** A solid that gives buoyancy, multiplied by a factor; a negative factor subtracts an overlap. */
public record Lift(Solid solid, double factor) {
  double volume() {
    return factor * solid.volume();
  }

  /** The volume of all of them together, fully under water, m³. */
  static double volume(List<Lift> lifts) {
    double sum = 0;
    for (Lift lift : lifts) {
      sum += lift.volume();
    }
    return sum;
  }

  /** The approximate volume under a height while they stand upright, m³. */
  static double roughVolumeUnder(List<Lift> lifts, double height) {
    double sum = 0;
    for (Lift lift : lifts) {
      sum += lift.factor() * lift.solid().roughVolumeUnder(height);
    }
    return sum;
  }

  static ImmersedPart immersed(List<Lift> lifts, WaterPlane plane, Immersion immersion) {
    immersion.at(plane);
    for (Lift lift : lifts) {
      immersion.add(lift.solid(), lift.factor());
    }
    return immersion.part();
  }

  /** The range along a direction from where nothing is wet to where all is. */
  static Span extent(List<Lift> lifts, Vector3 up) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Lift lift : lifts) {
      if (lift.solid().triangleCount() > 0) {
        Span reach = lift.solid().extent(up);
        from = Math.min(from, reach.from());
        to = Math.max(to, reach.to());
      }
    }
    return new Span(from, to);
  }
}
