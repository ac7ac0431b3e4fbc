package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;

/** The result of a typed line. If it changed the answers, the new ones are in it. */
public sealed interface Reply {

  /**
   * @param understood the answer repeated in the unit it was understood in
   */
  record Accepted(List<Answer> answers, String understood) implements Reply {}

  /**
   * @param reason one line; the same question stands
   * @param meant what was probably meant; typed for a person who says yes
   * @param insisted the same answer with its confirmation; typed for a person who says keep
   */
  record Refused(String reason, Optional<String> meant, Optional<String> insisted)
      implements Reply {
    public Refused(String reason) {
      this(reason, Optional.empty(), Optional.empty());
    }
  }

  /**
   * Many answers at once, to be looked at before they are stored.
   *
   * @param shown what was understood, line by line
   */
  record Proposed(List<Answer> answers, List<String> shown) implements Reply {}

  /**
   * @param note the question that is open again, and its earlier answer
   */
  record WentBack(List<Answer> answers, String note) implements Reply {}

  /**
   * @param text the answers so far, numbered, one to a line
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
