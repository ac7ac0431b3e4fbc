package thwartwise.checks;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.boat.Space;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** Swamped, is there lift to spare for each person to hold on to? */
public record SwampedLift(RuleSet rules) implements Check {
  private static final CheckQuestion QUESTION =
      CheckQuestion.of(CheckId.SWAMPED_LIFT, Measure.LIFT);

  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return true;
  }

  @Override
  public boolean byVolumesAlone() {
    return true;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    Note note =
        SwampedCrew.holdsOn(boat.model(), rules) && !boat.people().isEmpty()
            ? Note.of(Note.Fact.HANDS_ON_IT)
            : Note.NONE;
    return List.of(toSpare(rules, boat, QUESTION, List.of(), note));
  }

  /**
   * Spare buoyancy without some chambers, against the lift that each person needs, with everyone
   * seated in the boat or holding on from the water, in any pose.
   */
  static CheckReading toSpare(
      RuleSet rules, LoadedBoat boat, CheckQuestion question, Collection<Space> lost, Note note) {
    Limit each = rules.limit("swamped-lift-per-person");
    LoadedBoat crewed =
        SwampedCrew.holdsOn(boat.model(), rules) && !boat.people().isEmpty()
            ? boat.empty(Act.HANDS_ON_IT)
            : boat;
    return new CheckReading(
        question,
        Margin.atLeast(
            each.value() * boat.people().size(),
            OptionalDouble.of(crewed.spareBuoyancy(lost)),
            Unit.KILOGRAM),
        true,
        each.cited(),
        crewed.loadCase(),
        note);
  }
}
