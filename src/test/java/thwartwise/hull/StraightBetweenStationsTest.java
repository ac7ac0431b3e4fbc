package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Space;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * Chambers of hulls whose volume has a closed form, the hulls measured at few stations.
 * Half-breadth is B f(|x| / a) at x from amidships, from the bottom to the rail; the ends are
 * raked, so that the half-length is a = a0 + k z. Derived: with F the integral of f from s to 1, a
 * chamber forward of u holds 2 B times the integral over z of a F(u / a).
 */
class StraightBetweenStationsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final double BREADTH = 0.6;
  private static final double DEPTH = 0.4;
  private static final double HALF = 1.6;
  private static final double RAKE = 0.5;
  private static final int LEVELS = 24;

  /** What flat triangles make of a panel that twists toward a raked end. */
  private static final double TWIST = 0.002;

  /** Ends as a wedge: the integral over z of a/2 - u + u2/(2a). */
  private static double wedge(double u) {
    double high = HALF + RAKE * DEPTH;
    return 2
        * BREADTH
        * ((HALF + RAKE * DEPTH / 2) * DEPTH / 2
            - u * DEPTH
            + u * u / (2 * RAKE) * Math.log(high / HALF));
  }

  /** Parabolas: the integral over z of 2a/3 - u + u3/(3 a2). */
  private static double parabola(double u) {
    double high = HALF + RAKE * DEPTH;
    return 2
        * BREADTH
        * (2 * (HALF + RAKE * DEPTH / 2) * DEPTH / 3
            - u * DEPTH
            + u * u * u / (3 * RAKE) * (1 / HALF - 1 / high));
  }

  private static List<Station> stations(DoubleUnaryOperator f, double... between) {
    List<Station> stations = new ArrayList<>();
    stations.add(station(-1, z -> -(HALF + RAKE * z), f));
    for (double x : between) {
      stations.add(station(x, z -> x, f));
    }
    stations.add(station(1, z -> HALF + RAKE * z, f));
    return stations;
  }

  private static Station station(double at, DoubleUnaryOperator x, DoubleUnaryOperator f) {
    List<Vector3> points = new ArrayList<>(List.of(Vector3.of(x.applyAsDouble(0), 0, 0)));
    for (int i = 0; i <= LEVELS; i++) {
      double z = DEPTH * i / LEVELS;
      double share = Math.min(1, Math.abs(x.applyAsDouble(z)) / (HALF + RAKE * z));
      points.add(Vector3.of(x.applyAsDouble(z), BREADTH * f.applyAsDouble(share), z));
    }
    return Station.mirrored("at " + at, points);
  }

  private static Space forwardOf(double u, List<Station> stations) {
    Chamber chamber =
        new Chamber(
            "bow tank",
            new Box(new Span(u, 9), Span.ALL, Span.ALL),
            new Filling.Air(
                Seal.PROVEN, Optional.of(new SealTest(TODAY, "water", 20, 0, "builder"))),
            Optional.empty(),
            false);
    Boat boat =
        new Boat(
            "closed form",
            Water.FRESH,
            Hulls.measured(1e-6, stations),
            List.of(),
            List.of(chamber),
            List.of(),
            List.of(),
            List.of(),
            new Propulsion.Manual(),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            Optional.empty(),
            List.of());
    return BoatModel.of(boat, TODAY).spaces().get(0);
  }

  private static double counted(Space space) {
    return space.solid().volume() * space.counting().share();
  }

  // Between stations faired at a third of the length from either end, a wedge is taken for a
  // parabola: two thirds of it instead of a half, a third too much.
  @Test
  void a_pointed_hull_of_four_stations_is_drawn_too_full_and_counts_as_it_is() {
    List<Station> four = stations(s -> 1 - s, -0.55, 0.55);
    Space tank = forwardOf(0.55, four);
    assertThat(tank.solid().volume() / wedge(0.55)).isGreaterThan(1.2);
    assertThat(counted(tank) / wedge(0.55)).isCloseTo(1, within(0.002));
  }

  @Test
  void no_full_hull_of_few_stations_counts_for_more_than_it_holds() {
    for (double u : new double[] {0.3, 0.6, 0.9, 1.2}) {
      for (double[] between : new double[][] {{0}, {-0.3}, {-0.55, 0.55}, {-0.2, 0.9}}) {
        double pointed = counted(forwardOf(u, stations(s -> 1 - s, between))) / wedge(u);
        double round = counted(forwardOf(u, stations(s -> 1 - s * s, between))) / parabola(u);
        assertThat(round).as("parabola, %s m", u).isLessThan(1 + TWIST);
        assertThat(pointed).as("wedge, %s m", u).isLessThan(1 + TWIST);
      }
    }
  }

  // Hollow ends hold less than straight lines say: that is what a fifth is taken off for. With
  // (1 - s)^p the integral of f from u/a to 1 is (1 - u/a)^(p+1) / (p+1).
  @Test
  void ends_as_hollow_as_such_boats_have_stay_within_the_fifth_that_is_taken_off() {
    for (double p : new double[] {1.05, 1.1, 1.2}) {
      double u = 0.55;
      double four = counted(forwardOf(u, stations(s -> Math.pow(1 - s, p), -0.55, 0.55)));
      assertThat(0.8 * four / hollow(p, u)).as("power %s", p).isLessThan(1);
      assertThat(four / hollow(p, u)).as("power %s", p).isGreaterThan(1);
    }
  }

  /** The integral over z of 2 B a (1 - u/a)^(p+1) / (p+1), by Simpson's rule in 200 steps. */
  private static double hollow(double p, double u) {
    int steps = 200;
    double sum = 0;
    for (int i = 0; i <= steps; i++) {
      double a = HALF + RAKE * DEPTH * i / steps;
      double value = 2 * BREADTH * a * Math.pow(1 - u / a, p + 1) / (p + 1);
      sum += value * (i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2);
    }
    return sum * DEPTH / steps / 3;
  }
}
