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
        ? "it cannot be balanced in trim any further"
        : "nothing floods up to a right angle";
  }
}
