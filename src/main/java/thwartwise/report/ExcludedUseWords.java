package thwartwise.report;

import java.util.Locale;
import java.util.function.BiFunction;
import thwartwise.boat.Beaufort;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.ExcludedUse;

/** Why nothing is recommended whatever the figures, each reason in a sentence. */
public final class ExcludedUseWords {
  private static final String SO = ", so nothing is recommended";

  private final UnitFormat units;

  private ExcludedUseWords(UnitFormat units) {
    this.units = units;
  }

  public static String of(ExcludedUse use, UnitFormat units) {
    return use instanceof ExcludedUse.NotCovered not
        ? notCovered(not, units)
        : new ExcludedUseWords(units).words(use) + SO;
  }

  private static String notCovered(ExcludedUse.NotCovered not, UnitFormat units) {
    return "not covered by "
        + (not.byAnyRule() ? "any rule set at hand" : "our own limits")
        + ": "
        + FormulaNoteWords.of(not.why(), units)
        + "; so nothing is recommended"
        + (not.source().isBlank() ? "" : ". Why so: " + not.source());
  }

  private String words(ExcludedUse use) {
    if (use instanceof ExcludedUse.UnderSail) {
      return "the boat is under sail, and sailing is outside what is worked out here";
    }
    if (use instanceof ExcludedUse.Towing) {
      return "the boat tows or is towed faster than a walk, and that is outside what is worked out"
          + " here";
    }
    if (use instanceof ExcludedUse.SeveralHulls several) {
      return "\"" + several.name() + "\" speaks of more than one hull, and one is worked out here";
    }
    if (use instanceof ExcludedUse.MuchPetrol petrol) {
      return String.format(
          "there is more petrol aboard than one portable tank of at most %s (%s)",
          units.mass(petrol.mostKg(), Side.DOWN).replace(UnitFormat.TIED, " "),
          String.join(", ", petrol.vessels()));
    }
    return ofWaters(use);
  }

  private String ofWaters(ExcludedUse use) {
    if (use instanceof ExcludedUse.HighWaves waves) {
      return over(
          "waves of %s are higher than %s",
          waves.metres(), waves.most(), waves.source(), either("%.2f m", units::height));
    }
    if (use instanceof ExcludedUse.StrongWind wind) {
      return String.format(
          Locale.ROOT,
          "a wind of %s is force %d: more than force %d (%s)",
          either("%.1f m/s", units::speed).apply(wind.metresASecond(), Side.UP),
          Beaufort.of(wind.metresASecond()).force(),
          Beaufort.of(wind.most()).force(),
          wind.source());
    }
    if (use instanceof ExcludedUse.StrongCurrent current) {
      return over(
          "a current of %s is stronger than %s",
          current.metresASecond(),
          current.most(),
          current.source(),
          either("%.2f m/s", units::speed));
    }
    if (use instanceof ExcludedUse.FarOffshore far) {
      return over(
          "%s from the shore is farther than %s",
          far.metres(), far.most(), far.source(), either("%.0f m", units::distance));
    }
    return use instanceof ExcludedUse.Weir
        ? "there is a weir, sluice or fall the boat could be carried to"
        : "the waves break, and breaking waves are outside what is worked out here";
  }

  private BiFunction<Double, Side, String> either(
      String metric, BiFunction<Double, Side, String> own) {
    return (value, side) ->
        units.either(String.format(Locale.ROOT, metric, value), () -> own.apply(value, side));
  }

  private static String over(
      String words,
      double value,
      double most,
      String source,
      BiFunction<Double, Side, String> figure) {
    return String.format(words, figure.apply(value, Side.UP), figure.apply(most, Side.DOWN))
        + " ("
        + source
        + ")";
  }
}
