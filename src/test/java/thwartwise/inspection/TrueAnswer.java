package thwartwise.inspection;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** What a boat carries of which everything is known: the same limits, and nothing taken off. */
final class TrueAnswer {
  private static final Set<String> ALLOWANCES =
      Set.of(
          "allowance-mass",
          "allowance-volume",
          "allowance-volume-few-stations",
          "allowance-freeboard",
          "allowance-freeboard-few-stations");

  private TrueAnswer() {}

  static Recommendation of(Boat truth) {
    return QuickAnswer.recommended(truth, RuleBook.of(exact()), PlainHulls.TODAY);
  }

  static RuleSet exact() {
    RuleSet set = RuleSetFile.cautiousDefault();
    Map<String, Limit> limits = new HashMap<>(set.limits());
    for (String allowance : ALLOWANCES) {
      Limit limit = limits.get(allowance);
      limits.put(
          allowance, new Limit(0, limit.unit(), limit.basis(), limit.source(), limit.stricter()));
    }
    return new RuleSet(
        set.name(),
        set.edition(),
        set.source(),
        set.appliesTo(),
        set.applies(),
        set.takesPart(),
        limits,
        set.formulas());
  }
}
