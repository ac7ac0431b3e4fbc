package thwartwise.checks;

import thwartwise.loadcase.LoadedBoat;

/** What a page says of a finding, for tests that compare the words. */
public final class FindingText {
  private FindingText() {}

  public static String check(Finding finding) {
    return CheckWords.of(finding.question());
  }

  public static String check(CheckReading reading) {
    return CheckWords.of(reading.question());
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
