package thwartwise.report;

import thwartwise.afloat.RightingCurve;

/** Why a righting curve ends where it does. */
public final class CurveEndWords {
  private CurveEndWords() {}

  public static String of(RightingCurve.End end) {
    if (!end.floodingAt().isBlank()) {
      return end.floodingAt() + " reaches the water";
    }
    return end.trimLost()
        ? "no trim balances it any further"
        : "nothing floods it up to 90 degrees";
  }
}
