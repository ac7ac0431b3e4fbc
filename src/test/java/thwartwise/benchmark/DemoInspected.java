package thwartwise.benchmark;

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
}
