package thwartwise.checks;

import java.util.List;
import thwartwise.rules.RuleSet;

/** The checks of the cautious default set, quick ones first so that a search fails early. */
public final class CautiousChecks {
  private CautiousChecks() {}

  public static List<Check> of(RuleSet rules) {
    return List.of(
        new FreeboardAtRest(rules),
        new ThreeFifthsToOneSide(rules),
        new SwampedLift(rules),
        new OneChamberLost(rules),
        new SwampedLevel(rules),
        new HardAgainstOneSide(rules),
        new OnePersonStanding(rules));
  }
}
