package thwartwise.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;

/**
 * Who sits where.
 *
 * @param places for each member the number of a place, in the order of the boat file
 */
public record Assignment(List<Integer> places) {

  public Assignment {
    places = List.copyOf(places);
  }

  /**
   * Every way these can sit where there is room. Two who may weigh the same can swap places without
   * a difference, so of such ways only the first is named.
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

  /** The place of the last one before who may weigh the same. */
  private static int first(List<NamedPerson> members, List<Integer> sofar) {
    for (int i = sofar.size() - 1; i >= 0; i--) {
      if (members.get(i).isLike(members.get(sofar.size()))) {
        return sofar.get(i);
      }
    }
    return 0;
  }

  /** The same without one of them, everybody else where they are. */
  Assignment without(int member) {
    List<Integer> left = new ArrayList<>(places);
    left.remove(member);
    return new Assignment(left);
  }

  /**
   * The people themselves. At one place they sit in order of weight, the heavy ones at its
   * starboard or aft end everywhere, or at the other: nobody tells them which way round.
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
