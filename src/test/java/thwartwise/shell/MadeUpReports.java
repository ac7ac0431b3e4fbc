package thwartwise.shell;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.files.report.OldNames;
import thwartwise.inspection.Report;
import thwartwise.record.SampleRecords;

/** Reports with one finding each, to see what a command makes of it. */
final class MadeUpReports {
  private MadeUpReports() {}

  static Report with(Role role, Outcome outcome) {
    Finding finding =
        OldNames.finding(
            "freeboard at rest",
            role,
            outcome,
            OptionalDouble.of(0.219),
            0.20,
            true,
            Unit.METRE,
            "small-craft practice (judgement)",
            "one person of 95 kg",
            "");
    return SampleRecords.report(SampleRecords.recommendation(), List.of(finding));
  }

  static Report withheld() {
    return SampleRecords.report(
        SampleRecords.nothing(List.of(), "The boat is outside the model."), List.of());
  }
}
