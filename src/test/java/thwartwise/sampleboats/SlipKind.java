package thwartwise.sampleboats;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.boat.Boat;

/**
 * One usual slip of tape, scales or pencil.
 *
 * @param made every way it can be made with a sound boat; none where the boat gives no occasion
 * @param mayRaise why nothing in the measurements can show it, where that is so
 */
record SlipKind(String name, Function<Boat, List<SlippedBoat>> made, Optional<String> mayRaise) {

  static SlipKind of(String name, Function<Boat, List<SlippedBoat>> made) {
    return new SlipKind(name, made, Optional.empty());
  }

  /** A slip after which the description is that of another boat as likely as this one. */
  SlipKind unseen(String because) {
    return new SlipKind(name, made, Optional.of(because));
  }
}
