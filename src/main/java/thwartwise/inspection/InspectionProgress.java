package thwartwise.inspection;

import thwartwise.advice.Progress;

/** Hears how far an inspection is, and its answer as soon as nothing but advice is wanting. */
public interface InspectionProgress extends Progress {

  /**
   * Called once, by whichever thread works.
   *
   * @param withoutAdvice the report, final in all else
   */
  void answered(Report withoutAdvice);
}
