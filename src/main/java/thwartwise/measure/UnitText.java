package thwartwise.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text with measures in both systems: "a boat under {6 m|20 ft}". The first of the two is metric.
 *
 * @param template with both
 * @param system in which it is read
 */
public record UnitText(String template, UnitSystem system) {
  private static final Pattern MEASURE = Pattern.compile("\\{([^{}|]*)\\|([^{}|]*)}");

  /** The text in metric words until another system is asked for. */
  public static UnitText of(String template) {
    return new UnitText(template, UnitSystem.METRIC);
  }

  public UnitText in(UnitSystem other) {
    return new UnitText(template, other);
  }

  public String words() {
    Matcher measure = MEASURE.matcher(template);
    return measure.find() ? measure.replaceAll(system.isMetric() ? "$1" : "$2") : template;
  }
}
