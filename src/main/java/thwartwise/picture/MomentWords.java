package thwartwise.picture;

import thwartwise.afloat.Gravity;
import thwartwise.afloat.RightingCurve;
import thwartwise.measure.Rounding;

/** The words of the curve of moments. */
record MomentWords(Scene scene, Heeled heeled) {

  private RightingCurve curve() {
    return heeled.curve();
  }

  String alternative() {
    return "Moment that brings the boat back against heel to "
        + curve().side().word()
        + ": at most "
        + Rounding.down(curve().moment(curve().greatest()), 0)
        + " newton metres, at "
        + Rounding.down(Math.toDegrees(curve().greatest().heel()), 0)
        + " degrees. "
        + ends()
        + (scene.crew().isEmpty()
            ? ""
            : " Beside it what everyone to one side heels it with." + meets());
  }

  private String ends() {
    return "It ends at "
        + Rounding.down(Math.toDegrees(curve().last().heel()), 0)
        + " degrees: "
        + curve().endsBecause()
        + ".";
  }

  private String meets() {
    return heeled.rest().isPresent()
        ? " Where the two meet it comes to rest, at "
            + Rounding.up(Math.toDegrees(heeled.heel()), 0)
            + " degrees."
        : " With everyone there it does not stay up and dry.";
  }

  String caption() {
    return "Full line: what turns it back upright, with "
        + scene.who()
        + (scene.crew().isEmpty() ? ". " : " in their places. ")
        + (scene.crew().isEmpty()
            ? ""
            : "Broken line: what everyone hard against the "
                + curve().side().word()
                + " side, leaning with the boat, heels it with."
                + meets())
        + " "
        + ends()
        + forScale();
  }

  private String forScale() {
    if (scene.crew().isEmpty()) {
      return "";
    }
    double mass = scene.crew().get(0).mass();
    return " One person of "
        + People.kilograms(mass)
        + " half a metre out heels it with "
        + Rounding.up(0.5 * mass * Gravity.STANDARD, 0)
        + " newton metres.";
  }
}
