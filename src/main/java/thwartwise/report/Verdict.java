package thwartwise.report;

import thwartwise.inspection.Report;

/** The result of the whole inspection. It never says that nothing can happen. */
public enum Verdict {
  HELD("Launch held"),
  AFTER_WORK("Launch only after the work listed here is done"),
  NOTHING_AGAINST("Nothing found against it within the limits of this inspection");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  public static Verdict of(Report report) {
    boolean nobodyFits =
        report.recommendation().people() < 1 && report.recommendation().crewLimits().isEmpty();
    if (report.recommendation().withheld() || nobodyFits) {
      return HELD;
    }
    return report.isUnrestricted() ? NOTHING_AGAINST : AFTER_WORK;
  }
}
