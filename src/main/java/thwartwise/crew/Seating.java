package thwartwise.crew;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Crew;

/**
 * The number of people at each place of a boat.
 *
 * @param counts one for each place, in the order of the boat file
 */
public record Seating(List<Integer> counts) {

  public Seating {
    counts = List.copyOf(counts);
  }

  /** Every seating of a number of people where there is room for them. */
  public static List<Seating> of(int people, List<Place> places) {
    List<Seating> found = new ArrayList<>();
    fill(people, places, new int[places.size()], 0, found);
    return found;
  }

  private static void fill(
      int left, List<Place> places, int[] counts, int place, List<Seating> found) {
    if (place == places.size()) {
      if (left == 0) {
        found.add(new Seating(Arrays.stream(counts).boxed().toList()));
      }
      return;
    }
    for (int n = Math.min(left, places.get(place).people()); n >= 0; n--) {
      counts[place] = n;
      fill(left - n, places, counts, place + 1, found);
    }
    counts[place] = 0;
  }

  public int people() {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }

  /** The place of each person. */
  public List<String> places(BoatModel model) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      for (int n = 0; n < counts.get(i); n++) {
        names.add(model.boat().places().get(i).name());
      }
    }
    return names;
  }

  /** The people, each of one mass. */
  public Crew crew(BoatModel model, double each, Packing packing) {
    return people() == 0
        ? new Crew.Nobody()
        : new Crew.Alike(people(), each, places(model), packing);
  }

  /** Every packing of the people along the length of their places. */
  List<List<Body>> ways(BoatModel model, List<Double> masses) {
    return packings(model.boat().places()).stream()
        .map(packing -> bodies(model, masses, packing))
        .distinct()
        .toList();
  }

  /** The packings of the places where somebody sits. */
  public List<Packing> packings(List<Place> places) {
    List<Place> taken =
        IntStream.range(0, counts.size())
            .filter(i -> counts.get(i) > 0)
            .mapToObj(places::get)
            .toList();
    return Packing.of(taken);
  }

  /** The bodies, evenly spread, with these masses in order of places. */
  public List<Body> bodies(BoatModel model, List<Double> masses) {
    return bodies(model, masses, Packing.SPREAD);
  }

  public List<Body> bodies(BoatModel model, List<Double> masses, Packing packing) {
    List<Body> bodies = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      int from = bodies.size();
      List<Double> here = masses.subList(from, from + counts.get(i));
      bodies.addAll(seated(model, model.boat().places().get(i), here, packing, from));
    }
    return bodies;
  }

  /** The people at one place, from aft to fore and from starboard to port. */
  static List<Body> seated(
      BoatModel model, Place place, List<Double> masses, Packing packing, int before) {
    List<Body> bodies = new ArrayList<>();
    double floor = model.boat().hull().floor();
    List<Vector3> spots = SeatPositions.of(place, masses.size(), packing);
    for (int n = 0; n < spots.size(); n++) {
      String name = "person " + (before + n + 1) + " (" + place.name() + ")";
      bodies.add(Body.at(name, masses.get(n), place, spots.get(n), floor));
    }
    return bodies;
  }
}
