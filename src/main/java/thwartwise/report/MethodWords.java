package thwartwise.report;

import java.util.Arrays;
import java.util.List;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.MethodAssumption.RuleFigure;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;

/** The methods of measuring, as stated, and what each counts as. */
public final class MethodWords {
  /** So many standard deviations 95 of 100 normally distributed errors are within. */
  private static final double TWO_SIDED = 1.96;

  private MethodWords() {}

  /** The list of them: "hull weight: bathroom scales", "kit weights of the battery: guess". */
  public static List<String> of(List<MeasuringMethod> methods) {
    return methods.stream().map(MethodWords::of).toList();
  }

  /** "bathroom scales right to 4 % in 95 of 100 (judgement)". */
  static String accuracy(RuleFigure figure, UnitFormat units) {
    return Arrays.stream(MeasuringWay.values())
            .filter(way -> way.limit().equals(figure.limit()))
            .map(way -> way.word() + " " + accuracy(way, figure.value(), units))
            .findFirst()
            .orElse(figure.limit() + " " + figure.value())
        + " ("
        + figure.basis()
        + ")";
  }

  /**
   * What a way of measuring counts as: "right to 4 % in 95 of 100".
   *
   * @param value its limit: one standard deviation, or how many times what counts unsaid
   */
  public static String accuracy(MeasuringWay way, double value, UnitFormat units) {
    if (way.isGuessed()) {
      return "off by %s times what counts where nobody says how".formatted(Rounding.plain(value));
    }
    double off = TWO_SIDED * value;
    return "right to %s in 95 of 100"
        .formatted(way.isRelative() ? Rounding.up(100 * off, 0) + " %" : units.hole(off));
  }

  private static String of(MeasuringMethod method) {
    return method.kind().word()
        + method.item().map(item -> " of the " + item).orElse("")
        + ": "
        + method.way().word();
  }
}
