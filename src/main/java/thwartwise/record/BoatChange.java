package thwartwise.record;

import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.boat.Kit;
import thwartwise.inspection.Report.ChamberFigures;

/** One thing that is not the same on the boat of two records. */
public sealed interface BoatChange {

  /** A thing carried; without a before it was added, without an after removed. */
  record Carried(Optional<Kit> before, Optional<Kit> after) implements BoatChange {}

  /** A chamber; without a before it was added, without an after removed. */
  record Space(Optional<Chamber> before, Optional<Chamber> after) implements BoatChange {}

  /**
   * The same chamber, measured and tested as before, counts otherwise: as when a test grows old.
   */
  record Counts(ChamberFigures before, ChamberFigures after) implements BoatChange {}

  /** The bare hull became lighter or heavier, kg. */
  record HullMass(double before, double after) implements BoatChange {}

  /** Anything else that has a name: an opening, a place, a cleat, somebody aboard. */
  record Named(String noun, String name, Turn turn) implements BoatChange {}

  /** What was stated or measured besides, in words. */
  record Stated(String what) implements BoatChange {}

  /** What became of it. */
  enum Turn {
    ADDED,
    REMOVED,
    CHANGED
  }
}
