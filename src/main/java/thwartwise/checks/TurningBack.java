package thwartwise.checks;

import java.util.List;
import thwartwise.afloat.CapsizedBoat;
import thwartwise.afloat.Gravity;
import thwartwise.boat.Body;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Turned over and full of water, can one person turn it back: with half their weight at the rail
 * from the water, or standing on the edge of the upturned bottom and leaning out on a line?
 */
public record TurningBack(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    LoadedBoat empty = boat.empty(Act.NOBODY_UNDER_IT);
    CapsizedBoat capsized = empty.capsized();
    double lightest =
        boat.people().stream().mapToDouble(Body::mass).min().orElse(rules.value("lone-person"));
    return List.of(
        reading(Measure.EFFORT, "righting-share", empty, capsized, lightest),
        reading(Measure.EFFORT_WITH_A_LINE, "righting-line-share", empty, capsized, lightest));
  }

  private CheckReading reading(
      Measure measure, String limit, LoadedBoat empty, CapsizedBoat capsized, double lightest) {
    Limit share = rules.limit(limit);
    double lever = share.value() * empty.model().form().beam() / 2;
    return new CheckReading(
        CheckQuestion.of(CheckId.TURNING_BACK, measure),
        Margin.atMost(lightest * Gravity.STANDARD * lever, capsized.effort(), Unit.NEWTON_METRE),
        capsized.assessed(),
        share.cited(),
        empty.loadCase(),
        note(capsized, lightest, measure == Measure.EFFORT_WITH_A_LINE));
  }

  private static Note note(CapsizedBoat capsized, double lightest, boolean withLine) {
    if (!capsized.assessed()) {
      return Note.of(Note.Fact.NO_WAY_BACK);
    }
    if (capsized.effort().isEmpty()) {
      return Note.of(Note.Fact.DOES_NOT_FLOAT);
    }
    return capsized.effort().getAsDouble() > 0
        ? new Note.TurnedBack(lightest, withLine, capsized.staysUp())
        : new Note.NotUpsideDown(capsized.staysUp());
  }
}
