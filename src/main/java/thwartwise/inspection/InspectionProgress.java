package thwartwise.inspection;

import thwartwise.advice.Progress;

/** Receives the progress of an inspection, and its answer as soon as only advice is missing. */
public interface InspectionProgress extends Progress {

  /**
   * Called once, by whichever thread works.
   *
   * @param withoutAdvice the report, final in all else
   */
  void answered(Report withoutAdvice);
}
