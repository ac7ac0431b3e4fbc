package thwartwise.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.crew.Recommendation.QuestionMargin;

/** How far inside its limit the recommended crew stays in one figure, before and after. */
public record MarginChange(
    CheckQuestion question, Optional<Margin> before, Optional<Margin> after) {

  /** Every margin that is not the same, in the order of the later record. */
  static List<MarginChange> between(List<QuestionMargin> before, List<QuestionMargin> after) {
    List<QuestionMargin> left = new ArrayList<>(before);
    List<MarginChange> changes = new ArrayList<>();
    for (QuestionMargin now : after) {
      Optional<QuestionMargin> was =
          left.stream().filter(old -> old.question().equals(now.question())).findFirst();
      was.ifPresent(left::remove);
      changes.add(
          new MarginChange(
              now.question(), was.map(QuestionMargin::margin), Optional.of(now.margin())));
    }
    left.forEach(
        old ->
            changes.add(
                new MarginChange(old.question(), Optional.of(old.margin()), Optional.empty())));
    return changes.stream().filter(change -> !change.before.equals(change.after)).toList();
  }
}
