package thwartwise.crew;

import java.util.List;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** Our own rules with a set that wants people held up for another time. */
public final class HeldUpFor {
  private HeldUpFor() {}

  public static RuleBook minutes(int minutes) {
    RuleSet own = RuleSetFile.cautiousDefault();
    RuleSet set =
        RuleSetFile.alternative(
            """
            { "format": "thwartwise/rules/1", "name": "lake", "edition": "1", "appliesTo": "all",
              "limits": { "swamped-minutes": { "value": %d, "unit": "min", "basis": "judgement",
                "source": "few pass by" } } }
            """
                .formatted(minutes),
            "lake",
            own);
    return new RuleBook(own, List.of(set));
  }
}
