package thwartwise.walk.engine;

import java.util.function.UnaryOperator;
import thwartwise.boat.Boat;
import thwartwise.measure.UnitSystem;

/** The boat so far; each kind of thing is added to what is there already. */
public final class BoatInProgress {
  private final Replay replay;
  private final UnitSystem units;
  private Boat boat;

  /** The boat as soon as its hull is measured. */
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
