package thwartwise.report;

import thwartwise.record.InspectionRecord;

/** The page a person prints: plain text, at most 80 columns. */
public final class TextPage {
  private TextPage() {}

  public static String of(InspectionRecord inspection) {
    throw new UnsupportedOperationException("not built yet: " + inspection);
  }
}
