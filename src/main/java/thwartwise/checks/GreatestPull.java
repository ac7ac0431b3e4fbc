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
        .map(line -> reading(trial, line))
        .toList();
  }

  private Reading reading(Trial trial, LineOut line) {
    LowestEdge lowest = LowestEdge.of(trial.atRest(), trial);
    if (!(lowest.height().orElse(-1) >= 0)) {
      return reading(trial, line, OptionalDouble.empty(), lowest.assessed(), without(lowest));
    }
    double greatest = line.greatest(trial);
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
        "greatest pull at the " + line.cleat().name(),
        value,
        assessed,
        line.expected(trial),
        true,
        Unit.NEWTON,
        rules.limit("drag-water").cited(),
        trial.condition(),
        note);
  }
}
