package thwartwise.proof;

import java.util.List;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;

/**
 * One state of the boat afloat in which readings were taken: empty, with known people seated, or
 * with a known weight moved across.
 *
 * @param people seated, with known masses
 * @param weights besides people and kit
 */
public record FloatedCondition(
    List<Body> people, List<Loading.Weight> weights, List<ProofReading> readings) {

  public FloatedCondition {
    people = List.copyOf(people);
    weights = List.copyOf(weights);
    readings = List.copyOf(readings);
  }
}
