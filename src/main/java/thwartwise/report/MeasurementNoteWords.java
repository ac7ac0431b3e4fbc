package thwartwise.report;

import java.util.Locale;
import thwartwise.boat.NamedSide;
import thwartwise.checks.MeasurementNote;
import thwartwise.hull.LineName;
import thwartwise.hull.PanelTwist.PanelSide;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** What is odd about a measurement and what to measure again, in words. */
record MeasurementNoteWords(UnitFormat units) {
  private static final String ALONG =
      "measure it again from the aft end of the hull, in the unit asked for";

  static String of(MeasurementNote note, UnitFormat units) {
    return new MeasurementNoteWords(units).of(note);
  }

  private String of(MeasurementNote note) {
    if (note instanceof MeasurementNote.Plain plain) {
      return fact(plain.fact());
    }
    if (note instanceof MeasurementNote.UnusualMass mass) {
      return mass(mass);
    }
    if (note instanceof MeasurementNote.SkinMass skin) {
      return skin(skin);
    }
    if (note instanceof MeasurementNote.LeakTestToCome test) {
      return "it is dated %s, which has not come yet: was the year written wrongly?"
          .formatted(test.date());
    }
    if (note instanceof MeasurementNote.InsideChamber inside) {
      return ("that is inside the chamber \"%s\": measure the seat's height and the chamber's top"
              + " again")
          .formatted(inside.chamber());
    }
    return ofPlaceOrHull(note);
  }

  private String ofPlaceOrHull(MeasurementNote note) {
    if (note instanceof MeasurementNote.NamedForEnd named) {
      return "it is named for " + named.end().words() + ": " + ALONG;
    }
    if (note instanceof MeasurementNote.NamedForSide named) {
      return side(named);
    }
    if (note instanceof MeasurementNote.Waist waist) {
      return ("%s, half-breadth: the boat is broader aft and forward of it. Did two sections change"
              + " places? Measure it again, and those next to it")
          .formatted(LineName.of(waist.point(), waist.points()));
    }
    if (note instanceof MeasurementNote.TwistedPanel twist) {
      return twist(twist);
    }
    if (note instanceof MeasurementNote.CrossedOutline crossed) {
      return between(crossed.fromM(), crossed.toM()) + "; measure another station there";
    }
    return outOfLine((MeasurementNote.OutOfLine) note);
  }

  private static String fact(MeasurementNote.Fact fact) {
    return switch (fact) {
      case FULLNESS -> "check the stations";
      case BREADTH_FOR_LENGTH -> "was the full breadth taped where half is asked for?";
      case DEPTH_FOR_BREADTH ->
          "was the full breadth taped where half is asked for, or were heights and breadths"
              + " written in different units?";
      case SWAMPED_DENSITY -> "weigh a soaked offcut, or name the material";
      case LOWEST_POINT_NOT_ZERO ->
          "heights are measured up from the lowest point, so that one is zero: was a height given"
              + " a wrong sign, or left out?";
      case POURED_TOO_LITTLE -> "were those gallons? Measure its walls, or pour again and count";
      case POURED_TOO_MUCH -> "measure its walls, or pour again and count";
      case CHAMBER_ABOVE_HULL ->
          "that is above the whole hull: measure it again, or leave it out where the chamber"
              + " reaches the rail";
      case KIT_UNDER_KEEL ->
          "that is under the keel: measure up from the lowest point of the bottom";
      case KIT_OUTSIDE -> "measure again where its middle lies";
      case CLEAT_OUTSIDE -> "measure again where the line is made fast";
      case SEAT_ON_MIDDLE_LINE ->
          "did the decimal point slip? For a seat on which nobody can move to one side write 0";
      case SEAT_TOO_SHORT -> "fewer people sit there, or it reaches farther out";
      case OPENING_TOO_LOW -> "measure its lowest edge and its width again";
      case PLACE_AT_AN_END -> "nobody has room there: " + ALONG;
      case PLACE_OFF_ITS_CHAMBER -> ALONG;
      case PLACE_ON_ANOTHER -> "one lies on top of the other: " + ALONG;
      case SEAT_NEAR_FLOOR ->
          "measure it from the lowest point of the bottom, in centimetres or inches as asked;"
              + " who kneels or stands there has a posture of its own";
      case SEAT_ABOVE_ITS_CHAMBER ->
          "measure the seat's height and the chamber's top again, each in the unit asked for";
      case SEAT_TOO_HIGH ->
          "that is too high to sit on: were those centimetres where inches are meant, or is it"
              + " measured from the ground?";
    };
  }

  private static String mass(MeasurementNote.UnusualMass mass) {
    String odd = Rounding.plain(mass.massKg()) + " kg is not what such a thing weighs";
    return mass.meantKg().isPresent()
        ? "%s; did the decimal point slip, from %s kg? Weigh it again"
            .formatted(odd, Rounding.plain(mass.meantKg().getAsDouble()))
        : odd + ": weigh it again";
  }

  private String skin(MeasurementNote.SkinMass skin) {
    return "weigh it again or check the thickness: %s of skin come to %s%s"
        .formatted(
            units.either(
                String.format(Locale.ROOT, "%.1f m2", skin.areaM2()),
                () -> units.area(skin.areaM2(), Side.DOWN)),
            units.either(
                String.format(Locale.ROOT, "%.0f kg", skin.skinKg()),
                () -> units.mass(skin.skinKg(), Side.DOWN)),
            skin.halfWeighed() ? "; was one end of it on the scales, and not both?" : "");
  }

  private static String side(MeasurementNote.NamedForSide named) {
    NamedSide side = named.side();
    return "boat file: place \"%s\" %s; write from where to where people sit as \"y\": [from, to],"
            .formatted(
                named.place(), named.hasNoSide() ? "has no side" : "does not lie to " + side.word())
        + " starboard with a minus, or give a seat across the boat another name";
  }

  private static String twist(MeasurementNote.TwistedPanel twist) {
    return "most between %s and %s%s, from %s to %s%s"
        .formatted(
            LineName.of(twist.line(), twist.points()),
            LineName.of(twist.line() + 1, twist.points()),
            side(twist.side()),
            twist.aft(),
            twist.fore(),
            twist.withinLimit() ? "" : "; check these points");
  }

  private static String side(PanelSide side) {
    return switch (side) {
      case EITHER -> "";
      case PORT -> " to port";
      case STARBOARD -> " to starboard";
    };
  }

  private String between(double from, double to) {
    return units.either(
        String.format(Locale.ROOT, "from x %.2f to %.2f m", from, to),
        () -> "from " + units.step(from) + " to " + units.step(to) + " forward");
  }

  private String outOfLine(MeasurementNote.OutOfLine out) {
    return "%s%s, %s: %s In line would be about %s; measure it again"
        .formatted(
            out.port() ? "" : "starboard ",
            LineName.of(out.point(), out.points()),
            out.direction().word(),
            TapeSlipWords.sentence(out.slip()),
            units.either(
                String.format(Locale.ROOT, "%.2f m", out.meantM()),
                () -> units.step(out.meantM())));
  }
}
