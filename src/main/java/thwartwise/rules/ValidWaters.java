package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;

/** The waters for which the figures hold and do not hold. */
public final class ValidWaters {
  private ValidWaters() {}

  /**
   * What they hold for, what they do not hold for, then whatever else must be known.
   *
   * @param rules as the waters tightened them
   */
  public static List<WaterStatement> of(RuleSet rules, Waters waters) {
    boolean cold = WaterAdjustedLimits.isCold(rules, waters);
    List<WaterStatement> all = new ArrayList<>();
    all.add(
        new WaterStatement.Within(
            WaterAdjustedLimits.wave(rules, waters),
            Beaufort.of(rules.value("wind-most")).force(),
            rules.value("current-most"),
            waters.wash().orElse(false)
                ? OptionalDouble.of(rules.value("wave"))
                : OptionalDouble.empty(),
            rules.value("cold-water"),
            cold,
            offshore(rules, waters)));
    all.add(new WaterStatement.Beyond(rules.value("wave-most")));
    if (cold) {
      all.add(new WaterStatement.ColdWater());
    }
    return all;
  }

  /** The farthest from the shore that is covered, m; less in cold water. */
  public static double offshore(RuleSet rules, Waters waters) {
    return RoughWater.offshoreMost(rules, waters);
  }

  /**
   * One thing said of the waters a boat's figures hold for; m, m/s and degrees Celsius. Records
   * store the names of these types and of their components, so they are never renamed.
   */
  public sealed interface WaterStatement {
    Kind kind();

    /** Whether it names waters that are covered, waters that are not, or something else. */
    enum Kind {
      HOLDS_FOR,
      NOT_FOR,
      FURTHER
    }

    /**
     * Waters that are covered.
     *
     * @param wash of passing boats that is covered; empty where none is
     * @param coldWater below which water is cold
     * @param colder whether colder water is covered, too
     */
    record Within(
        double wave,
        int windForce,
        double current,
        OptionalDouble wash,
        double coldWater,
        boolean colder,
        double offshore)
        implements WaterStatement {
      @Override
      public Kind kind() {
        return Kind.HOLDS_FOR;
      }
    }

    /** Waters that are not covered: higher waves than this, and what is never covered. */
    record Beyond(double wave) implements WaterStatement {
      @Override
      public Kind kind() {
        return Kind.NOT_FOR;
      }
    }

    /** What cold water asks of whoever goes. */
    record ColdWater() implements WaterStatement {
      @Override
      public Kind kind() {
        return Kind.FURTHER;
      }
    }

    /** In words, without those that {@code kind} stands for: what older records have. */
    record Stated(Kind kind, String words) implements WaterStatement {}
  }
}
