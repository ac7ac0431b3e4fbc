package thwartwise.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.LooseWater;
import thwartwise.afloat.WaterLimits;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * How many litres nobody bailed does the boat stand: until the first edge is under, and until it no
 * longer comes back? Over the whole boat, and in each bay that thwart boxes dam off by itself.
 */
public record WaterInTheBilge(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    LooseWater water = trial.looseWater();
    List<Reading> readings = new ArrayList<>(of(trial, water, Bay.WHOLE));
    List<Reading> bays =
        Bay.each(trial.craft()).stream().flatMap(b -> of(trial, water, b).stream()).toList();
    for (String name : List.of("first edge under", "no longer comes back")) {
      bays.stream()
          .filter(r -> r.check().contains(name))
          .min(Comparator.comparingDouble(Reading::margin))
          .ifPresent(readings::add);
    }
    return readings;
  }

  private List<Reading> of(Trial trial, LooseWater water, Bay bay) {
    WaterLimits limits = WaterLimits.of(water, bay, trial.edges());
    double full = water.capacity(bay);
    return List.of(
        reading(
            trial,
            bay,
            "first edge under",
            limits.edgeUnder(),
            full,
            limits.edgeAt().isBlank() ? "" : "at the " + limits.edgeAt()),
        reading(
            trial,
            bay,
            "no longer comes back",
            limits.noReturn(),
            limits.edgeUnder().orElse(full),
            limits.noReturn().isPresent() ? "" : "it comes back as long as no edge is under"));
  }

  private Reading reading(
      Trial trial, Bay bay, String what, OptionalDouble litres, double otherwise, String note) {
    Limit limit = rules.limit("loose-water");
    boolean whole = bay == Bay.WHOLE;
    String never = litres.isEmpty() && note.isBlank() ? "not even when it is full" : note;
    return new Reading(
        "loose water" + (whole ? "" : " in one bay") + ", " + what,
        OptionalDouble.of(litres.orElse(otherwise)),
        true,
        limit.value() / 1000,
        true,
        Unit.LITRE,
        limit.cited(),
        trial.condition() + "; water in " + bay.name(),
        never);
  }
}
