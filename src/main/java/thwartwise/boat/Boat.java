package thwartwise.boat;

import java.util.List;
import java.util.Optional;

/**
 * The whole boat file as it was measured.
 *
 * @param cleats where a line can be made fast
 * @param bailer what the bailer or bucket aboard holds, m³
 * @param waters where it will be used
 * @param measuredBy who held the tape
 * @param assumptions what was taken for granted because nobody measured it, in words
 */
public record Boat(
    String name,
    Water water,
    HullMeasurements hull,
    List<Opening> openings,
    List<Chamber> chambers,
    List<Place> places,
    List<Kit> kit,
    List<Person> aboard,
    Propulsion propulsion,
    List<Cleat> cleats,
    Optional<Double> bailer,
    Waters waters,
    Optional<String> measuredBy,
    List<String> assumptions) {

  public Boat {
    openings = List.copyOf(openings);
    chambers = List.copyOf(chambers);
    places = List.copyOf(places);
    kit = List.copyOf(kit);
    aboard = List.copyOf(aboard);
    cleats = List.copyOf(cleats);
    assumptions = List.copyOf(assumptions);
  }

  /** A boat of which neither cleats, nor a bailer, nor its waters were named. */
  public Boat(
      String name,
      Water water,
      HullMeasurements hull,
      List<Opening> openings,
      List<Chamber> chambers,
      List<Place> places,
      List<Kit> kit,
      List<Person> aboard,
      Propulsion propulsion,
      Optional<String> measuredBy,
      List<String> assumptions) {
    this(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        measuredBy,
        assumptions);
  }

  /** The same boat somewhere else. */
  public Boat on(Waters others) {
    return new Boat(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        others,
        measuredBy,
        assumptions);
  }

  public Boat withOpenings(List<Opening> others) {
    return with(others, chambers, places, kit, aboard);
  }

  public Boat withChambers(List<Chamber> others) {
    return with(openings, others, places, kit, aboard);
  }

  public Boat withPlaces(List<Place> others) {
    return with(openings, chambers, others, kit, aboard);
  }

  public Boat withKit(List<Kit> others) {
    return with(openings, chambers, places, others, aboard);
  }

  /** The same, its bare hull weighed again. */
  public Boat withHullMass(double mass) {
    return new Boat(
        name,
        water,
        hull.weighing(mass),
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions);
  }

  /** The same with more that was taken for granted. */
  public Boat assuming(List<String> more) {
    List<String> all = new java.util.ArrayList<>(assumptions);
    all.addAll(more);
    return new Boat(
        name,
        water,
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        all);
  }

  public Boat withAboard(List<Person> others) {
    return with(openings, chambers, places, kit, others);
  }

  private Boat with(
      List<Opening> newOpenings,
      List<Chamber> newChambers,
      List<Place> newPlaces,
      List<Kit> newKit,
      List<Person> newAboard) {
    return new Boat(
        name,
        water,
        hull,
        newOpenings,
        newChambers,
        newPlaces,
        newKit,
        newAboard,
        propulsion,
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions);
  }

  public double kitMass() {
    return kit.stream().mapToDouble(Kit::mass).sum();
  }
}
