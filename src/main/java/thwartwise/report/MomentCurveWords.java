package thwartwise.report;

import thwartwise.afloat.Gravity;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.picture.PictureFacts;

/** The words of the curve of moments. */
record MomentCurveWords(PictureFacts.Moments moments, UnitFormat units) {
  private static final double TWO_FEET = 0.6096;

  static final String TITLE = "What brings it back, and how far it can heel";

  String alternative() {
    return "Moment that brings the boat back from a heel to "
        + moments.side().word()
        + ": at most "
        + moment(Rounding.down(moments.greatest() / units.momentUnit(), 0))
        + ", at "
        + Rounding.down(Math.toDegrees(moments.greatestAt()), 0)
        + " degrees. "
        + ends()
        + (moments.aboard().isEmpty()
            ? ""
            : " Next to it the moment of everyone to one side." + meets());
  }

  private String ends() {
    return "It ends at "
        + Rounding.down(Math.toDegrees(moments.endsAt()), 0)
        + " degrees: "
        + CurveEndWords.of(moments.end())
        + ".";
  }

  private String meets() {
    return moments.restsAt().isPresent()
        ? " It comes to rest where the two meet, at "
            + Rounding.up(Math.toDegrees(moments.restsAt().getAsDouble()), 0)
            + " degrees."
        : " With everyone there, it does not stay up and dry.";
  }

  String caption() {
    return "Full line: the moment that turns it upright again, with "
        + PictureWords.occupants(moments.aboard(), units)
        + (moments.aboard().isEmpty() ? ". " : " in their places. ")
        + (moments.aboard().isEmpty()
            ? ""
            : "Broken line: the heeling moment of everyone hard against the "
                + moments.side().word()
                + " side and leaning with the boat."
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
    if (moments.aboard().isEmpty()) {
      return "";
    }
    double mass = moments.aboard().each();
    double out = metric() ? 0.5 : TWO_FEET;
    return " One person of "
        + units.mass(mass, Side.UP)
        + (metric() ? " half a metre" : " 2 feet")
        + " out heels it with "
        + moment(Rounding.up(out * mass * Gravity.STANDARD / units.momentUnit(), 0))
        + ".";
  }
}
