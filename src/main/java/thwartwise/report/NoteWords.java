package thwartwise.report;

import java.util.Locale;
import java.util.Optional;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.checks.Note;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** The note next to a figure, in words; blank without one. */
public final class NoteWords {
  private final UnitFormat units;

  private NoteWords(UnitFormat units) {
    this.units = units;
  }

  public static String of(Note note, UnitFormat units) {
    NoteWords words = new NoteWords(units);
    return words.heeled(note).or(() -> words.wet(note)).orElseGet(() -> words.other(note));
  }

  private String other(Note note) {
    if (note instanceof Note.Plain plain) {
      return fact(plain.fact());
    }
    if (note instanceof Note.Stated stated) {
      return stated.words();
    }
    if (note instanceof Note.OfMeasurement odd) {
      return MeasurementNoteWords.of(odd.note(), units);
    }
    if (note instanceof Note.Confirmed confirmed) {
      return "kept: " + confirmed.reason();
    }
    if (note instanceof Note.UnguardedCircuit circuit) {
      return WiringFaultWords.brief(circuit.fault());
    }
    if (note instanceof Note.AfterAllowance after) {
      return "With the allowance for tape and scales " + after(after);
    }
    if (note instanceof Note.RowlocksAft rowlocks) {
      return aft(rowlocks);
    }
    if (note instanceof Note.AnchorScope scope) {
      return String.format(
          Locale.ROOT,
          "%s deep: %.0f times depth and height of the bow",
          metres(scope.depthM(), Side.UP),
          scope.times());
    }
    return note instanceof Note.TwoChambers two ? two.first() + " and " + two.second() : "";
  }

  /** Notes about a boat afloat. */
  private Optional<String> heeled(Note note) {
    if (note instanceof Note.NoRest none) {
      return Optional.of(ending(none.ending()));
    }
    if (note instanceof Note.LiesOver over) {
      return Optional.of(lies(over.orientation()));
    }
    if (note instanceof Note.LowestAt lowest) {
      return Optional.of("lowest at the " + lowest.edge() + stream(lowest.streamM()));
    }
    if (note instanceof Note.WetWithoutPull wet) {
      return Optional.of("water comes in without any pull: " + of(wet.edge(), units));
    }
    if (note instanceof Note.LevelPull pull) {
      return Optional.of(
          "the level pull that brings water in, against the end-on snatch of current and wind"
              + (pull.nothingHarder() ? "; no harder pull was tried" : ""));
    }
    if (note instanceof Note.NextToSeated next) {
      String kneeling = of(next.kneeling(), units);
      return Optional.of(kneeling + (kneeling.isEmpty() ? "" : "; ") + seated(next));
    }
    if (note instanceof Note.CurveEnd curve) {
      return Optional.of(curve(curve));
    }
    return note instanceof Note.FloodsFirst floods ? Optional.of(floods(floods)) : Optional.empty();
  }

  /** Notes about water in a boat, and about a swamped one. */
  private Optional<String> wet(Note note) {
    if (note instanceof Note.SwampedSo swamped) {
      return Optional.of("swamped like this, " + of(swamped.how(), units));
    }
    if (note instanceof Note.TurnedBack back) {
      return Optional.of(
          "against one person of "
              + kilograms(back.personKg())
              + (back.withLine()
                  ? " standing on the edge of the upturned bottom and leaning out on a line"
                  : " at the rail, half in the water")
              + staysUp(back.staysUp())
              + "; air caught under it is not counted");
    }
    if (note instanceof Note.NotUpsideDown not) {
      return Optional.of("it does not stay upside down" + staysUp(not.staysUp()));
    }
    if (note instanceof Note.FirstUnder first) {
      return Optional.of("at the " + first.edge());
    }
    if (note instanceof Note.DrainInflow inflow) {
      return Optional.of(inflow(inflow));
    }
    if (note instanceof Note.RainTaken rain) {
      return Optional.of(rain(rain));
    }
    if (note instanceof Note.SeamsLeak leak) {
      return Optional.of(leak(leak));
    }
    return note instanceof Note.Bailed bailed ? Optional.of(bailed(bailed)) : Optional.empty();
  }

