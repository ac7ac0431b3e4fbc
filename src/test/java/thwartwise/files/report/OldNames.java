package thwartwise.files.report;

import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCase.Kind;

/** Findings made up in the words of a report of version 1, as they are read from one. */
public final class OldNames {
  private OldNames() {}

  public static CheckQuestion question(String name) {
    return OldQuestions.of(name);
  }

  public static Optional<LimitingFactor> factor(String name) {
    return OldQuestions.factor(name);
  }

  public static QuestionMargin margin(
      String check, double value, double limit, boolean atLeast, Unit unit) {
    return new QuestionMargin(
        question(check), new Margin(OptionalDouble.of(value), limit, atLeast, unit));
  }

  public static Finding finding(
      String check,
      Role role,
      Outcome outcome,
      OptionalDouble value,
      double limit,
      boolean atLeast,
      Unit unit,
      String source,
      String condition,
      String note) {
    LoadCase loadCase = loadCase(condition);
    return new Finding(
        OldQuestions.of(check, loadCase.kind() == Kind.AS_MEASURED),
        role,
        outcome,
        new Margin(value, limit, atLeast, unit),
        source,
        loadCase,
        Note.stated(note));
  }

  public static LoadCase loadCase(String words) {
    return new OldLoadCases().read(words);
  }
}
