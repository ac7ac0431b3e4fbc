package thwartwise.spread;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.hull.HullMeasurements;

/**
 * A boat as it may be instead of as it was measured.
 *
 * @param lifts by chamber, factors on what counts of it
 * @param people factors on the mass of each person of a crew, in its order
 */
record VariedBoat(Boat boat, Map<String, Double> lifts, List<Double> people) {

  static VariedBoat asMeasured(Boat boat, int people) {
    return new VariedBoat(boat, Map.of(), Collections.nCopies(people, 1.0));
  }

  /** A copy with another boat; an observed trial stays, because it was of the real boat. */
  VariedBoat with(UnaryOperator<Boat> change) {
    return new VariedBoat(
        change.apply(boat).withObservedTrial(boat.observedTrial()), lifts, people);
  }

  VariedBoat withHull(UnaryOperator<HullMeasurements> change) {
    return with(b -> b.withHull(change.apply(b.hull())));
  }

  VariedBoat withKit(UnaryOperator<Kit> change) {
    return with(b -> b.withKit(b.kit().stream().map(change).toList()));
  }

  VariedBoat lifting(String chamber, double factor) {
    Map<String, Double> more = new TreeMap<>(lifts);
    more.merge(chamber, factor, (a, b) -> a * b);
    return new VariedBoat(boat, more, people);
  }

  VariedBoat withPerson(int person, double factor) {
    List<Double> others = new ArrayList<>(people);
    others.set(person, factor * others.get(person));
    return new VariedBoat(boat, lifts, others);
  }

  VariedBoat withPeople(double factor) {
    return new VariedBoat(boat, lifts, people.stream().map(p -> factor * p).toList());
  }

  /** A copy with values of its measurements other than their means. */
  VariedBoat at(List<SpreadInput> inputs, double[] values) {
    VariedBoat varied = this;
    for (int i = 0; i < values.length; i++) {
      SpreadInput input = inputs.get(i);
      if (values[i] != input.distribution().mean()) {
        varied = input.variation().of(varied, values[i]);
      }
    }
    return varied;
  }

  /**
   * Its solids; those of the boat as measured where only people or chambers differ.
   *
   * @throws thwartwise.hull.UnusableBoat when the measurements contradict each other
   */
  BoatModel model(Boat measured, BoatModel measuredModel) {
    BoatModel model = boat.equals(measured) ? measuredModel : measuredModel.remeasured(boat);
    for (Map.Entry<String, Double> lift : lifts.entrySet()) {
      model = model.withLiftOf(lift.getKey(), lift.getValue());
    }
    return model;
  }
}
