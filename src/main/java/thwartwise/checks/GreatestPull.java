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
    String aside = name + ", out over the side";
    double expected = line.expected(trial);
    LowestEdge lowest = LowestEdge.of(trial.atRest(), trial);
    if (!(lowest.height().orElse(-1) >= 0)) {
      Reading none =
          reading(trial, name, OptionalDouble.empty(), expected, lowest.assessed(), wet(lowest));
      return Stream.of(none, none.called(aside));
    }
    return Stream.of(
        reading(trial, name, line.greatest(trial), expected),
        reading(trial, aside, line.greatestAbeam(trial), expected));
  }

  private static String wet(LowestEdge lowest) {
    String under = lowest.height().isPresent() ? "water comes in without any pull: " : "";
    return under + lowest.words();
  }

  private Reading reading(Trial trial, String name, double greatest, double expected) {
    String note =
        "level pull before water comes in, against what current and wind may snatch end on";
    String further =
        greatest < rules.value("greatest-pull") ? "" : "; nothing harder was looked at";
    return reading(trial, name, OptionalDouble.of(greatest), expected, true, note + further);
  }

  private Reading reading(
      Trial trial,
      String name,
      OptionalDouble value,
      double expected,
      boolean assessed,
      String note) {
    return new Reading(
        name,
        value,
        assessed,
        expected,
        true,
        Unit.NEWTON,
        rules.limit("drag-water").cited(),
        trial.condition(),
        note);
  }
}
