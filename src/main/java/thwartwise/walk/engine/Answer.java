package thwartwise.walk.engine;

import java.util.Objects;

/**
 * What a person typed at one question. A list of answers is the whole state of a walk.
 *
 * @param question key of the question, such as {@code hull.station.2.point.1.z}
 * @param typed as typed; empty when the person only pressed Enter
 */
public record Answer(String question, String typed) {

  /** A draft edited by hand may lack either; the answer then fits no question. */
  public Answer {
    question = Objects.requireNonNullElse(question, "");
    typed = Objects.requireNonNullElse(typed, "");
  }
}
