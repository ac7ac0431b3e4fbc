package thwartwise.report;

import java.util.Locale;
import thwartwise.boat.BuoyancyReason;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Filling.SealTest;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** Why a chamber counts or does not, in the reader's units. */
public record BuoyancyReasonWords(UnitFormat units) {

  public static String of(BuoyancyReason reason, UnitFormat units) {
    return new BuoyancyReasonWords(units).of(reason);
  }

  private String of(BuoyancyReason reason) {
    if (reason instanceof BuoyancyReason.Stated stated) {
      return stated.words();
    }
    if (reason instanceof BuoyancyReason.LooseStowage stowage) {
      return of(stowage.reason())
          + "; what is stowed loose takes up "
          + units.litres(stowage.volume(), Side.UP);
    }
    if (reason instanceof BuoyancyReason.AssumedHead assumed) {
      return of(assumed.reason())
          + "; how high the water stood in its test is not stated, so "
          + units.mark(assumed.head())
          + " is taken: state it";
    }
    if (reason instanceof BuoyancyReason.TakesWater leak) {
      return of(leak.reason()) + "; " + LeakWords.of(leak, units);
    }
    if (reason instanceof BuoyancyReason.HoldsVentedKit kit) {
      return "holds the "
          + kit.kit()
          + ": such a space is vented, never sealed, and never counts; moved out, and the space"
          + " then sealed and proven, "
          + units.litres(kit.volume(), Side.DOWN)
          + " would count";
    }
    if (reason instanceof BuoyancyReason.HasOpening opening) {
      return "has an opening that nothing closes, the " + opening.opening() + ": it fills";
    }
    if (reason instanceof BuoyancyReason.OpenChamber) {
      return "open: it fills";
    }
    return ofFoam(reason);
  }

  private String ofFoam(BuoyancyReason reason) {
    if (reason instanceof BuoyancyReason.SoakingFoam) {
      return "foam that is not known to be closed-cell soaks and does not count";
    }
    if (reason instanceof BuoyancyReason.LooseFoam) {
      return "foam that is not fastened floats away and does not count";
    }
    return reason instanceof BuoyancyReason.FastenedFoam foam
        ? "closed-cell foam, fastened: " + share(foam.share()) + " count"
        : ofTest(reason);
  }

  private static String share(double share) {
    return share == CountedBuoyancy.FOAM_SHARE
        ? "nine tenths"
        : String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private String ofTest(BuoyancyReason reason) {
    if (reason instanceof BuoyancyReason.OnlyClaimed) {
      return "only claimed: it counts for nothing until a leak test is recorded";
    }
    if (reason instanceof BuoyancyReason.NoLeakTest) {
      return "called proven, but no leak test is recorded: it counts for nothing";
    }
    if (reason instanceof BuoyancyReason.FutureLeakTest test) {
      return "its leak test is dated in the future, " + test.date();
    }
    if (reason instanceof BuoyancyReason.StaleLeakTest test) {
      return "its leak test of " + test.date() + " is over twelve months old: test again";
    }
    if (reason instanceof BuoyancyReason.RepairedSinceTest repair) {
      return "repaired or altered "
          + repair.repaired()
          + ", and its leak test of "
          + repair.tested()
          + " is not later: test again";
    }
    if (reason instanceof BuoyancyReason.ShortLeakTest test) {
      return String.format(
          Locale.ROOT, "its leak test lasted under %.0f minutes: test longer", test.leastMinutes());
    }
    if (reason instanceof BuoyancyReason.FailedLeakTest test) {
      return failed(test);
    }
    BuoyancyReason.ProvenTight proven = (BuoyancyReason.ProvenTight) reason;
    return "proven "
        + proven.date()
        + " by "
        + proven.by()
        + (proven.bothSides()
            ? "; this one test stands for both sides, and each needs one of its own"
            : "");
  }

  private String failed(BuoyancyReason.FailedLeakTest test) {
    return "its leak test let in "
        + units.either(
            String.format(Locale.ROOT, "%.1f litres", test.litresIn()),
            () -> units.jug(test.litresIn() / 1000))
        + ", over "
        + units.either(
            String.format(Locale.ROOT, "%.0f", test.mostLitres()),
            () -> units.jug(test.mostLitres() / 1000))
        + ": find the leak and test again";
  }

  /** The leak test that a chamber must pass before it counts. */
  static String requiredTest(UnitFormat units) {
    return String.format(
        Locale.ROOT,
        "at least %.0f minutes, and at most %s may come in",
        SealTest.LEAST_MINUTES,
        mostLitres(SealTest.MOST_LITRES, units));
  }

  static String mostLitres(double litres, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.0f litre", litres), () -> units.jug(litres / 1000));
  }
}
