package thwartwise.checks;

import java.util.List;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;

/**
 * Turns readings into findings: {@code meets} when the limit is met as measured and after the
 * allowance, {@code borderline} when it is met only as measured.
 */
public final class Findings {
  private Findings() {}

  public static List<Finding> of(Check check, LoadedBoat boat, Allowance allowance) {
    List<CheckReading> measured = check.confirmedReadings(boat.under(Allowance.NONE));
    List<CheckReading> cautious = check.confirmedReadings(boat.under(allowance));
    return measured.stream().map(m -> finding(check.role(), m, twin(m, cautious))).toList();
  }

  // After the allowance a boat may reach fewer states and give fewer readings: a missing reading is
  // not met.
  private static CheckReading twin(CheckReading measured, List<CheckReading> cautious) {
    return cautious.stream()
        .filter(c -> c.question().equals(measured.question()))
        .findFirst()
        .orElseGet(() -> measured.without(Note.of(Note.Fact.NO_SUCH_STATE)));
  }

  private static Finding finding(Role role, CheckReading measured, CheckReading cautious) {
    return new Finding(
        measured.question(),
        role,
        outcome(measured, cautious),
        measured.margin(),
        measured.source(),
        measured.loadCase(),
        note(measured, cautious));
  }

  private static Outcome outcome(CheckReading measured, CheckReading cautious) {
    if (!measured.assessed() || !cautious.assessed()) {
      return Outcome.NOT_ASSESSED;
    }
    if (!measured.met()) {
      return Outcome.FALLS_SHORT;
    }
    return cautious.met() ? Outcome.MEETS : Outcome.BORDERLINE;
  }

  private static Note note(CheckReading measured, CheckReading cautious) {
    return !measured.met() || cautious.met()
        ? measured.note()
        : new Note.AfterAllowance(cautious.margin(), cautious.note());
  }
}
