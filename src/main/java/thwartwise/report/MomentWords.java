package thwartwise.report;

import thwartwise.afloat.Gravity;
import thwartwise.measure.Rounding;
import thwartwise.picture.PictureFacts;

/** The words of the curve of moments. */
record MomentWords(PictureFacts.Moments shown) {
  static final String TITLE = "What brings it back, and how far it can heel";

  String alternative() {
    return "Moment that brings the boat back against heel to "
        + shown.side().word()
        + ": at most "
        + Rounding.down(shown.greatest(), 0)
        + " newton metres, at "
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
        + shown.endsBecause()
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
        + AboardWords.of(shown.aboard())
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

  private String forScale() {
    if (shown.aboard().isNobody()) {
      return "";
    }
    double mass = shown.aboard().each();
    return " One person of "
        + AboardWords.kilograms(mass)
        + " half a metre out heels it with "
        + Rounding.up(0.5 * mass * Gravity.STANDARD, 0)
        + " newton metres.";
  }
}
