package thwartwise.checks;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import thwartwise.afloat.CapsizedBoat;
import thwartwise.afloat.Gravity;
import thwartwise.boat.Body;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
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
    CapsizedBoat capsized = CapsizedBoat.of(empty.swamped(List.of()));
    double lightest =
        boat.people().stream().mapToDouble(Body::mass).min().orElse(rules.value("lone-person"));
    return List.of(
        reading(
            Measure.EFFORT,
            "righting-share",
            "at the rail, half in the water",
            empty,
            capsized,
            lightest),
        reading(
            Measure.EFFORT_WITH_A_LINE,
            "righting-line-share",
            "standing on the edge of the upturned bottom, leaning out on a line",
            empty,
            capsized,
            lightest));
  }

  private CheckReading reading(
      Measure measure,
      String limit,
      String how,
      LoadedBoat empty,
      CapsizedBoat capsized,
      double lightest) {
    Limit share = rules.limit(limit);
    double lever = share.value() * empty.model().form().beam() / 2;
    return new CheckReading(
        CheckQuestion.of(CheckId.TURNING_BACK, measure),
        Margin.atMost(lightest * Gravity.STANDARD * lever, capsized.effort(), Unit.NEWTON_METRE),
        capsized.assessed(),
        share.cited(),
        empty.loadCase(),
        note(capsized, lightest, how, empty.units()));
  }

  private static String note(CapsizedBoat capsized, double lightest, String how, UnitFormat units) {
    if (!capsized.assessed()) {
      return "no way back could be followed";
    }
    if (capsized.effort().isEmpty()) {
      return "it does not float";
    }
    String who =
        "against one person of "
            + units.either(
                String.format(Locale.ROOT, "%.0f kg", lightest),
                () -> units.mass(lightest, UnitFormat.Side.DOWN))
            + " "
            + how;
    String after = capsized.staysUp() ? "" : "; once up it does not stay up";
    OptionalDouble effort = capsized.effort();
    return effort.getAsDouble() > 0
        ? who + after + "; air caught under it is not counted"
        : "it does not stay upside down" + after;
  }
}
