package thwartwise.json;

/**
 * A unit people type by mistake.
 *
 * @param tens power of ten from it to the unit of the file
 */
record Slip(String unit, int tens) {
  static final Slip GRAMS = new Slip("grams", -3);
  static final Slip CENTIMETRES = new Slip("centimetres", -2);
  static final Slip MILLIMETRES = new Slip("millimetres", -3);
  static final Slip MILLILITRES = new Slip("millilitres", -3);
  static final Slip CUBIC_METRES = new Slip("cubic metres", 3);
  static final Slip WATTS = new Slip("watts", -3);
  static final Slip GRAMS_PER_CUBIC_CENTIMETRE = new Slip("grams per cubic centimetre", 3);
}
