package thwartwise.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.loadcase.LoadCase.Kind;

/**
 * One question in one kind of load case, with its two answers. Without {@code before} it is new;
 * without {@code after} it is no longer asked.
 *
 * @param loading as loaded, at the limit or as measured
 */
public record AnswerChange(Kind loading, Optional<Finding> before, Optional<Finding> after) {

  /** The later answer, or the earlier one where it is no longer asked. */
  public Finding latest() {
    return after.or(() -> before).orElseThrow();
  }

  /** Whether the outcome changed; a new or dropped question counts as a change. */
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

  /** Every answer that differs, to the last digit, in the order of the later record. */
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

  /** The kind of load case. The crews may differ; an act belongs to the check. */
  private static Kind loading(Finding finding) {
    return finding.loadCase().kind();
  }
}
