package thwartwise.crew;

import java.util.Optional;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;

/**
 * The number of seatings, heavy and light people distinguished, counted without listing them. Every
 * seating is tried; where there are too many, no more people are considered.
 *
 * @param room the number of places
 * @param tried the number of people whose seatings are all tried
 * @param tooMany the seatings of one more person; zero when nothing was left out
 */
public record SeatingCount(int room, int tried, double tooMany) {
  /** The greatest number of seatings; several minutes of work (judgement). */
  private static final double MOST = 2000;

  /** The greatest number of seatings of people who are all distinguished. */
  private static final double MOST_NAMED = 50_000;

  public static SeatingCount of(BoatModel model) {
    double[] ways = {1};
    for (Place place : model.boat().places()) {
      ways = with(ways, place.people(), SeatingCount::heavyOnes);
    }
    int room = model.boat().places().stream().mapToInt(Place::people).sum();
    int orders = model.isSymmetric() ? 1 : 2;
    int factor = orders * Packing.of(model.boat().places()).size();
    for (int n = 1; n <= room; n++) {
      if (!(factor * ways[n] <= MOST)) {
        return new SeatingCount(room, n - 1, factor * ways[n]);
      }
    }
    return new SeatingCount(room, room, 0);
  }

  /** Empty unless there are too many seatings of so many named people. */
  static Optional<LimitingFactor> tooMany(BoatModel model, int people) {
    double[] ways = {1};
    for (Place place : model.boat().places()) {
      ways = with(ways, place.people(), n -> 1 / factorial(n));
    }
    int seated = Math.min(people, ways.length - 1);
    double all = ways[seated] * factorial(seated);
    return all > MOST_NAMED
        ? Optional.of(new LimitingFactor.TooManyWays(all, people))
        : Optional.empty();
  }

  /** Why people who have a place were not considered; empty when all were. */
  public Optional<LimitingFactor> leftOut() {
    return tooMany > 0
        ? Optional.of(new LimitingFactor.TooManyWays(tooMany, tried + 1))
        : Optional.empty();
  }

  private interface Alike {
    double ways(int here);
  }

  /** People alike at one place: only the number of heavy ones makes a difference. */
  private static double heavyOnes(int here) {
    return here + 1;
  }

  private static double factorial(int n) {
    double product = 1;
    for (int i = 2; i <= n; i++) {
      product *= i;
    }
    return product;
  }

  /** Adds one place, as two power series are multiplied. */
  private static double[] with(double[] ways, int takes, Alike alike) {
    double[] more = new double[ways.length + takes];
    for (int n = 0; n < ways.length; n++) {
      for (int here = 0; here <= takes; here++) {
        more[n + here] += ways[n] * alike.ways(here);
      }
    }
    return more;
  }
}
