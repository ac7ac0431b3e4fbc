package thwartwise.walk.questions;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measured.BoatQuantity;

/**
 * The print on a wire: its copper in square millimetres or by American gauge, and the temperature
 * limit of its insulation.
 *
 * @param area m²
 * @param insulation °C
 */
record WireText(Optional<Double> area, Optional<Integer> gauge, Optional<Double> insulation) {
  private static final Pattern PRINTED =
      Pattern.compile(
          "(?i)(?:(?:awg|gauge) ?(\\d{1,2})|(\\d{1,3}(?:[.,]\\d{1,2})?) ?(mm2|mm²|mm|sq ?mm|awg|gauge)?)"
              + "(?:[ ,]+(\\d{2,3}) ?°?(?:c|deg|degrees)\\.?)?");
  private static final String EXPECTED = " Type a size such as 4 mm2, AWG 10, or 10 mm2 105 C.";

  /**
   * @param metric whether a bare number means square millimetres
   */
  static Reading<WireText> read(String typed, boolean metric) {
    Matcher printed = PRINTED.matcher(typed.strip());
    if (!printed.matches()) {
      return Reading.refused(PrintableText.excerpt(typed) + " is no size of a wire." + EXPECTED);
    }
    boolean gauge = printed.group(1) != null || isGauge(printed.group(3), metric);
    String figure = printed.group(1) != null ? printed.group(1) : printed.group(2);
    double size = Double.parseDouble(figure.replace(',', '.'));
    BoatQuantity quantity = gauge ? BoatQuantity.GAUGE : BoatQuantity.SQUARE_MILLIMETRES;
    Optional<Double> degrees = Optional.ofNullable(printed.group(4)).map(Double::valueOf);
    if (!quantity.believes(size) || gauge && size != Math.rint(size)) {
      return Reading.refused(
          NumberText.number(size) + " is no " + quantity.unit() + " of such a wire." + EXPECTED);
    }
    if (degrees.isPresent() && !BoatQuantity.INSULATION.believes(degrees.get())) {
      return Reading.refused(
          NumberText.number(degrees.get()) + " degrees are printed on no wire." + EXPECTED);
    }
    return Reading.understood(wire(size, gauge, degrees), words(size, gauge, degrees));
  }

  private static boolean isGauge(String unit, boolean metric) {
    return unit == null ? !metric : unit.equalsIgnoreCase("awg") || unit.equalsIgnoreCase("gauge");
  }

  private static WireText wire(double size, boolean gauge, Optional<Double> degrees) {
    return gauge
        ? new WireText(Optional.empty(), Optional.of((int) size), degrees)
        : new WireText(
            Optional.of(BoatQuantity.SQUARE_MILLIMETRES.si(size)), Optional.empty(), degrees);
  }

  private static String words(double size, boolean gauge, Optional<Double> degrees) {
    String copper = gauge ? "AWG " + NumberText.number(size) : NumberText.number(size) + " mm2";
    return copper + degrees.map(d -> ", " + NumberText.number(d) + " C").orElse("");
  }
}
