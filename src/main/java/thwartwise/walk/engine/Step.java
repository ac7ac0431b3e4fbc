package thwartwise.walk.engine;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.walk.engine.WalkSection.WalkPosition;

/** Where a walk stands. */
public sealed interface Step {

  /**
   * @param position in which section, of a walk that has any
   * @param note what must be said first: an answer kept from before that does not fit
   */
  record Ask(Question question, Optional<String> note, Optional<WalkPosition> position)
      implements Step {}

  /**
   * @param note what must be said first: answers kept from before that no question asked for
   */
  record Done(Boat boat, Optional<String> note) implements Step {}
}
