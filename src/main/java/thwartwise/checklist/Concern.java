package thwartwise.checklist;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Cleat;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Propulsion;

/** What a boat must have for a point to concern it, and what that is called there. */
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
  CLEATS("cleats", boat -> boat.cleats().stream().map(Cleat::name)),
  SOLAR_PANELS("solar panels", boat -> solar(boat).map(Kit::name)),
  UNPROVEN_CHAMBERS("chambers not proven tight", boat -> unproven(boat).map(Chamber::name)),
  FASTENED_KIT("kit said to be fastened", boat -> fastened(boat).map(Kit::name)),
  ROAD("a trailer or roof rack", boat -> boat.roadLimit().stream().map(kg -> Concern.UNNAMED)),
  PEOPLE("people named aboard", boat -> boat.aboard().stream().map(Person::name));

  /** Something that is aboard but has no name in a boat file. */
  private static final String UNNAMED = "";

  private final String word;
  private final Function<Boat, Stream<String>> things;

  Concern(String word, Function<Boat, Stream<String>> things) {
    this.word = word;
    this.things = things;
  }

  /** The word for it in a checklist. */
  public String word() {
    return word;
  }

  /** Whether a point that concerns these can set a fact about such things. */
  public boolean names(BoatFact.Thing about) {
    return switch (about) {
      case CHAMBER -> this == AIR || this == HATCHES || this == UNPROVEN_CHAMBERS;
      case FOAM -> this == FOAM;
      case KIT -> this == KIT || this == FASTENED_KIT || this == BATTERIES || this == SOLAR_PANELS;
      case CLOSED_HOLE -> this == CLOSED_HOLES;
      case BATTERY -> this == BATTERIES;
    };
  }

  /** The concerns that name such things, in words. */
  public static String naming(BoatFact.Thing about) {
    return Stream.of(values())
        .filter(concern -> concern.names(about))
        .map(Concern::word)
        .collect(Collectors.joining(" or "));
  }

  boolean isOf(Boat boat) {
    return things.apply(boat).findAny().isPresent();
  }

  /** The names of the things, as far as the boat file names them. */
  List<String> names(Boat boat) {
    return things.apply(boat).filter(name -> !name.equals(UNNAMED)).distinct().toList();
  }

  private static Stream<String> motor(Boat boat) {
    boolean driven =
        boat.propulsion() instanceof Propulsion.Outboard || boat.electrics().motor().isPresent();
    return driven || boat.kit().stream().anyMatch(Kit::isMotor) ? Stream.of(UNNAMED) : Stream.of();
  }

  private static Stream<Opening> closedHoles(Boat boat) {
    return boat.openings().stream().filter(o -> o.closedBy().isPresent() && o.into().isEmpty());
  }

  private static Stream<Opening> hatches(Boat boat) {
    return boat.openings().stream().filter(Opening::isHatch);
  }

  private static Stream<Chamber> air(Boat boat) {
    return boat.chambers().stream().filter(c -> c.filling() instanceof Filling.Air);
  }

  private static Stream<Chamber> unproven(Boat boat) {
    return air(boat).filter(c -> c.parts().stream().anyMatch(Concern::isUnproven));
  }

  private static boolean isUnproven(ChamberPart part) {
    return part.filling() instanceof Filling.Air air && air.seal() != Seal.PROVEN;
  }

  private static Stream<Kit> solar(Boat boat) {
    List<String> stated = boat.electrics().panel().flatMap(p -> p.kit()).stream().toList();
    return boat.kit().stream().filter(k -> k.isSolarPanel() || stated.contains(k.name()));
  }

  private static Stream<Kit> fastened(Boat boat) {
    return boat.kit().stream().filter(Kit::fastened);
  }

  private static Stream<Chamber> foam(Boat boat) {
    return boat.chambers().stream().filter(c -> c.filling() instanceof Filling.Foam);
  }

  private static Stream<Kit> vented(Boat boat) {
    return boat.kit().stream().filter(kit -> kit.needsVenting(boat.electrics()));
  }

  private static Stream<Kit> petrol(Boat boat) {
    return boat.kit().stream().filter(Kit::holdsPetrol);
  }
}
