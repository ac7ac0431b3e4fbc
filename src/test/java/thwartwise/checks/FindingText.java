package thwartwise.checks;

/** What a page says of a finding, for tests that compare the words. */
public final class FindingText {
  private FindingText() {}

  public static String check(Finding finding) {
    return CheckWords.of(finding.question());
  }

  public static String check(Reading reading) {
    return CheckWords.of(reading.question());
  }
}
