package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;

/** What became of a typed line. The answers to keep from now on come with it when they changed. */
public sealed interface Reply {

  /**
   * @param understood the answer repeated in the unit it was understood in
   */
  record Accepted(List<Answer> answers, String understood) implements Reply {}

  /**
   * @param reason one line; the same question stands
   * @param meant what was probably meant, to be typed for the person who says yes
   * @param insisted the same answer, to be typed for the person who says keep
   */
  record Refused(String reason, Optional<String> meant, Optional<String> insisted)
      implements Reply {
    public Refused(String reason) {
      this(reason, Optional.empty(), Optional.empty());
    }
  }

  /**
   * Many answers at once, to be looked at before they are kept.
   *
   * @param shown what was understood, line by line
   */
  record Proposed(List<Answer> answers, List<String> shown) implements Reply {}

  /**
   * @param note which question is open again, and what had been typed there
   */
  record WentBack(List<Answer> answers, String note) implements Reply {}

  /**
   * @param text the answers so far, numbered, one a line
   */
  record Listed(String text) implements Reply {}

  /**
   * @param text how and why, several lines
   */
  record Explained(String text) implements Reply {}

  /**
   * @param text that nothing is lost; the caller adds how to resume
   */
  record Stopped(String text) implements Reply {}
}
