package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes findings of readings: {@code meets} only when the limit is met as measured and also after
 * the allowance is taken off; {@code borderline} when only as measured.
 */
public final class Findings {
  private Findings() {}

  public static List<Finding> of(Check check, Trial trial, Allowance allowance) {
    List<Reading> measured = check.readings(trial.under(Allowance.NONE));
    List<Reading> cautious = check.readings(trial.under(allowance));
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < measured.size(); i++) {
      findings.add(finding(check.role(), measured.get(i), cautious.get(i)));
    }
    return findings;
  }

  private static Finding finding(Role role, Reading measured, Reading cautious) {
    return new Finding(
        measured.check(),
        role,
        outcome(measured, cautious),
        measured.value(),
        measured.limit(),
        measured.atLeast(),
        measured.unit(),
        measured.source(),
        measured.condition(),
        note(measured, cautious));
  }

  private static Outcome outcome(Reading measured, Reading cautious) {
    if (!measured.assessed() || !cautious.assessed()) {
      return Outcome.NOT_ASSESSED;
    }
    if (!measured.met()) {
      return Outcome.FALLS_SHORT;
    }
    return cautious.met() ? Outcome.MEETS : Outcome.BORDERLINE;
  }

  private static String note(Reading measured, Reading cautious) {
    if (!measured.met() || cautious.met()) {
      return measured.note();
    }
    return "Allow for the tape and the scales and " + worse(cautious);
  }

  private static String worse(Reading cautious) {
    if (cautious.value().isEmpty()) {
      return cautious.note();
    }
    String how = cautious.note().isBlank() ? "" : ": " + cautious.note();
    return "it comes to " + cautious.figure() + how;
  }
}
