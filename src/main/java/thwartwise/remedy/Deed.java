package thwartwise.remedy;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.EmptyHelm;
import thwartwise.geometry.Box;

/** What to do, as data. The report words it. */
public sealed interface Deed {
  /** Orders deeds with the same gain, so that they come in the same order every time. */
  Comparator<Deed> IN_ORDER =
      Comparator.comparingInt(Deed::kind).thenComparing(deed -> String.valueOf(deed));

  private static int kind(Deed deed) {
    return List.of(
            AddFoam.class,
            AnchorByTheBow.class,
            ShutHole.class,
            StayAshore.class,
            LeaveKit.class,
            ChangeSeats.class,
            LowerSeat.class,
            MoveKit.class,
            MoveKitAlong.class,
            OthersAboard.class,
            ProveChambers.class,
            RaiseEdge.class,
            SealChamber.class,
            SeatElsewhere.class,
            DeedPair.class,
            AsRecorded.class)
        .indexOf(deed.getClass());
  }

  /**
   * A leak test for chambers that do not count yet.
   *
   * @param each whether more than one space is to be tested
   */
  record ProveChambers(List<ProvenChamber> chambers, boolean each) implements Deed {
    public ProveChambers {
      chambers = List.copyOf(chambers);
    }
  }

  /**
   * A chamber to test.
   *
   * @param bothSides whether the twin on the other side is meant as well
   */
  record ProvenChamber(String name, boolean bothSides) {}

  /** Closing for good, with a leak test, a space that fills. */
  record SealChamber(String chamber) implements Deed {}

  /**
   * Raising a low edge to the rail.
   *
   * @param from height of the edge, m
   * @param to height of the rail, m
   * @param motor whether a motor may hang there
   */
  record RaiseEdge(String opening, double from, double to, boolean motor) implements Deed {}

  /** A bung for a hole that nothing closes. */
  record ShutHole(String opening) implements Deed {}

  /**
   * Adding closed-cell foam.
   *
   * @param volume m³
   * @param where such as "under the stern bench"
   * @param cut whether it is no more than somebody asked for, from the floor up
   */
  record AddFoam(double volume, String where, List<FoamBlock> blocks, boolean cut) implements Deed {
    public AddFoam {
      blocks = List.copyOf(blocks);
    }
  }

  /**
   * Leaving kit ashore.
   *
   * @param drive what the boat loses of its drive with it
   * @param driven the motor it drives; blank where it drives none
   */
  record LeaveKit(String kit, Drive drive, String driven) implements Deed {}

  /** The loss of drive with a piece of kit. */
  enum Drive {
    NONE,
    /** It feeds no motor, only lights or a pump. */
    FEEDS,
    /** Another battery is left, which lasts less long alone. */
    SHORTER,
    STOPS,
    /** It is the motor, or what steers it. */
    ITSELF;

    /** Whether the boat is no longer driven by it. */
    public boolean stops() {
      return this == STOPS || this == ITSELF;
    }
  }

  /**
   * Moving kit to the floor on the middle line, near a place.
   *
   * @param x forward of the aft end, m
   * @param vented whether it stands in a box that is vented
   */
  record MoveKit(String kit, Near near, String place, double x, boolean vented) implements Deed {}

  /** The position relative to a place to sit. */
  enum Near {
    ABREAST,
    UNDER,
    FORWARD,
    AFT
  }

  /**
   * Moving kit along the boat.
   *
   * @param x forward of the aft end, m
   * @param height m
   * @param vented whether it stands in a box that is vented
   */
  record MoveKitAlong(String kit, double x, double height, boolean vented) implements Deed {}

  /**
   * Lowering a seat.
   *
   * @param step m
   * @param height of the seat then, m
   * @param cut chambers that are cut down with it
   */
  record LowerSeat(String place, double step, double height, List<String> cut) implements Deed {
    public LowerSeat {
      cut = List.copyOf(cut);
    }
  }

  /**
   * Another seat for somebody.
   *
   * @param helm where nobody steers then
   */
  record SeatElsewhere(String person, String place, Optional<EmptyHelm> helm) implements Deed {}

  record ChangeSeats(String one, String other) implements Deed {}

  /**
   * Somebody ashore.
   *
   * @param helm where nobody steers then
   */
  record StayAshore(String person, Optional<EmptyHelm> helm) implements Deed {}

  /** Two deeds, where neither alone is enough. */
  record DeedPair(Deed one, Deed other) implements Deed {}

  record OthersAboard() implements Deed {}

  /**
   * Anchoring by the bow only.
   *
   * @param bow freeboard with the anchor out by the bow, m; empty where there is no equilibrium
   * @param stern the same by the stern
   * @param forbidden whether by the stern is a forbidden act
   */
  record AnchorByTheBow(OptionalDouble bow, OptionalDouble stern, boolean forbidden)
      implements Deed {}

  /** The words of an old record. */
  record AsRecorded(String deed, String how, List<String> cautions) implements Deed {
    public AsRecorded {
      cautions = List.copyOf(cautions);
    }
  }

  /**
   * One block of foam, or a pair of them.
   *
   * @param box the part of the hull's inside that it fills
   */
  record FoamBlock(Box box, boolean mirrored) {
    /**
     * The thickness of a block along a side, where the boat is narrowest next to it, m (judgement).
     */
    public static final double THICK = 0.15;
  }
}
