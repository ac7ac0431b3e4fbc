package thwartwise.report;

import thwartwise.hull.TapeSlip;

/** What is odd about a reading, in words; most of them are questions. */
public final class TapeSlipWords {
  private TapeSlipWords() {}

  public static String of(TapeSlip slip) {
    return switch (slip) {
      case FULL_BREADTH -> "about twice what its neighbours give: was the full breadth taped?";
      case HALF_OF_HALF -> "about half of what its neighbours give: was it halved twice?";
      case POINT_TOO_FAR_RIGHT ->
          "about ten times what its neighbours give: did the decimal point slip?";
      case POINT_TOO_FAR_LEFT ->
          "about a tenth of what its neighbours give: did the decimal point slip?";
      case INCHES_FOR_CENTIMETRES ->
          "about 2.5 times less than its neighbours give: were those inches?";
      case CENTIMETRES_FOR_INCHES ->
          "about 2.5 times what its neighbours give: were those centimetres?";
      case FEET_FOR_METRES -> "about three times what its neighbours give: were those feet?";
      case SWAPPED -> "swapped with the point above it, as it looks";
      case REPEATED -> "the same as the one before it: was it written down twice?";
      case UNKNOWN -> "out of line with its neighbours";
    };
  }

  static String sentence(TapeSlip slip) {
    return switch (slip) {
      case SWAPPED, UNKNOWN -> of(slip) + ".";
      default -> of(slip);
    };
  }
}