  private static String fact(Note.Fact fact) {
    return switch (fact) {
      case NO_STEADY_REST -> "it does not come to a steady rest";
      case NO_SUCH_STATE -> "no such state was found";
      case ABOVE_THE_WATER_IS_NEGATIVE -> "a minus means above the water";
      case NOBODY_GETS_BACK_IN ->
          "nobody gets back in to bail, over the side, the stern or the bow";
      case EDGE_UNDER -> "an edge is under: the sea comes in as fast as it is bailed";
      case HANDS_ON_IT -> "everyone in the water with hands on it: nobody sits in it";
      case COSTLIEST_LOSS -> "the chamber whose loss costs most";
      case NO_TRIM -> "no trim balances it";
      case SWINGS_SO_FAR -> "how far it swings, against the heel at which water comes in";
      case SUDDENLY_FARTHER ->
          "how far it swings, against the heel at which water comes in; a sudden move swings it"
              + " further";
      case FLOODS_BEFORE_SWINGING_BACK -> "water comes in before it swings back";
      case NO_SWING_FOLLOWED ->
          "no swing could be followed: the heel at rest, against half the heel at which water"
              + " comes in";
      case NOT_WHEN_FULL -> "not even when it is full";
      case ROLLS_OVER -> "it then rolls over";
      case LIES_OVER -> "it rolls over, or lies over by more than three degrees";
      case COMES_BACK_WHILE_DRY -> "it comes back while no edge is under water";
      case DRAIN_ABOVE_THE_WATER ->
          "it is above the water, so nothing runs in while the boat lies still";
      case NO_WAY_BACK -> "no way back could be followed";
      case DOES_NOT_FLOAT -> "it does not float";
      case SMALLER_VOLUME_COUNTS -> "the smaller counts; measure the box and pour again";
      case NOTHING_TO_ROW_WITH ->
          "no oars or paddles are listed: take some along and list them with the kit";
      case ROWLOCKS_OUT_OF_REACH ->
          "oars are aboard, but no seat is in the right place for the rowlocks";
      case TILLER_TOO_SHORT ->
          "steering from there needs a tiller extension: fix it so that it cannot come off; the"
              + " switch must be in reach as well";
      case MOTOR_TOO_STRONG ->
          "before the launch, fit a weaker motor or limit the power of this one";
    };
  }

  private static String ending(Equilibria.Ending ending) {
    return switch (ending) {
      case SINKS -> "it sinks";
      case OVERPOWERED -> "nothing balances the pull";
      case NOT_FOUND -> "no balance was found from upright";
      case RESTS -> "";
    };
  }

  private static String lies(PoseOrientation orientation) {
    return switch (orientation) {
      case UPSIDE_DOWN -> "it rolls over and ends upside down";
      case ON_ITS_SIDE -> "it rolls over and lies on its side";
      case STERN_UP -> "it stands on its bow";
      case BOW_UP -> "it stands on its stern";
      case UPRIGHT -> "";
    };
  }

  private String after(Note.AfterAllowance after) {
    String note = of(after.note(), units);
    if (after.margin().value().isEmpty() || after.margin().turnsOver()) {
      return note.isEmpty() ? "it rolls over" : note;
    }
    return "it is " + FigureWords.of(after.margin(), units) + (note.isEmpty() ? "" : ": " + note);
  }

  private String stream(double height) {
    return height == 0
        ? ""
        : "; the current raises the water there by "
            + units.either(
                String.format(Locale.ROOT, "%.2f m", Math.ceil(100 * height) / 100),
                () -> units.height(height, Side.UP));
  }

  private String seated(Note.NextToSeated next) {
    return next.seated().value().isPresent()
        ? "seated " + FigureWords.of(next.seated(), units)
        : "seated, no steady rest";
  }

