package thwartwise.report;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Beaufort;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.ValidWaters.WaterStatement;

/**
 * The waters for which the figures hold and do not hold, in terms that a person on the bank can
 * check.
 */
public final class WaterWords {
  private static final double HAND = 0.10;
  private static final double HALF_WAY_TO_KNEE = 0.20;
  private static final double BELOW_KNEE = 0.30;

  private final UnitFormat units;

  private WaterWords(UnitFormat units) {
    this.units = units;
  }

  /** A sentence. */
  public static String sentence(WaterStatement statement, UnitFormat units) {
    String words = of(statement, units);
    return switch (statement.kind()) {
      case HOLDS_FOR -> "Holds for: " + words;
      case NOT_FOR -> "Not for: " + words;
      case FURTHER -> words;
    };
  }

  /** The words without "holds for" and "not for". */
  public static String of(WaterStatement statement, UnitFormat units) {
    WaterWords in = new WaterWords(units);
    if (statement instanceof WaterStatement.Within within) {
      return in.within(within);
    }
    if (statement instanceof WaterStatement.Beyond beyond) {
      return "waves over "
          + in.height(beyond.wave())
          + " or breaking; more wind, more current or farther out; a weir, sluice or fall within"
          + " reach; sail, tow or a planing speed";
    }
    return statement instanceof WaterStatement.Stated stated
        ? stated.words()
        : "The water is cold: nobody goes alone, help is within sight, and everybody is dressed for"
            + " being in it";
  }

  private String within(WaterStatement.Within within) {
    return String.join(
        "; ",
        List.of(
            waves(within.wave()),
            wind(within.windForce()),
            "a current up to " + current(within.current()),
            within.wash().isPresent()
                ? "wash of passing boats up to " + height(within.wash().getAsDouble())
                : "no wash of passing boats",
            within.colder()
                ? "water colder than " + degrees("degrees", within.coldWater()) + " too"
                : "water of " + degrees("degrees Celsius", within.coldWater()) + " or warmer",
            "up to " + distance(within.offshore()) + " from the shore"));
  }

  private String waves(double wave) {
    return "waves up to " + height(wave) + looks(wave) + ", not breaking";
  }

  /** A wave height compared with a person who stands in it; blank above the knee. */
  private static String looks(double wave) {
    if (wave <= HAND) {
      return " (a hand's breadth)";
    }
    if (wave <= HALF_WAY_TO_KNEE) {
      return " (half way to the knee)";
    }
    return wave <= BELOW_KNEE ? " (below the knee)" : "";
  }

  private static String wind(int force) {
    return String.format(
        Locale.ROOT, "wind up to force %d (%s)", force, Beaufort.values()[force].looks());
  }

  private String height(double metres) {
    return units.either(
        String.format(Locale.ROOT, "%.2f m", metres), () -> units.height(metres, Side.DOWN));
  }

  private String current(double speed) {
    return units.either(
        String.format(Locale.ROOT, "%.1f m/s", speed), () -> units.speed(speed, Side.DOWN));
  }

  private String distance(double metres) {
    return units.either(
        String.format(Locale.ROOT, "%.0f m", metres), () -> units.distance(metres, Side.DOWN));
  }

  private String degrees(String metric, double celsius) {
    return units.either(
        String.format(Locale.ROOT, "%.0f ", celsius) + metric,
        () -> units.temperature(celsius, Side.UP));
  }
}
