package thwartwise.checks;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import thwartwise.afloat.Capsized;
import thwartwise.afloat.Gravity;
import thwartwise.boat.Body;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** Turned over and full of water, can one person turn it back with their weight at the rail? */
public record TurningBack(RuleSet rules) implements Check {
  private static final String NAME = "swamped and turned over, turning it back";

  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    Trial beside = trial.empty("everyone in the water beside it, nobody under it");
    Capsized capsized = Capsized.of(beside.swamped(List.of()));
    double lightest =
        trial.people().stream().mapToDouble(Body::mass).min().orElse(rules.value("lone-person"));
    Limit share = rules.limit("righting-share");
    double lever = share.value() * trial.craft().form().beam() / 2;
    double gives = lightest * Gravity.STANDARD * lever;
    return List.of(
        new Reading(
            NAME,
            capsized.effort(),
            capsized.assessed(),
            gives,
            false,
            Unit.NEWTON_METRE,
            share.cited(),
            beside.condition(),
            note(capsized, lightest)));
  }

  private static String note(Capsized capsized, double lightest) {
    if (!capsized.assessed()) {
      return "no way back could be followed";
    }
    if (capsized.effort().isEmpty()) {
      return "it does not float";
    }
    String who =
        String.format(
            Locale.ROOT, "against one person of %.0f kg at the rail, half in the water", lightest);
    String after = capsized.staysUp() ? "" : "; once up it does not stay up";
    OptionalDouble effort = capsized.effort();
    return effort.getAsDouble() > 0
        ? who + after + "; air caught under it is not counted"
        : "it does not stay upside down" + after;
  }
}
