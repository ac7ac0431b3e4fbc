package thwartwise.afloat;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * The height of a level surface in or around some solids when a given volume is under it: the sea
 * around a hull, and the water inside one. Newton on the height, with the surface's area as the
 * slope, kept between bounds; halving wherever Newton's steps do not at least halve from one to the
 * next, because on a waterplane that jumps they can alternate for ever.
 */
final class LevelSurface {
  /** The numerical resolution, as a share of the volume. */
  static final double FINE = 1e-13;

  /** Fine enough to see which way a boat turns, once the remainder is allowed for: m of height. */
  static final double ROUGH = 0.002;

  /** No remainder. */
  static final double EXACT = 0;

  private static final double HEIGHT_TOLERANCE = 1e-15;
  private static final int MOST_STEPS = 80;

  /** From the height of a boat to a fraction of a millimetre. */
  private static final int HALVINGS = 12;

  private LevelSurface() {}

  /**
   * The part under the surface; none when all the solids together are not larger than the volume.
   *
   * @param guess a height to start from; not used if it is no number or outside the solids
   */
  static Optional<ImmersedPart> find(
      List<Lift> solids, double volume, Vector3 up, double guess, Immersion immersion) {
    return surface(solids, volume, up, guess, immersion, EXACT).map(Surface::part);
  }

  /**
   * The same, only nearly at that height.
   *
   * @param rise how far the surface may still have to rise or fall by its own area, m
   */
  static Optional<Surface> surface(
      List<Lift> solids,
      double volume,
      Vector3 up,
      double guess,
      Immersion immersion,
      double rise) {
    if (!(Lift.volume(solids) > volume)) {
      return Optional.empty();
    }
    Span reach = Lift.extent(solids, up);
    double low = reach.from();
    double high = reach.to();
    double height = reach.contains(guess) ? guess : start(solids, volume, up, reach);
    double longest = high - low;
    for (int step = 0; step < MOST_STEPS; step++) {
      ImmersedPart part = Lift.immersed(solids, new WaterPlane(up, height), immersion);
      double missing = volume - part.volume();
      if (Math.abs(missing) <= FINE * Math.max(1, volume)) {
        return Optional.of(new Surface(part, 0));
      }
      if (Math.abs(missing) <= rise * part.area()) {
        return Optional.of(new Surface(part, missing / part.area()));
      }
      if (missing > 0) {
        low = height;
      } else {
        high = height;
      }
      if (high - low <= HEIGHT_TOLERANCE * Math.max(1, Math.abs(height))) {
        return Optional.of(new Surface(part, 0));
      }
      double newton = missing / part.area();
      double halving = (low + high) / 2 - height;
      boolean inside = height + newton > low && height + newton < high;
      double next = inside && Math.abs(newton) <= longest / 2 ? newton : halving;
      longest = Math.abs(next);
      height += next;
    }
    return Optional.empty();
  }

  // Every search begins upright, so a guess from tables is worth it. It only has to be near.
  private static double start(List<Lift> solids, double volume, Vector3 up, Span reach) {
    double low = reach.from();
    double high = reach.to();
    for (int i = 0; i < HALVINGS && up.z() == 1; i++) {
      double middle = (low + high) / 2;
      if (Lift.roughVolumeUnder(solids, middle) < volume) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * A level surface with a wanted volume under it, or nearly so: the sea around a boat, or the
   * water inside one. The missing volume enters the moments to first order, as Newton's equations
   * give it when the height is eliminated from them.
   *
   * @param part the part under the surface
   * @param rise how far it still has to rise by its own area, m; zero where no more can be computed
   */
  record Surface(ImmersedPart part, double rise) {

    WaterPlane plane() {
      return part.plane();
    }

    double height() {
      return part.plane().height() + rise;
    }

    /** The height after a small turn: the surface pivots on the middle of its area. */
    double heightAfter(double heel, double trim) {
      return height() + (heel * part.areaV() - trim * part.areaU()) / part.area();
    }

    /** The height with so much more volume under it, by its own area. */
    double heightWith(double more) {
      return height() + more / part.area();
    }

    double momentU() {
      return part.momentU() + rise * part.areaU();
    }

    double momentV() {
      return part.momentV() + rise * part.areaV();
    }

    /**
     * First moment of the volume about the surface as it stands; what is missing, to its middle.
     */
    double momentS() {
      return part.momentS() + rise * rise * part.area() / 2;
    }
  }
}
