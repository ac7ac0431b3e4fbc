package thwartwise.plausibility;

import java.util.function.DoubleUnaryOperator;

/** The usual slips of tape and pencil, each with what undoes it. */
public enum TapeSlip {
  FULL_BREADTH(
      "about twice what its neighbours give: was the full breadth taped?", v -> v / 2, true),
  HALF_OF_HALF("about half of what its neighbours give: was it halved twice?", v -> v * 2, true),
  POINT_TOO_FAR_RIGHT(
      "about ten times what its neighbours give: did the decimal point slip?", v -> v / 10, false),
  POINT_TOO_FAR_LEFT(
      "about a tenth of what its neighbours give: did the decimal point slip?", v -> v * 10, false),
  INCHES_FOR_CENTIMETRES(
      "about 2.5 times less than its neighbours give: were those inches?", v -> v * 2.54, false),
  CENTIMETRES_FOR_INCHES(
      "about 2.5 times what its neighbours give: were those centimetres?", v -> v / 2.54, false),
  FEET_FOR_METRES(
      "about three times what its neighbours give: were those feet?", v -> v * 0.3048, false),
  SWAPPED("swapped with the point above it, as it looks", v -> v, false),
  REPEATED("the same as the one before it: was it written down twice?", v -> v, false),
  UNKNOWN("out of line with its neighbours", v -> v, false);

  private final String words;
  private final DoubleUnaryOperator undo;
  private final boolean breadthsOnly;

  TapeSlip(String words, DoubleUnaryOperator undo, boolean breadthsOnly) {
    this.words = words;
    this.undo = undo;
    this.breadthsOnly = breadthsOnly;
  }

  public String words() {
    return words;
  }

  /** Most are questions. */
  String sentence() {
    return switch (this) {
      case SWAPPED, UNKNOWN -> words + ".";
      default -> words;
    };
  }

  double corrected(double value) {
    return undo.applyAsDouble(value);
  }

  boolean canHappenTo(FairnessOutlier.Direction direction) {
    return !breadthsOnly || direction == FairnessOutlier.Direction.HALF_BREADTH;
  }
}
