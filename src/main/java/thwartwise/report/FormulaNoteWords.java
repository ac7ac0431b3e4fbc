package thwartwise.report;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.DriveKind;
import thwartwise.rules.FormulaNote;
import thwartwise.rules.RatedBoat.HullKind;
import thwartwise.rules.ScopeMismatch;

/** The assumptions of a rule's number, or why there is none, in the reader's units. */
public record FormulaNoteWords(UnitFormat units) {

  public static String of(FormulaNote note, UnitFormat units) {
    return new FormulaNoteWords(units).of(note);
  }

  /** The property of the boat for which a rule set is not written. */
  static String of(ScopeMismatch why, UnitFormat units) {
    return new FormulaNoteWords(units).scope(why);
  }

  private String of(FormulaNote note) {
    if (note.isNone()) {
      return "";
    }
    if (note instanceof FormulaNote.Stated stated) {
      return stated.words();
    }
    if (note instanceof FormulaNote.OutOfScope out) {
      return "does not apply: " + scope(out.why());
    }
    if (note instanceof FormulaNote.BeyondMotorTable table) {
      return "does not apply: the table of motor weights known here ends at "
          + Rounding.nearest(table.horsepower(), 1)
          + " hp";
    }
    if (note instanceof FormulaNote.BeyondLengthTable) {
      return "does not apply: the boat is longer than its table";
    }
    if (note instanceof FormulaNote.ComparedLimit limit) {
      return Rounding.nearest(limit.value(), 6)
          + " "
          + limit.unit()
          + "; ours is "
          + Rounding.nearest(limit.ours(), 6)
          + " "
          + limit.unit()
          + (limit.tightens() ? ", which this tightens" : ", which is no laxer");
    }
    return note instanceof FormulaNote.MotorFactor motor ? motor(motor) : ofFlotation(note);
  }

  private String ofFlotation(FormulaNote note) {
    if (note instanceof FormulaNote.HullUnderWater hull) {
      return "the whole hull taken as under water; it says nothing of where it must be"
          + (hull.airExcluded() ? "; over 2 hp air built into the hull does not count there" : "");
    }
    if (note instanceof FormulaNote.LargestChambersExcluded) {
      return "the two largest air chambers left out";
    }
    if (note instanceof FormulaNote.KitAsGear) {
      return "the kit listed taken as gear and motor; half of a wooden hull's own lift in";
    }
    if (note instanceof FormulaNote.KitSubtracted kit) {
      return "the kit listed taken off; " + whole(kit.person()) + " a person";
    }
    return note instanceof FormulaNote.DriveUnstated
        ? "the boat file does not say how it is driven: taken as rowed or paddled"
        : ofTest(note);
  }

  private String ofTest(FormulaNote note) {
    if (note instanceof FormulaNote.Crewed crewed) {
      return (crewed.crew() ? "with the crew recommended" : "with nobody aboard")
          + (crewed.rest() ? "" : " it finds no rest");
    }
    if (note instanceof FormulaNote.IronLifted iron) {
      return "by lift alone: %s of iron for so many and %s for one more"
          .formatted(mass("%.1f kg", iron.mass()), mass("%.1f kg", iron.massForOneMore()));
    }
    if (note instanceof FormulaNote.SideLoad side) {
      return String.format(
              Locale.ROOT,
              "%s each, in every seating; at most %.1f degrees and no water aboard",
              whole(side.person()),
              floor(side.heel()))
          + (side.best() > 0 ? "; " + side.best() + " in the best seating of each number" : "")
          + full(side.full());
    }
    FormulaNote.SwampedWeight weight = (FormulaNote.SwampedWeight) note;
    return "a weight of %s under water for each, at least %s; it floats and stays upright"
            .formatted(whole(weight.person()), whole(weight.least()))
        + full(weight.full());
  }

  private static String full(boolean full) {
    return full ? "; there is no place for more" : "";
  }

  private static String motor(FormulaNote.MotorFactor motor) {
    return String.format(
            Locale.ROOT,
            "%.1f hp for a factor of %.1f, %s, %s",
            floor(motor.horsepower()),
            floor(motor.factor()),
            motor.flat() ? "flat bottom and hard chine" : "bottom not flat",
            motor.remote()
                ? "remote steering as the rule set says"
                : "taken as without remote steering")
        + (motor.rounded().isPresent()
            ? String.format(
                Locale.ROOT,
                "; the rule's own rounding makes that %.1f hp, which is not used",
                floor(motor.rounded().getAsDouble()))
            : "");
  }

  private static double floor(double value) {
    return Math.floor(value * 10) / 10;
  }

  private String whole(double kilograms) {
    return mass("%.0f kg", kilograms);
  }

  private String mass(String metric, double kilograms) {
    return units.either(
        String.format(Locale.ROOT, metric, kilograms), () -> units.mass(kilograms, Side.UP));
  }

  private String scope(ScopeMismatch why) {
    if (why instanceof ScopeMismatch.Stated stated) {
      return stated.words();
    }
    if (why instanceof ScopeMismatch.Power power) {
      return "the motor gives "
          + kilowatts(power.has())
          + " and it is written for "
          + (power.over()
              ? "up to " + kilowatts(power.limit())
              : kilowatts(power.limit()) + " and over");
    }
    if (why instanceof ScopeMismatch.Length length) {
      return "the boat is "
          + metres(length.has())
          + " long and it is written for "
          + range(length.from(), length.under().orElse(Double.POSITIVE_INFINITY));
    }
    if (why instanceof ScopeMismatch.Beam beam) {
      return "the boat is "
          + metres(beam.has())
          + " broad and it is written for "
          + range(beam.from(), beam.under().orElse(Double.POSITIVE_INFINITY));
    }
    if (why instanceof ScopeMismatch.Hull hull) {
      return "the boat is "
          + (hull.has() == HullKind.CANOE ? "a canoe" : "an open boat")
          + " by its form and it is written for "
          + listed(hull.covered(), FormulaNoteWords::plural, " and ");
    }
    ScopeMismatch.Drive drive = (ScopeMismatch.Drive) why;
    return "the boat is "
        + driven(drive.has())
        + " and it is written for boats "
        + listed(drive.covered(), FormulaNoteWords::driven, " or ");
  }

  private static <T> String listed(List<T> kinds, Function<T, String> word, String between) {
    return kinds.stream().map(word).collect(Collectors.joining(between));
  }

  private static String plural(HullKind kind) {
    return kind == HullKind.CANOE ? "canoes" : "open boats";
  }

  private static String driven(DriveKind kind) {
    return switch (kind) {
      case MANUAL -> "rowed or paddled";
      case OUTBOARD -> "driven by an outboard";
      case SAIL -> "under sail";
      case TOW -> "towing or towed";
    };
  }

  private String range(double from, double under) {
    String to = Double.isInfinite(under) ? "" : "under " + metres(under);
    if (!(from > 0)) {
      return to;
    }
    return metres(from) + (to.isEmpty() ? " and over" : " to " + to);
  }

  private String metres(double size) {
    return units.either(Rounding.nearest(size, 3) + " m", () -> units.tape(size));
  }

  private String kilowatts(double watts) {
    return units.either(
        Rounding.nearest(watts / 1000, 3) + " kW", () -> units.power(watts, Side.UP));
  }
}
