package thwartwise.hull;

import java.util.function.DoubleUnaryOperator;

/** The usual errors of tape and pencil, each with its correction; records store the constants. */
public enum TapeSlip {
  FULL_BREADTH(v -> v / 2, true),
  HALF_OF_HALF(v -> v * 2, true),
  POINT_TOO_FAR_RIGHT(v -> v / 10, false),
  POINT_TOO_FAR_LEFT(v -> v * 10, false),
  INCHES_FOR_CENTIMETRES(v -> v * 2.54, false),
  CENTIMETRES_FOR_INCHES(v -> v / 2.54, false),
  FEET_FOR_METRES(v -> v * 0.3048, false),
  SWAPPED(v -> v, false),
  REPEATED(v -> v, false),
  UNKNOWN(v -> v, false);

  private final DoubleUnaryOperator undo;
  private final boolean breadthsOnly;

  TapeSlip(DoubleUnaryOperator undo, boolean breadthsOnly) {
    this.undo = undo;
    this.breadthsOnly = breadthsOnly;
  }

  /** The value that was meant by a reading with this error. */
  public double corrected(double value) {
    return undo.applyAsDouble(value);
  }

  public boolean canHappenTo(ReadingDirection direction) {
    return !breadthsOnly || direction == ReadingDirection.HALF_BREADTH;
  }
}
