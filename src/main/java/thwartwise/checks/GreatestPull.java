package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thwartwise.rules.RuleSet;

/** How hard may a line pull at each cleat before water comes in? */
public record GreatestPull(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    return Stream.of(true, false)
        .flatMap(astern -> LineOut.of(rules, trial, astern).stream())
        .flatMap(line -> readings(trial, line))
        .toList();
  }

  private Stream<Reading> readings(Trial trial, LineOut line) {
    String name = "greatest pull at the " + line.cleat().name();
    double expected = line.expected(trial);
    return Stream.of(
        reading(trial, name, line.greatest(trial), expected),
        reading(trial, name + ", out over the side", line.greatestAbeam(trial), expected));
  }

  private Reading reading(Trial trial, String name, double greatest, double expected) {
    String further =
        greatest < rules.value("greatest-pull") ? "" : "; nothing harder was looked at";
    String note = "level pull before water comes in, against what current and wind may snatch";
    return reading(trial, line, OptionalDouble.of(greatest), true, note + further);
  }

  private static String without(LowestEdge lowest) {
    String under = lowest.height().isPresent() ? "water comes in without any pull: " : "";
    return under + lowest.words();
  }

  private Reading reading(
      Trial trial, LineOut line, OptionalDouble value, boolean assessed, String note) {
    return new Reading(
        name,
        OptionalDouble.of(greatest),
        true,
        expected,
        true,
        Unit.NEWTON,
        rules.limit("drag-water").cited(),
        trial.condition(),
        "level pull before water comes in, against what current and wind may snatch end on"
            + further);
  }
}
