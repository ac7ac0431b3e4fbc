package thwartwise.checklist;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Cleat;
import thwartwise.boat.Filling;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Propulsion;

/**
 * One thing to look at, by hand and eye.
 *
 * @param look what must be so, in words
 * @param why what goes wrong otherwise
 * @param concerns which boats it is asked of
 */
public record ChecklistPoint(String look, String why, Concern concerns) {

  boolean isAskedOf(Boat boat) {
    return concerns.isOf(boat);
  }

  /** What must be so on this boat, with the names of the things meant. */
  public String of(Boat boat) {
    String names = String.join(", ", concerns.names(boat));
    return names.isEmpty() ? look : look + " (" + names + ")";
  }

  /** What a boat must have for a point to be asked of it, and what that is called there. */
  public enum Concern {
    ANY_BOAT("any boat", boat -> Stream.of(Concern.UNNAMED)),
    CLOSED_HOLES("holes that something closes", boat -> closedHoles(boat).map(Opening::name)),
    HATCHES("hatches into chambers", boat -> hatches(boat).map(Opening::name)),
    AIR("air chambers", boat -> air(boat).map(Chamber::name)),
    FOAM("foam", boat -> foam(boat).map(Chamber::name)),
    KIT("kit", boat -> boat.kit().stream().map(Kit::name)),
    BATTERIES("batteries and chargers", boat -> vented(boat).map(Kit::name)),
    PETROL("petrol", boat -> petrol(boat).map(Kit::name)),
    MOTOR("a motor", Concern::motor),
    CLEATS("cleats", boat -> boat.cleats().stream().map(Cleat::name));

    /** Of something that is there and has no name in a boat file. */
    private static final String UNNAMED = "";

    private final String word;
    private final Function<Boat, Stream<String>> things;

    Concern(String word, Function<Boat, Stream<String>> things) {
      this.word = word;
      this.things = things;
    }

    /** As it is written in a checklist. */
    public String word() {
      return word;
    }

    boolean isOf(Boat boat) {
      return things.apply(boat).findAny().isPresent();
    }

    /** The things themselves, as far as the boat file names them. */
    List<String> names(Boat boat) {
      return things.apply(boat).filter(name -> !name.equals(UNNAMED)).distinct().toList();
    }

    private static Stream<String> motor(Boat boat) {
      boolean driven = boat.propulsion() instanceof Propulsion.Outboard;
      return driven || boat.kit().stream().anyMatch(Kit::isMotor)
          ? Stream.of(UNNAMED)
          : Stream.of();
    }

    private static Stream<Opening> closedHoles(Boat boat) {
      return boat.openings().stream().filter(o -> o.closedBy().isPresent() && o.into().isEmpty());
    }

    private static Stream<Opening> hatches(Boat boat) {
      return boat.openings().stream().filter(o -> o.into().isPresent());
    }

    private static Stream<Chamber> air(Boat boat) {
      return boat.chambers().stream().filter(c -> c.filling() instanceof Filling.Air);
    }

    private static Stream<Chamber> foam(Boat boat) {
      return boat.chambers().stream().filter(c -> c.filling() instanceof Filling.Foam);
    }

    private static Stream<Kit> vented(Boat boat) {
      return boat.kit().stream().filter(Kit::needsVenting);
    }

    private static Stream<Kit> petrol(Boat boat) {
      return boat.kit().stream().filter(Kit::holdsPetrol);
    }
  }
}
