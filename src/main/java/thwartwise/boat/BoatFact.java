package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import thwartwise.boat.Filling.Seal;

/**
 * What a fault at a point of a checklist means for the boat. Every one takes something from the
 * boat: air that held is lost, kit and foam come loose, a bung counts as lost, a battery counts as
 * made to start an engine.
 */
public enum BoatFact {
  CHAMBER_OPEN("chamber open", Thing.CHAMBER),
  CHAMBER_LEAKS("chamber leaks", Thing.CHAMBER),
  SEAL_CLAIMED("seal claimed", Thing.CHAMBER),
  FOAM_LOOSE("foam loose", Thing.FOAM),
  KIT_LOOSE("kit loose", Thing.KIT),
  BUNG_LOST("bung lost", Thing.CLOSED_HOLE),
  STARTER_BATTERY("starter battery", Thing.BATTERY);

  /** The kinds of thing that a fact can be about. */
  public enum Thing {
    CHAMBER,
    FOAM,
    KIT,
    CLOSED_HOLE,
    BATTERY
  }

  private final String word;
  private final Thing about;

  BoatFact(String word, Thing about) {
    this.word = word;
    this.about = about;
  }

  /** The word in a checklist and in a boat file. */
  public String word() {
    return word;
  }

  public Thing about() {
    return about;
  }

  /**
   * The boat with this fact about the thing of that name; the same boat where there is none. A lost
   * bung does not change the boat but a check ({@link #bungsLost(Boat)}).
   */
  Boat in(Boat boat, String thing) {
    return switch (this) {
      case CHAMBER_OPEN, CHAMBER_LEAKS -> withAir(boat, thing, air -> emptied());
      case SEAL_CLAIMED -> withAir(boat, thing, BoatFact::claimed);
      case FOAM_LOOSE ->
          boat.withChambers(
              boat.chambers().stream().map(c -> c.name().equals(thing) ? loose(c) : c).toList());
      case KIT_LOOSE ->
          boat.withKit(
                  boat.kit().stream().map(k -> k.name().equals(thing) ? k.loose() : k).toList())
              .withElectrics(boat.electrics().unstrapped(thing));
      case BUNG_LOST -> boat;
      case STARTER_BATTERY -> boat.withElectrics(boat.electrics().startingEngines(thing));
    };
  }

  /** The holes whose bung was found untied; they count as open. */
  public static List<String> bungsLost(Boat boat) {
    return boat.pointAnswers().stream()
        .filter(a -> a.sets(BUNG_LOST))
        .map(PointAnswer::item)
        .toList();
  }

  /** Whether this fact was found for the thing of that name. */
  public boolean isFound(Boat boat, String thing) {
    return boat.pointAnswers().stream().anyMatch(a -> a.sets(this) && a.item().equals(thing));
  }

  // The chamber behind a hatch or pocket, which may be named instead of it.
  private static Boat withAir(Boat boat, String thing, UnaryOperator<Filling.Air> change) {
    Optional<String> into =
        boat.openings().stream()
            .filter(o -> o.name().equals(thing))
            .flatMap(o -> o.into().stream())
            .findFirst();
    String meant = into.orElse(thing);
    return boat.withChambers(
        boat.chambers().stream().map(c -> isMeant(c, meant) ? changed(c, change) : c).toList());
  }

  private static boolean isMeant(Chamber chamber, String name) {
    return chamber.parts().stream().anyMatch(part -> part.isNamedBy(name));
  }

  private static Chamber changed(Chamber chamber, UnaryOperator<Filling.Air> change) {
    Chamber changed = chamber;
    for (ChamberPart part : chamber.parts()) {
      if (part.filling() instanceof Filling.Air air) {
        changed = changed.filledWith(part, change.apply(air));
      }
    }
    return changed;
  }

  private static Filling.Air emptied() {
    return new Filling.Air(Seal.OPEN, Optional.empty());
  }

  /** The seal as claimed only; an open one does not improve by it. */
  private static Filling.Air claimed(Filling.Air air) {
    return air.seal() == Seal.OPEN ? air : new Filling.Air(Seal.CLAIMED, Optional.empty());
  }

  private static Chamber loose(Chamber chamber) {
    Chamber changed = chamber;
    for (ChamberPart part : chamber.parts()) {
      if (part.filling() instanceof Filling.Foam foam) {
        changed = changed.filledWith(part, new Filling.Foam(foam.closedCell(), false));
      }
    }
    return changed;
  }
}
