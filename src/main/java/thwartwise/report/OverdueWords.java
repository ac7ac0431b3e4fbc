package thwartwise.report;

import java.util.List;
import thwartwise.record.OverdueItem;

/** What is due again for a boat, in words. */
public final class OverdueWords {
  private OverdueWords() {}

  static List<String> of(List<OverdueItem> items) {
    return items.stream().map(OverdueWords::of).toList();
  }

  public static String of(OverdueItem item) {
    if (item instanceof OverdueItem.LeakTest test) {
      return "leak test of " + test.chamber() + " of " + test.last();
    }
    if (item instanceof OverdueItem.Trial trial) {
      return "trial in knee-deep water of " + trial.last();
    }
    if (item instanceof OverdueItem.FirstInspection) {
      return "never inspected";
    }
    if (item instanceof OverdueItem.Inspection) {
      return "last inspection over twelve months ago";
    }
    return item instanceof OverdueItem.ChangedFile
        ? "boat file changed since the last record"
        : "its records were changed, added to or lost (\"records check\")";
  }
}
