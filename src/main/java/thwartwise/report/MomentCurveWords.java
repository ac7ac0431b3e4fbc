package thwartwise.report;

import thwartwise.afloat.Gravity;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.picture.PictureFacts;

/** The words of the curve of moments. */
record MomentCurveWords(PictureFacts.Moments shown, UnitFormat units) {
  private static final double TWO_FEET = 0.6096;

  static final String TITLE = "What brings it back, and how far it can heel";

  String alternative() {
    return "Moment that brings the boat back against heel to "
        + shown.side().word()
        + ": at most "
        + moment(Rounding.down(shown.greatest() / units.momentUnit(), 0))
        + ", at "
        + Rounding.down(Math.toDegrees(shown.greatestAt()), 0)
        + " degrees. "
        + ends()
        + (shown.aboard().isNobody()
            ? ""
            : " Beside it what everyone to one side heels it with." + meets());
  }

  private String ends() {
    return "It ends at "
        + Rounding.down(Math.toDegrees(shown.endsAt()), 0)
        + " degrees: "
        + CurveEndWords.of(shown.end())
        + ".";
  }

  private String meets() {
    return shown.restsAt().isPresent()
        ? " Where the two meet it comes to rest, at "
            + Rounding.up(Math.toDegrees(shown.restsAt().getAsDouble()), 0)
            + " degrees."
        : " With everyone there it does not stay up and dry.";
  }

  String caption() {
    return "Full line: what turns it back upright, with "
        + OccupantWords.of(shown.aboard(), units)
        + (shown.aboard().isNobody() ? ". " : " in their places. ")
        + (shown.aboard().isNobody()
            ? ""
            : "Broken line: what everyone hard against the "
                + shown.side().word()
                + " side, leaning with the boat, heels it with."
                + meets())
        + " "
        + ends()
        + forScale();
  }

  private boolean metric() {
    return units.system().isMetric();
  }

  private String moment(String figure) {
    return figure + (metric() ? " newton metres" : " pound feet");
  }

  private String forScale() {
    if (shown.aboard().isNobody()) {
      return "";
    }
    double mass = shown.aboard().each();
    double out = metric() ? 0.5 : TWO_FEET;
    return " One person of "
        + units.mass(mass, Side.UP)
        + (metric() ? " half a metre" : " 2 feet")
        + " out heels it with "
        + moment(Rounding.up(out * mass * Gravity.STANDARD / units.momentUnit(), 0))
        + ".";
  }
}
