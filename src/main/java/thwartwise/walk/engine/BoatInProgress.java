package thwartwise.walk.engine;

import java.util.function.UnaryOperator;
import thwartwise.boat.Boat;
import thwartwise.measure.UnitSystem;

/** The boat by now: each kind of thing is added to what was there before it. */
public final class BoatInProgress {
  private final Replay replay;
  private final UnitSystem units;
  private Boat boat;

  /** Begins with the hull, as soon as that is measured. */
  public BoatInProgress(Replay replay, UnitSystem units, Boat hull) {
    this.replay = replay;
    this.units = units;
    this.boat = hull;
    replay.known(hull, units);
  }

  public Boat with(UnaryOperator<Boat> more) {
    boat = more.apply(boat);
    replay.known(boat, units);
    return boat;
  }
}
