package thwartwise.benchmark;

import thwartwise.advice.Progress;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Report;

/** The demo boat from its file to what is told of it. */
final class DemoInspected {
  private DemoInspected() {}

  static Report withAdvice() {
    return Inspection.of(SampleBoat.boat(), RuleSetFile.bundledRuleBook(), SampleBoat.TODAY);
  }

  static Report withoutAdvice() {
    return Inspection.withoutAdvice(
        SampleBoat.boat(), RuleSetFile.bundledRuleBook(), SampleBoat.TODAY);
  }

  /** With the spread of every finding, and without advice. */
  static Report judged() {
    return Inspection.judgedWithoutAdvice(
            SampleBoat.boat(),
            RuleSetFile.bundledRuleBook(),
            RuleSetFile.measuringSpreads(),
            SampleBoat.TODAY,
            Progress.UNHEARD)
        .report();
  }
}
