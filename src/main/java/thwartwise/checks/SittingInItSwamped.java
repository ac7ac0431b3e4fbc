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
  public List<Reading> readings(LoadedBoat trial) {
    if (trial.people().isEmpty() || !SwampedCrew.holdsOn(trial.craft(), rules)) {
      return List.of();
    }
    return Stream.of(new SwampedLevel(rules).seated(trial), new SwampedMargin(rules).seated(trial))
        .flatMap(List::stream)
        .map(r -> r.of(CheckQuestion.of(CheckId.SITTING_IN_IT_SWAMPED, r.question().measure())))
        .toList();
  }
}
