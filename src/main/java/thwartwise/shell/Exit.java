package thwartwise.shell;

import org.springframework.shell.core.command.ExitStatus;
import thwartwise.inspection.Report;

/** The exit code of a one-shot command. */
enum Exit {
  /** It ran, and nothing that limits the crew falls short. */
  NOTHING_HOLDS_BACK(0),

  /**
   * The inspection ran; a check that limits the crew falls short, is borderline or not assessed.
   */
  HOLDS_BACK(1),

  /** The input cannot be used, or there was nothing to inspect yet. */
  UNUSABLE_INPUT(2);

  private final int code;

  Exit(int code) {
    this.code = code;
  }

  static Exit of(Report report) {
    return report.isUnrestricted() ? NOTHING_HOLDS_BACK : HOLDS_BACK;
  }

  int code() {
    return code;
  }

  ExitStatus status() {
    return new ExitStatus(code, name());
  }
}
