package thwartwise.loadcase;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Pool;
import thwartwise.boat.Space;

/** Loose water in one chamber that does not cross the middle line. */
record WaterToOneSide(Pool pool, Space space) {
  /** Volumes of twin chambers differ by less, because they are summed in another order, m³. */
  private static final double SMALL = 1e-9;

  /** The one pool there is, if it is such water. */
  static Optional<WaterToOneSide> of(List<Pool> pools, List<Space> spaces) {
    if (pools.size() != 1 || pools.get(0).hold().size() != 1) {
      return Optional.empty();
    }
    Pool pool = pools.get(0);
    return spaces.stream()
        .filter(space -> space.solid() == pool.hold().get(0).solid())
        .filter(space -> space.box().y().from() >= 0 || space.box().y().to() <= 0)
        .map(space -> new WaterToOneSide(pool, space))
        .findFirst();
  }

  /** 1 for port and -1 for starboard. */
  double side() {
    return space.box().y().to() > 0 ? 1 : -1;
  }

  /** A key that is equal for the same water in either twin of a chamber. */
  Object onEitherSide() {
    return List.of(space.chamber(), Math.round(pool.volume() / SMALL));
  }
}
