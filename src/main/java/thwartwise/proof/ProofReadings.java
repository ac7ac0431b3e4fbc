package thwartwise.proof;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.HeelMeasurement;
import thwartwise.boat.AfloatProof.MovedWeight;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.AfloatProof.WeightToSide;
import thwartwise.boat.Boat;
import thwartwise.boat.Body;
import thwartwise.boat.Loading.Weight;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.ReadingLabel;
import thwartwise.boat.ReadingLabel.FloatedState;
import thwartwise.boat.ReadingLabel.ReadingPoint;
import thwartwise.boat.Side;
import thwartwise.geometry.Vector3;
import thwartwise.proof.ProofReading.FreeboardReading;
import thwartwise.proof.ProofReading.HeelReading;
import thwartwise.rules.RuleSet;

/**
 * The readings of a proof, state by state.
 *
 * @param labels of all readings, in the order of the conditions
 */
record ProofReadings(List<FloatedCondition> conditions, List<ReadingLabel> labels) {

  ProofReadings {
    conditions = List.copyOf(conditions);
    labels = List.copyOf(labels);
  }

  /**
   * @param spreads how far a reading may be off, by how it was taken
   */
  static ProofReadings of(Boat boat, AfloatProof proof, RuleSet spreads) {
    Collected all = new Collected(boat, spreads, new ArrayList<>(), new ArrayList<>());
    proof.empty().ifPresent(rails -> all.around(FloatedState.EMPTY, List.of(), rails));
    proof
        .seated()
        .ifPresent(rails -> all.around(FloatedState.SEATED, bodies(boat, proof.people()), rails));
    proof.moved().ifPresent(all::moved);
    return new ProofReadings(all.conditions(), all.labels());
  }

  private static List<Body> bodies(Boat boat, List<Person> people) {
    return people.stream().map(person -> body(boat, person)).toList();
  }

  private static Body body(Boat boat, Person person) {
    Place place =
        boat.places().stream()
            .filter(p -> p.name().equals(person.place()))
            .findFirst()
            .orElseThrow();
    Vector3 spot = Vector3.of(person.x().orElse(place.x()), person.y(), place.z());
    return Body.at(person.name(), person.mass(), place, spot, boat.hull().floor());
  }

  private record Collected(
      Boat boat, RuleSet spreads, List<FloatedCondition> conditions, List<ReadingLabel> labels) {

    void around(FloatedState state, List<Body> people, RailHeights rails) {
      double spread = spreads.value("rail-above-water");
      int last = boat.hull().stations().size() - 1;
      labels.add(new ReadingLabel(state, ReadingPoint.BOW));
      labels.add(new ReadingLabel(state, ReadingPoint.STERN));
      List<ProofReading> readings = new ArrayList<>();
      readings.add(new FreeboardReading(last, Side.PORT, rails.bow(), spread));
      readings.add(new FreeboardReading(0, Side.PORT, rails.stern(), spread));
      readings.addAll(amidships(state, rails.port(), rails.starboard()));
      conditions.add(new FloatedCondition(people, List.of(), readings));
    }

    void moved(MovedWeight moved) {
      toSide(FloatedState.WEIGHT_TO_PORT, moved, moved.toPort(), 1);
      toSide(FloatedState.WEIGHT_TO_STARBOARD, moved, moved.toStarboard(), -1);
    }

    private void toSide(FloatedState state, MovedWeight moved, WeightToSide there, int side) {
      Vector3 at = Vector3.of(moved.along(), side * there.out(), moved.height());
      conditions.add(
          new FloatedCondition(
              List.of(), List.of(new Weight(moved.mass(), at)), heel(state, there.heel(), -side)));
    }

    /** Starboard down is positive. */
    private List<ProofReading> heel(FloatedState state, HeelMeasurement heel, int sign) {
      if (heel instanceof HeelMeasurement.ByRails rails) {
        return amidships(state, rails.port(), rails.starboard());
      }
      labels.add(new ReadingLabel(state, ReadingPoint.HEEL));
      if (heel instanceof HeelMeasurement.ByPendulum pendulum) {
        return List.of(
            HeelReading.ofPendulum(
                pendulum.length(), sign * pendulum.swing(), spreads.value("rail-above-water")));
      }
      HeelMeasurement.ByLevel level = (HeelMeasurement.ByLevel) heel;
      return List.of(
          new HeelReading(sign * level.angle(), Math.toRadians(spreads.value("level-read"))));
    }

    private List<ProofReading> amidships(FloatedState state, double port, double starboard) {
      double spread = spreads.value("rail-above-water");
      int station = AfloatProof.amidships(boat.hull());
      labels.add(new ReadingLabel(state, ReadingPoint.PORT));
      labels.add(new ReadingLabel(state, ReadingPoint.STARBOARD));
      return List.of(
          new FreeboardReading(station, Side.PORT, port, spread),
          new FreeboardReading(station, Side.STARBOARD, starboard, spread));
    }
  }
}
