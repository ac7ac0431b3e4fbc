package thwartwise.crew;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Boat;
import thwartwise.boat.TrialSeen;
import thwartwise.measure.QuantityText;

/** A trial in knee-deep water that was seen to go badly holds, whatever is worked out. */
public final class FailedTrial {
  private FailedTrial() {}

  /** In words, a sentence; none where no trial went badly. */
  public static List<String> reasons(Boat boat) {
    return boat.trialSeen().filter(TrialSeen::wentBadly).map(FailedTrial::reason).stream().toList();
  }

  private static String reason(TrialSeen seen) {
    return String.format(
        Locale.ROOT,
        "in the trial in knee-deep water on %s, %s saw that full of water, with %s in it, %s, so"
            + " nothing is recommended",
        seen.date(),
        seen.by(),
        QuantityText.people(seen.people()),
        what(seen));
  }

  private static String what(TrialSeen seen) {
    if (seen.headsClear()) {
      return "it did not float level";
    }
    return seen.level()
        ? "a head did not stay clear"
        : "it did not float level and a head did not stay clear";
  }
}
