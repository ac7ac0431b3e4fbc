package thwartwise.afloat;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.LevelSurface.Surface;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * Loose water in the boat: a volume, in its hold. Its surface is level like the sea's and is found
 * again at every pose, so no small-angle allowance for free surface is needed.
 *
 * @param hold its bounds: the inside of the hull, less what stands in it
 * @param volume m³; zero has no surface either, less than zero is nowhere
 */
public record Pool(List<Lift> hold, double volume) {
  private static final double NUMERIC = 1e-9;

  public Pool {
    hold = List.copyOf(hold);
  }

  /** The capacity of the hold up to its lid, m³. */
  public double capacity() {
    return Lift.volume(hold);
  }

  /** How far from the middle line it could run to port (1) or starboard (−1), m. */
  public double farthest(double side) {
    return Lift.extent(hold, Vector3.of(0, side, 0)).to();
  }

  /** Whether its hold is one space, symmetric in a symmetric boat. */
  public boolean isAboutTheMiddle() {
    return hold.size() == 1
        && Math.abs(farthest(1) - farthest(-1)) < NUMERIC
        && Math.abs(hold.get(0).solid().moment().y()) < NUMERIC;
  }

  /** The water at rest when this direction is up; none when it does not fit under the lid. */
  Optional<ImmersedPart> lies(Vector3 up, Immersion immersion) {
    return lies(up, Double.NaN, immersion, LevelSurface.EXACT).map(Surface::part);
  }

  /**
   * The same, found from a guess and only nearly at its height.
   *
   * @param rise how far it may still have to rise or fall, m
   */
  Optional<Surface> lies(Vector3 up, double guess, Immersion immersion, double rise) {
    if (!(volume >= 0)) {
      return Optional.empty();
    }
    if (volume == 0) {
      return Optional.of(new Surface(nothing(up, immersion), 0));
    }
    return LevelSurface.surface(hold, volume, up, guess, immersion, rise);
  }

  // A film without depth on a flat floor would still have that floor's whole second moment.
  private ImmersedPart nothing(Vector3 up, Immersion immersion) {
    double bottom = hold.isEmpty() ? 0 : Lift.extent(hold, up).from();
    return immersion.at(new WaterPlane(up, bottom)).part();
  }
}
