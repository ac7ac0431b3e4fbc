package thwartwise.checks;

import java.util.List;
import thwartwise.crew.Refusal;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.report.CheckWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.NoteWords;
import thwartwise.report.RefusalWords;

/** What a page says of a finding, for tests that compare the words. */
public final class FindingText {
  private FindingText() {}

  public static String check(Finding finding) {
    return CheckWords.of(finding.question());
  }

  public static String check(CheckReading reading) {
    return CheckWords.of(reading.question());
  }

  public static String note(Finding finding) {
    return NoteWords.of(finding.note(), UnitFormat.METRIC);
  }

  public static String note(CheckReading reading) {
    return NoteWords.of(reading.note(), UnitFormat.METRIC);
  }

  public static List<String> refusals(List<Refusal> refusals) {
    return RefusalWords.of(refusals, UnitFormat.METRIC);
  }

  public static String condition(Finding finding) {
    return LoadCaseWords.of(finding.loadCase());
  }

  public static String condition(CheckReading reading) {
    return LoadCaseWords.of(reading.loadCase());
  }

  public static String condition(LoadedBoat trial) {
    return LoadCaseWords.of(trial.loadCase());
  }
}
