package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import thwartwise.loadcase.LineOut;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.LowestEdge;
import thwartwise.rules.RuleSet;

/** How hard may a line pull at each cleat before water comes in? */
public record GreatestPull(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return Stream.of(true, false)
        .flatMap(astern -> LineOut.of(rules, boat, astern).stream())
        .flatMap(line -> readings(boat, line))
        .toList();
  }

  private Stream<CheckReading> readings(LoadedBoat boat, LineOut line) {
    CheckQuestion ahead = asked(Measure.PULL, line);
    CheckQuestion aside = asked(Measure.PULL_ABEAM, line);
    double expected = line.expected(boat);
    LowestEdge lowest = LowestEdge.of(boat.atRest(), boat);
    if (!(lowest.height().orElse(-1) >= 0)) {
      CheckReading none =
          reading(boat, ahead, OptionalDouble.empty(), expected, lowest.assessed(), wet(lowest));
      return Stream.of(none, none.of(aside));
    }
    return Stream.of(
        reading(boat, ahead, line.greatest(boat, expected), expected),
        reading(boat, aside, line.greatestAbeam(boat, expected), expected));
  }

  private static CheckQuestion asked(Measure measure, LineOut line) {
    return CheckQuestion.of(CheckId.GREATEST_PULL, measure, line.cleat().name());
  }

  private static Note wet(LowestEdge lowest) {
    Note edge = Note.of(lowest);
    return lowest.height().isPresent() ? new Note.WetWithoutPull(edge) : edge;
  }

  private CheckReading reading(
      LoadedBoat boat, CheckQuestion question, double greatest, double expected) {
    Note note = new Note.LevelPull(!(greatest < rules.value("greatest-pull")));
    return reading(boat, question, OptionalDouble.of(greatest), expected, true, note);
  }

  private CheckReading reading(
      LoadedBoat boat,
      CheckQuestion question,
      OptionalDouble value,
      double expected,
      boolean assessed,
      Note note) {
    return new CheckReading(
        question,
        Margin.atLeast(expected, value, Unit.NEWTON),
        assessed,
        rules.limit("drag-water").cited(),
        boat.loadCase(),
        note);
  }
}
