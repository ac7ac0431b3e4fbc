package thwartwise.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.EmptyHelm;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Sentence;
import thwartwise.remedy.Deed;

/**
 * The words of a deed.
 *
 * @param deed what to do, in one line
 * @param how how to do it
 * @param cautions what to watch
 */
public record DeedWords(String deed, String how, List<String> cautions) {
  private static final String FASTENING =
      "Closed-cell foam only. Fasten it so that it cannot float off or be kicked out: glue it in"
          + " and screw battens or straps across it";

  private static final String ALONGSIDE = "Alongside the bank, one at a time, keeping low";

  /** kg/m³ */
  private static final double FOAM = 40;

  public DeedWords {
    // A report stores them as plain text.
    deed = blanks(deed);
    how = blanks(how);
    cautions = cautions.stream().map(DeedWords::blanks).toList();
  }

  private static String blanks(String words) {
    return words.replace(UnitFormat.TIED, " ");
  }

  private static DeedWords of(String deed, String how, String... cautions) {
    return new DeedWords(deed, how, List.of(cautions));
  }

  /** The words in metric units, as a report stores them. */
  public static DeedWords of(Deed deed) {
    return of(deed, UnitFormat.METRIC);
  }

  public static DeedWords of(Deed deed, UnitFormat units) {
    if (deed instanceof Deed.AsRecorded recorded) {
      return new DeedWords(recorded.deed(), recorded.how(), recorded.cautions());
    }
    if (deed instanceof Deed.DeedPair two) {
      return pair(of(two.one(), units), of(two.other(), units));
    }
    if (deed instanceof Deed.AnchorByTheBow anchoring) {
      return anchoring(anchoring, units);
    }
    if (deed instanceof Deed.LeaveKit left) {
      return left(left);
    }
    if (deed instanceof Deed.MoveKit moved) {
      return moved(moved, units);
    }
    if (deed instanceof Deed.MoveKitAlong moved) {
      return moved(moved, units);
    }
    return toTheBoat(deed, units);
  }

  private static DeedWords toTheBoat(Deed deed, UnitFormat units) {
    if (deed instanceof Deed.ProveChambers proven) {
      return proven(proven, units);
    }
    if (deed instanceof Deed.SealChamber closed) {
      return sealed(closed, units);
    }
    if (deed instanceof Deed.RaiseEdge raised) {
      return raised(raised, units);
    }
    if (deed instanceof Deed.ShutHole shut) {
      return of(
          "Give the " + shut.opening() + " a bung",
          "On a lanyard, and in its hole before the boat goes in",
          "It counts only while the bung is in");
    }
    if (deed instanceof Deed.AddFoam foam) {
      return foam(foam, units);
    }
    if (deed instanceof Deed.LowerSeat lowered) {
      return lowered(lowered, units);
    }
    return byThePeople(deed);
  }

  private static DeedWords proven(Deed.ProveChambers proven, UnitFormat units) {
    String names =
        proven.chambers().stream()
            .map(c -> c.name() + (c.bothSides() ? " on both sides" : ""))
            .collect(Collectors.joining(" and "));
    return of(
        (proven.chambers().size() > 1 ? "Prove all of these: " : "Prove the ")
            + names
            + " with a leak test"
            + (proven.each() ? " each" : ""),
        "Close it as it is under way. Fill it with water from a hose, or push it under: "
            + BuoyancyReasonWords.requiredTest(units)
            + ". Write down the date, how, the minutes, how much got in and who did it",
        "The gain counts only if the chamber proves tight; if it leaks, find the leak first");
  }

  private static DeedWords sealed(Deed.SealChamber closed, UnitFormat units) {
    return of(
        "Seal the " + closed.chamber() + " and prove it with a leak test",
        "Close every hole, seam and lid of it with a gasket or sealant; then test it: "
            + BuoyancyReasonWords.requiredTest(units),
        "The gain counts only if it proves tight",
        "No battery and no charger ever goes into a sealed space");
  }

  private static DeedWords raised(Deed.RaiseEdge raised, UnitFormat units) {
    String deed = "Raise the " + raised.opening() + " to the height of the rail with a board";
    String how =
        "From "
            + units.mark(raised.from())
            + " to "
            + units.mark(raised.to())
            + " above the lowest point of the bottom: a board, glued, screwed and sealed along its"
            + " edges";
    return raised.motor()
        ? of(
            deed + ", or with a well for the motor",
            how,
            "A motor there needs a longer shaft, or a well with a forward board as high as the"
                + " rail and a floor that drains outward")
        : of(deed, how);
  }

  private static DeedWords foam(Deed.AddFoam foam, UnitFormat units) {
    return of(
        "Add "
            + units.volume(foam.volume(), Side.DOWN)
            + " of closed-cell foam "
            + foam.where()
            + (foam.cut() ? ", from the floor up" : ""),
        FoamWords.of(foam.blocks(), units),
        FASTENING,
        "Nine tenths of its volume count; it weighs " + units.density(FOAM) + " (judgement)");
  }

