package thwartwise.measured;

/**
 * A unit that people type by mistake.
 *
 * @param tens power of ten from it to the unit of the file
 */
record UnitSlip(String unit, int tens) {
  static final UnitSlip GRAMS = new UnitSlip("grams", -3);
  static final UnitSlip CENTIMETRES = new UnitSlip("centimetres", -2);
  static final UnitSlip MILLIMETRES = new UnitSlip("millimetres", -3);
  static final UnitSlip MILLILITRES = new UnitSlip("millilitres", -3);
  static final UnitSlip CUBIC_METRES = new UnitSlip("cubic metres", 3);
  static final UnitSlip WATTS = new UnitSlip("watts", -3);
  static final UnitSlip GRAMS_PER_CUBIC_CENTIMETRE = new UnitSlip("grams per cubic centimetre", 3);
}