  private String curve(Note.CurveEnd curve) {
    return String.format(
        Locale.ROOT,
        "to %s it ends at %.0f degrees, because %s; %s",
        curve.side().word(),
        degreesDown(curve.endHeel()),
        CurveEndWords.of(curve.end()),
        curve.greatestNm().isPresent()
            ? String.format(
                Locale.ROOT,
                "the righting moment is at most %s, at %.0f degrees",
                moment(Math.floor(curve.greatestNm().getAsDouble()), Side.DOWN),
                degreesDown(curve.greatestHeel()))
            : "nothing brings it back");
  }

  private String floods(Note.FloodsFirst floods) {
    return String.format(
        Locale.ROOT,
        "at %.0f° water comes in at the %s, before it swings back",
        degreesDown(floods.heel()),
        floods.edge());
  }

  private static double degreesDown(double radians) {
    return Math.floor(Math.toDegrees(radians));
  }

  private String moment(double newtonMetres, Side side) {
    return units.either(
        String.format(Locale.ROOT, "%.0f Nm", newtonMetres),
        () -> units.moment(newtonMetres, side));
  }

  private String kilograms(double mass) {
    return units.either(
        String.format(Locale.ROOT, "%.0f kg", mass), () -> units.mass(mass, Side.DOWN));
  }

  private static String staysUp(boolean staysUp) {
    return staysUp ? "" : "; once up it does not stay up";
  }

  private String inflow(Note.DrainInflow inflow) {
    String rate = units.litres(60 * inflow.firstM3PerSecond(), Side.UP) + " a minute at first";
    if (inflow.levelAtM3().isPresent()) {
      return rate
          + "; it stops at "
          + units.litres(inflow.levelAtM3().getAsDouble(), Side.DOWN)
          + ", level with the sea";
    }
    String until = "; then " + units.litres(inflow.noticedM3(), Side.DOWN) + " are in";
    return inflow.moreComes()
        ? rate + until + ", and more comes"
        : rate + until + " and it floods, rolls over or lies over";
  }

  private String leak(Note.SeamsLeak leak) {
    return String.format(
        Locale.ROOT,
        "%s an hour until %s are in; the %s lets in %.0f %% of it",
        units.litres(3600 * leak.rateM3PerSecond(), Side.UP),
        units.litres(leak.volumeM3(), Side.DOWN),
        leak.worst(),
        100 * leak.worstShare());
  }

  private String aft(Note.RowlocksAft rowlocks) {
    return metres(Math.abs(rowlocks.aftM()), Side.DOWN)
        + (rowlocks.aftM() < 0 ? " forward" : " aft")
        + " of the middle of the rower; best is "
        + metres(rowlocks.bestM(), Side.DOWN)
        + " aft";
  }

  private String metres(double length, Side side) {
    double metric =
        side == Side.UP ? Math.ceil(100 * length - 1e-6) : Math.floor(100 * length + 1e-6);
    return units.either(
        String.format(Locale.ROOT, "%.2f m", metric / 100), () -> units.height(length, side));
  }

  private String rain(Note.RainTaken rain) {
    return units.litres(rain.volumeM3(), Side.DOWN)
        + " on "
        + units.either(
            String.format(Locale.ROOT, "%.1f square metres", rain.areaM2()),
            () -> units.area(rain.areaM2(), Side.UP))
        + " until an edge is under water or it no longer comes back";
  }

  private String bailed(Note.Bailed bailed) {
    return String.format(
        Locale.ROOT,
        "%s with a bailer of %s%s, %.0f strokes a minute each %.0f %% full",
        units.litres(bailed.volumeM3(), Side.UP),
        units.either(
            String.format(Locale.ROOT, "%.1f litres", 1000 * bailed.bailerM3()),
            () -> units.jug(bailed.bailerM3())),
        bailed.named() ? "" : " (none was named)",
        bailed.strokes(),
        100 * bailed.fill());
  }
}
