package thwartwise.afloat;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;

/**
 * Water that lies loose in the boat: so much of it, in what holds it. Its surface is level like the
 * sea's and is found anew at every pose, so no small-angle allowance for free surface is needed.
 *
 * @param hold what bounds it: the inside of the hull, less what stands in it
 * @param volume m³
 */
public record Pool(List<Lift> hold, double volume) {

  public Pool {
    hold = List.copyOf(hold);
  }

  /** How much the hold takes up to its lid, m³. */
  public double capacity() {
    return Lift.volume(hold);
  }

  /** The water as it lies when this way is up; none when it does not fit under the lid. */
  Optional<ImmersedPart> lies(Vector3 up, Immersion immersion) {
    return Level.find(hold, volume, up, Double.NaN, immersion);
  }
}
