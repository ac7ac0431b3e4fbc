package thwartwise.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.MassSource;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Assumption.TrialFault;
import thwartwise.boat.Assumption.UnmeasuredThing;
import thwartwise.boat.Boat;
import thwartwise.hull.Material;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.measure.UnitText;

/** Assumptions for what nobody measured, each in a sentence, in the reader's units. */
public record AssumptionWords(UnitFormat units) {
  private static final double SQUARE_FOOT = 0.3048 * 0.3048;

  /** The assumptions of a boat in its own units. */
  public static List<String> of(Boat boat) {
    return of(boat.assumptions(), ReaderUnits.of(boat));
  }

  public static List<String> of(List<Assumption> assumptions, UnitFormat units) {
    return assumptions.stream().map(new AssumptionWords(units)::of).toList();
  }

  String of(Assumption assumption) {
    if (assumption instanceof Assumption.Stated stated) {
      return stated.words();
    }
    if (assumption instanceof Assumption.OfMethod method) {
      return new MethodAssumptionWords(units).of(method.assumption());
    }
    if (assumption instanceof Assumption.UsualShell shell) {
      return shell(shell.thickness(), "usual", shell.material(), "not measured.");
    }
    if (assumption instanceof Assumption.ThickShell shell) {
      return shell(shell.thickness(), "thick", shell.material(), "not measured (judgement).");
    }
    if (assumption instanceof Assumption.FloorOnShell floor) {
      return "Floor at %s above the lowest point of the bottom: the shell itself, not measured."
          .formatted(thickness(floor.thickness()));
    }
    if (assumption instanceof Assumption.Guess guess) {
      return "Guessed, not measured: %s%s."
          .formatted(guess.answer(), guess.countedPoorer() ? " (judgement)" : "");
    }
    if (assumption instanceof Assumption.TrialNotCounted trial) {
      return "The trial in knee-deep water of %s counts for nothing: %s."
          .formatted(trial.date(), fault(trial.fault()));
    }
    return ofKitAndStations(assumption);
  }

  private String ofKitAndStations(Assumption assumption) {
    if (assumption instanceof Assumption.Unmeasured unmeasured) {
      return unmeasured(unmeasured.what());
    }
    if (assumption instanceof Assumption.LooseKit kit) {
      return "Kit \"%s\" is not fastened: it gives no lift when swamped.".formatted(kit.name());
    }
    if (assumption instanceof Assumption.CrowdedPlace crowded) {
      return "More people sit at \"%s\" than it is said to take.".formatted(crowded.place());
    }
    return assumption instanceof Assumption.StationGain gain
        ? stationGain(gain)
        : ofShortWalk(assumption);
  }

  private static String unmeasured(UnmeasuredThing what) {
    return switch (what) {
      case CENTRE_OF_BARE_HULL ->
          "Centre of the bare hull: estimated from the area of its skin, not measured.";
      case PROPULSION -> "How the boat is driven is not stated: taken as rowed or paddled.";
      case KIT_STAYS_WHERE_LISTED ->
          "All kit listed stays where it is listed, loose kit too; only swamped is loose kit taken"
              + " as kept and as gone, whichever is worse. Leave it ashore, use it up or move it,"
              + " and the figures no longer hold: inspect again.";
    };
  }

  private String stationGain(Assumption.StationGain gain) {
    return ("One more station between \"%s\" and \"%s\" is worth up to %s of chambers: no"
            + " chamber counts for more than straight lines between the stations hold%s.")
        .formatted(
            gain.aft(),
            gain.fore(),
            units.either(
                String.format(Locale.ROOT, "%.0f litres", Math.floor(1000 * gain.volumeM3())),
                () -> units.volume(gain.volumeM3(), Side.DOWN)),
            gain.reducesAllowance()
                ? ", and with it less is taken off every volume and height"
                : "");
  }

  private String ofShortWalk(Assumption assumption) {
    if (assumption instanceof Assumption.HullByArea hull) {
      return "Mass of the hull: not weighed, taken as %s of length times beam (judgement, on the"
              .formatted(perArea(hull.kilogramsPerSquareMetre()))
          + " heavy side).";
    }
    if (assumption instanceof Assumption.KitAsOneWeight kit) {
      return "Kit: taken as one weight, loose, %s up on the middle line; not measured."
          .formatted(height(kit.height()));
    }
    if (assumption instanceof Assumption.SideBenches benches) {
      return "Seats: a bench along either side, people on it as far out as the rail lets them and"
          + " up to %s farther in (judgement); not measured. Nobody sits on any other seat."
              .formatted(height(benches.inward()));
    }
    if (assumption instanceof Assumption.NamedCrew crew) {
      return crew.people().stream()
          .map(this::person)
          .collect(Collectors.joining("; ", "Who goes: ", "."));
    }
    return simplified(((Assumption.Simplified) assumption).what());
  }

  private String shell(double thickness, String kind, Material material, String not) {
    return "Shell thickness %s: %s for %s, %s"
        .formatted(thickness(thickness), kind, material.word(), not);
  }

  private String person(MassSource person) {
    return person.name() + " (" + UnitText.of(person.source()).in(units.system()).words() + ")";
  }

  private static String fault(TrialFault fault) {
    return switch (fault) {
      case OF_ANOTHER_BOAT -> "it was not of the boat as it stands here";
      case SEATS_NOT_NAMED -> "it does not name the seat of each who sat in it";
    };
  }

  private static String simplified(Simplification what) {
    return switch (what) {
      case SHORT_WALK ->
          "A short look at a borrowed boat. Taken, not measured: fresh water; people who sit in it"
              + " when it is swamped, unless it is a canoe by its form; a shell as thick as planks,"
              + " or twice the usual where that is less (judgement); the floor on the bottom; no"
              + " deck.";
      case HULL_DRAWN_FROM_A_FEW_DIMENSIONS ->
          "The hull is drawn from a few dimensions, not measured: ends fine and rising, no sheer,"
              + " the bow a point, widest a little aft of the middle (judgement, on the lean side).";
      case MATERIAL_NOT_KNOWN ->
          "What the hull is made of: not known, taken to sink as aluminium does.";
      case MOTOR_WEIGHT_BY_POWER ->
          "Motor, with battery and tank: weight by its power, 33 CFR part 183, motor weight table"
              + " (READ), hung at the top of the stern; not weighed.";
      case SEATS_EVENLY_SPACED ->
          "Seats: all as high as the highest, those between the ends evenly spaced, and people"
              + " sitting as far out on them as the rail lets them; not measured.";
      case NO_LEAK_TEST_SHOWN -> "Chambers: none counts, since no leak test was shown.";
      case LEAK_TEST_ON_PAPER ->
          "Leak test: as the paper shown says; its other chambers were not looked at.";
    };
  }

  private String thickness(double metres) {
    return spaced(units.thickness(metres));
  }

  private String height(double metres) {
    return units.either(
        String.format(Locale.ROOT, "%.2f m", metres), () -> spaced(units.height(metres, Side.UP)));
  }

  private String perArea(double kilograms) {
    return units.either(
        Rounding.nearest(kilograms, 1) + " kg for each square metre",
        () ->
            Rounding.nearest(kilograms * SQUARE_FOOT / UnitFormat.POUND, 1)
                + " lb for each square foot");
  }

  private static String spaced(String figure) {
    return figure.replace(UnitFormat.TIED, " ");
  }
}