  private static DeedWords lowered(Deed.LowerSeat lowered, UnitFormat units) {
    String deed = "Lower the " + lowered.place() + " by " + units.step(lowered.step());
    String how = "To " + units.mark(lowered.height()) + " above the lowest point of the bottom";
    return lowered.cut().isEmpty()
        ? of(deed, how)
        : of(
            deed,
            how
                + "; the "
                + String.join(" and the ", lowered.cut())
                + " is cut down with it and holds less air",
            "A chamber that was cut counts only once it is tested again");
  }

  private static DeedWords left(Deed.LeaveKit left) {
    String lost = lost(left);
    String deed = "Leave the " + left.kit() + " ashore";
    String how = "Take it out of the list of kit as well, and inspect again";
    return lost.isEmpty() ? of(deed, how) : of(deed, how, lost);
  }

  private static String lost(Deed.LeaveKit left) {
    return switch (left.drive()) {
      case NONE -> "";
      case FEEDS -> "What it feeds stays off: lights, a pump, a radio";
      case SHORTER -> "The " + left.driven() + " runs for less time on what is left";
      case STOPS -> "The " + left.driven() + " does not run: row or paddle";
      case ITSELF -> "The boat is rowed or paddled without it";
    };
  }

  private static DeedWords moved(Deed.MoveKit moved, UnitFormat units) {
    String deed =
        "Move the "
            + moved.kit()
            + " to the floor on the middle line, "
            + near(moved.near())
            + moved.place();
    String how = position(moved.x(), units) + ". " + fixing(moved.vented());
    return moved.vented()
        ? of(deed, how, "Its box stays vented high up, wherever it stands")
        : of(deed, how);
  }

  private static String near(Deed.Near near) {
    return switch (near) {
      case ABREAST -> "abreast of the ";
      case UNDER -> "under the ";
      case FORWARD -> "just forward of the ";
      case AFT -> "just aft of the ";
    };
  }

  private static DeedWords moved(Deed.MoveKitAlong moved, UnitFormat units) {
    return of(
        "Move the "
            + moved.kit()
            + " to "
            + position(moved.x(), units)
            + ", "
            + units.mark(moved.height())
            + " up",
        fixing(moved.vented()));
  }

  private static String fixing(boolean vented) {
    return vented
        ? "Fasten its box down, lead longer cables high and clear of feet, and vent the box high up"
        : "Lash it down so that it cannot slide";
  }

  private static DeedWords byThePeople(Deed deed) {
    return helm(deed)
        .map(empty -> of(people(deed), ALONGSIDE, EmptyHelmWords.of(empty)))
        .orElseGet(() -> of(people(deed), ALONGSIDE));
  }

  private static Optional<EmptyHelm> helm(Deed deed) {
    if (deed instanceof Deed.SeatElsewhere seat) {
      return seat.helm();
    }
    return deed instanceof Deed.StayAshore stays ? stays.helm() : Optional.empty();
  }

  private static String people(Deed deed) {
    if (deed instanceof Deed.SeatElsewhere seat) {
      return "Seat " + seat.person() + " on the " + seat.place() + " instead";
    }
    if (deed instanceof Deed.ChangeSeats seats) {
      return "Let " + seats.one() + " and " + seats.other() + " change seats";
    }
    if (deed instanceof Deed.StayAshore stays) {
      return "Leave " + stays.person() + " ashore";
    }
    return "Others aboard";
  }

  /** Both on one line, because neither is enough alone. */
  private static DeedWords pair(DeedWords one, DeedWords other) {
    return new DeedWords(
        one.deed() + ", and " + Sentence.small(other.deed()),
        Sentence.joined(List.of(one.how(), other.how())),
        Stream.concat(one.cautions().stream(), other.cautions().stream()).distinct().toList());
  }

  private static DeedWords anchoring(Deed.AnchorByTheBow anchoring, UnitFormat units) {
    String deed = "Anchor by the bow only, never by the stern";
    String how =
        "By the bow the lowest edge stays "
            + height(anchoring.bow(), units)
            + " above the water, by the stern "
            + height(anchoring.stern(), units);
    return anchoring.forbidden()
        ? of(deed, how, "Anchoring by the stern is forbidden in this boat")
        : of(deed, how);
  }

  private static String height(OptionalDouble height, UnitFormat units) {
    return height.isPresent() ? units.height(height.getAsDouble(), Side.DOWN) : "does not";
  }

  /** A place in a boat, in distances to measure with a tape. */
  static String position(double x, UnitFormat units) {
    return x < 0
        ? units.mark(-x) + " behind the aft end"
        : units.mark(x) + " forward of the aft end";
  }
}
