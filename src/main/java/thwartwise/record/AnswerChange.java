package thwartwise.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.loadcase.LoadCase.Kind;

/**
 * One question asked of the boat under one kind of loading, and its two answers. Without a before
 * it is asked only now, without an after no longer.
 *
 * @param loading as loaded, at the limit or as measured
 */
public record AnswerChange(Kind loading, Optional<Finding> before, Optional<Finding> after) {

  /** The answer of now, or the last there was. */
  public Finding latest() {
    return after.or(() -> before).orElseThrow();
  }

  /** Whether the outcome is another one than it was; a question that came or went counts too. */
  public boolean outcomeChanged() {
    return !before.map(Finding::outcome).equals(after.map(Finding::outcome));
  }

  private boolean changed() {
    return outcomeChanged()
        || !before.map(Finding::value).equals(after.map(Finding::value))
        || !limit(before).equals(limit(after));
  }

  private static Optional<Double> limit(Optional<Finding> finding) {
    return finding.map(f -> f.margin().limit());
  }

  /** Every answer that is not the same, to the last digit, in the order of the later record. */
  static List<AnswerChange> between(List<Finding> before, List<Finding> after) {
    List<Finding> left = new ArrayList<>(before);
    List<AnswerChange> changes = new ArrayList<>();
    for (Finding now : after) {
      Optional<Finding> was = left.stream().filter(old -> sameQuestion(old, now)).findFirst();
      was.ifPresent(left::remove);
      changes.add(new AnswerChange(loading(now), was, Optional.of(now)));
    }
    left.forEach(
        old -> changes.add(new AnswerChange(loading(old), Optional.of(old), Optional.empty())));
    return changes.stream().filter(AnswerChange::changed).toList();
  }

  private static boolean sameQuestion(Finding a, Finding b) {
    return a.question().equals(b.question()) && a.role() == b.role() && loading(a) == loading(b);
  }

  /** The crew may be another one; what is done to it is part of the check. */
  private static Kind loading(Finding finding) {
    return finding.loadCase().kind();
  }
}
