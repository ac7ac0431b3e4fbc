package thwartwise.spread;

import java.util.List;
import java.util.stream.IntStream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.crew.Seating;
import thwartwise.loadcase.LoadedBoat;

/**
 * People of stated masses in one seating, to be put aboard a boat that is not quite the same.
 *
 * @param masses in the order of the places, kg
 */
record CrewCase(Seating seating, List<Double> masses, Packing packing) {

  int people() {
    return masses.size();
  }

  /**
   * Aboard a boat, as measured, without allowance.
   *
   * @param factors how many times its mass each person has
   */
  LoadedBoat aboard(BoatModel model, List<Double> factors) {
    List<Double> weighed =
        IntStream.range(0, masses.size()).mapToObj(i -> masses.get(i) * factors.get(i)).toList();
    return LoadedBoat.of(model, seating.bodies(model, weighed, packing));
  }
}
