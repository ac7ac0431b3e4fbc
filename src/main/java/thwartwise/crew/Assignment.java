package thwartwise.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;

/**
 * A seating of named people.
 *
 * @param places for each person the number of a place, in the order of the boat file
 */
public record Assignment(List<Integer> places) {

  public Assignment {
    places = List.copyOf(places);
  }

  /**
   * Every seating of these people where there is room. Two people with the same range of masses can
   * swap places without a difference, so only the first of such seatings is listed.
   */
  static List<Assignment> of(List<NamedPerson> members, List<Place> places) {
    List<Assignment> found = new ArrayList<>();
    fill(members, places, new ArrayList<>(), found);
    return found;
  }

  private static void fill(
      List<NamedPerson> members, List<Place> places, List<Integer> sofar, List<Assignment> found) {
    if (sofar.size() == members.size()) {
      found.add(new Assignment(sofar));
      return;
    }
    for (int p = first(members, sofar); p < places.size(); p++) {
      int here = p;
      if (sofar.stream().filter(q -> q == here).count() < places.get(p).people()) {
        sofar.add(p);
        fill(members, places, sofar, found);
        sofar.remove(sofar.size() - 1);
      }
    }
  }

  /** The place of the last person before who may weigh the same. */
  private static int first(List<NamedPerson> members, List<Integer> sofar) {
    for (int i = sofar.size() - 1; i >= 0; i--) {
      if (members.get(i).isLike(members.get(sofar.size()))) {
        return sofar.get(i);
      }
    }
    return 0;
  }

  /** The same seating without one person; the others stay where they are. */
  Assignment without(int member) {
    List<Integer> left = new ArrayList<>(places);
    left.remove(member);
    return new Assignment(left);
  }

  /**
   * The bodies. At one place people sit in order of mass, the heavy ones at its starboard or aft
   * end everywhere, or at the other end, because nobody tells them which way round.
   */
  List<Body> bodies(BoatModel model, List<Double> masses, boolean heavyLast, Packing packing) {
    List<Place> all = model.boat().places();
    List<Body> bodies = new ArrayList<>();
    for (int p = 0; p < all.size(); p++) {
      int here = p;
      List<Double> side = new ArrayList<>();
      for (int i = 0; i < places.size(); i++) {
        if (places.get(i) == here) {
          side.add(masses.get(i));
        }
      }
      side.sort(heavyLast ? Comparator.naturalOrder() : Comparator.reverseOrder());
      bodies.addAll(Seating.seated(model, all.get(p), side, packing, bodies.size()));
    }
    return bodies;
  }
}
