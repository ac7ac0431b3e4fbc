package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.checks.Bailing.BailerRate;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Is water in the bilge bailed out in time? The volume is the one that puts the first edge under
 * water: after that the sea comes in as fast as anybody bails.
 */
public record BilgeBailing(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    // A changed boat that takes more water has more to bail, and this does not make it worse.
    if (boat.isHurried()) {
      return List.of();
    }
    BailerRate bailer = BailerRate.of(rules, boat.model().boat());
    double water =
        boat.waterLimits(Bay.WHOLE, rules.value("loose-water") / 1000)
            .edgeUnder()
            .orElseGet(() -> boat.looseWater().capacity(Bay.WHOLE));
    Limit limit = rules.limit("bailing-minutes");
    return List.of(
        new CheckReading(
            CheckQuestion.of(CheckId.LOOSE_WATER, Measure.TIME),
            Margin.atMost(60 * limit.value(), OptionalDouble.of(bailer.time(water)), Unit.MINUTE),
            true,
            limit.cited(),
            boat.loadCase(),
            bailer.note(water)));
  }
}
