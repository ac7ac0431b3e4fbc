package thwartwise.walk.engine;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.walk.engine.WalkSection.WalkPosition;

/** The next thing that a walk needs: an answer, or nothing more. */
public sealed interface Step {

  /**
   * @param position of the question, in a walk that has sections
   * @param note what to print first: a stored answer that does not fit
   */
  record Ask(Question question, Optional<String> note, Optional<WalkPosition> position)
      implements Step {}

  /**
   * @param note what to print first: stored answers that no question asked for
   */
  record Done(Boat boat, Optional<String> note) implements Step {}
}
