package thwartwise.proof;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Random;
import thwartwise.boat.HullWeight;

/**
 * Boats that differ from what was stated by what that may be off, each proved afloat with errors of
 * reading: how often 1.96 of the spreads told hold the true mass and centre, which should be 93 to
 * 97 in 100, and what is left of the spreads. A hull whose mass was off by more than its spread is
 * counted by itself: there the fit is held back and says so. Run by hand:
 *
 * <pre>
 * ProofCoverage BOATS
 * </pre>
 */
final class ProofCoverage {
  private static final String[] NAMES = {"mass, kg", "along, m", "height, m"};

  private ProofCoverage() {}

  public static void main(String[] args) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    int boats = Integer.parseInt(args[0]);
    Random random = new Random(2000);
    double[] stated = FloatedSkiff.MODEL.hullWeight().values();
    double[] mayBeOff = {12, 0.10, 0.08};
    int[] held = new int[3];
    double[] left = new double[3];
    int massHeld = 0;
    for (int b = 0; b < boats; b++) {
      double[] truth = stated.clone();
      for (int i = 0; i < 3; i++) {
        truth[i] += mayBeOff[i] * random.nextGaussian();
      }
      HullFit fit =
          HullFit.of(FloatedSkiff.read(HullWeight.of(truth), random), HullWeight.of(mayBeOff))
              .orElseThrow();
      if (fit.massHeld()) {
        massHeld++;
        continue;
      }
      for (int i = 0; i < 3; i++) {
        double spread = fit.spreads().values()[i];
        held[i] += Math.abs(fit.fitted().values()[i] - truth[i]) <= 1.96 * spread ? 1 : 0;
        left[i] += spread;
      }
    }
    int free = boats - massHeld;
    out.printf(Locale.ROOT, "mass held back in %d of %d%n", massHeld, boats);
    for (int i = 0; i < 3; i++) {
      out.printf(
          Locale.ROOT,
          "%-10s may be off %.3f, after the proof %.3f; 95 of 100 hold %.1f %% of %d%n",
          NAMES[i],
          mayBeOff[i],
          left[i] / free,
          100.0 * held[i] / free,
          free);
    }
  }
}
