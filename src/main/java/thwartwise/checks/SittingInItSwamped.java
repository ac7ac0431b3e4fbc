package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * May the crew sit in a swamped boat that is meant to be held on to? Yes, where it floats level
 * with the margins required of a boat that people sit in.
 */
public record SittingInItSwamped(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    if (boat.people().isEmpty() || !SwampedCrew.holdsOn(boat.model(), rules)) {
      return List.of();
    }
    return Stream.of(new SwampedLevel(rules).seated(boat), new SwampedMargin(rules).seated(boat))
        .flatMap(List::stream)
        .map(r -> r.of(CheckQuestion.of(CheckId.SITTING_IN_IT_SWAMPED, r.question().measure())))
        .toList();
  }
}
