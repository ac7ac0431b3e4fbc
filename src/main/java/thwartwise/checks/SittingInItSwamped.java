package thwartwise.checks;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * May the crew sit in a boat that is held on to when it is swamped? It may where the boat lies
 * level and has the margin that a boat that is sat in must have.
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
