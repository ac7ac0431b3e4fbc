package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import thwartwise.RandomCases;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;
import thwartwise.hull.RandomHull;

/**
 * What must hold of any boat held at any heel and trim and let sink until it floats; each over ten
 * thousand random boats.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FixedPosePropertiesTest {
  /** Settling balances volumes to 1e-13 of a cubic metre or of what is needed. */
  private static final double VOLUME = 1e-11;

  private static final double HEIGHT = 1e-9;

  private final Immersion immersion = new Immersion();

  private final List<SettledBoat> boats =
      RandomCases.of(10_000, random -> SettledBoat.of(RandomAfloat.any(random), immersion));

  /** A boat with the state it is in where it floats at its heel and trim. */
  private record SettledBoat(RandomAfloat boat, HydrostaticState state) {
    static SettledBoat of(RandomAfloat boat, Immersion immersion) {
      return new SettledBoat(boat, settled(boat, boat.floating(), immersion));
    }

    private static HydrostaticState settled(
        RandomAfloat boat, FloatingBody floating, Immersion immersion) {
      return HydrostaticState.at(floating, boat.up(), 0, immersion).orElseThrow();
    }
  }

  private static double share(Random random) {
    return RandomHull.between(0.001, 0.95, random);
  }

  private HydrostaticState settled(RandomAfloat boat, FloatingBody floating) {
    return SettledBoat.settled(boat, floating, immersion);
  }

  @Test
  void added_weight_immerses_just_its_own_volume_and_raises_no_freeboard() {
    RandomCases.each(
        boats,
        (settled, random) -> {
          RandomAfloat boat = settled.boat();
          double share = share(random);
          double added = share * (boat.outside().volume() * RandomAfloat.DENSITY - boat.mass());
          HydrostaticState before = settled.state();
          HydrostaticState after =
              settled(boat, boat.floating(boat.mass() + added, new Lift(boat.outside(), 1)));
          assertThat(after.part.volume() - before.part.volume())
              .isCloseTo(added / RandomAfloat.DENSITY, within(VOLUME));
          noneRises(boat.rail(), before, after);
        });
  }

  @Test
  void lost_buoyancy_raises_no_freeboard() {
    AtomicInteger floating = new AtomicInteger();
    RandomCases.each(
        boats,
        (settled, random) -> {
          RandomAfloat boat = settled.boat();
          double share = share(random);
          double left = boat.outside().volume() - share * boat.bay().volume();
          if (!(left * RandomAfloat.DENSITY > boat.mass() * 1.001)) {
            return;
          }
          floating.incrementAndGet();
          HydrostaticState before = settled.state();
          HydrostaticState after =
              settled(
                  boat,
                  boat.floating(
                      boat.mass(), new Lift(boat.outside(), 1), new Lift(boat.bay(), -share)));
          assertThat(after.part.volume()).isCloseTo(before.part.volume(), within(VOLUME));
          noneRises(boat.rail(), before, after);
        });
    assertThat(floating.get()).isGreaterThan(boats.size() / 2);
  }

  private static void noneRises(
      List<FloodPoint> rail, HydrostaticState before, HydrostaticState after) {
    for (FloodPoint point : rail) {
      assertThat(after.plane.above(point.at()))
          .as(point.name())
          .isLessThanOrEqualTo(before.plane.above(point.at()) + HEIGHT);
    }
  }

  @Test
  void a_mirrored_boat_floats_mirrored() {
    RandomCases.each(
        boats,
        settled -> {
          RandomAfloat boat = settled.boat();
          RandomAfloat mirrored = boat.mirrored();
          assertThat(mirrored.outside().volume()).isCloseTo(boat.outside().volume(), within(1e-12));
          HydrostaticState one = settled.state();
          HydrostaticState other = settled(mirrored, mirrored.floating());
          assertThat(other.plane.height()).isCloseTo(one.plane.height(), within(HEIGHT));
          assertThat(other.energy).isCloseTo(one.energy, within(VOLUME));
          assertThat(other.heelMoment).isCloseTo(-one.heelMoment, within(1e-9));
          assertThat(other.trimMoment).isCloseTo(one.trimMoment, within(1e-9));
          Vector3 centre = other.part.centroid();
          assertThat(centre.mirrored().minus(one.part.centroid()).norm()).isLessThan(HEIGHT);
        });
  }

  @Test
  void moving_the_origin_changes_nothing() {
    RandomCases.each(
        boats,
        (settled, random) -> {
          RandomAfloat boat = settled.boat();
          Vector3 by = RandomAfloat.origin(random);
          RandomAfloat moved = boat.moved(by);
          HydrostaticState here = settled.state();
          HydrostaticState there = settled(moved, moved.floating());
          assertThat(there.energy).isCloseTo(here.energy, within(1e-9));
          assertThat(there.heelMoment).isCloseTo(here.heelMoment, within(1e-8));
          assertThat(there.trimMoment).isCloseTo(here.trimMoment, within(1e-8));
          List<FloodPoint> rail = boat.rail();
          List<FloodPoint> movedRail = moved.rail();
          for (int i = 0; i < rail.size(); i++) {
            assertThat(there.plane.above(movedRail.get(i).at()))
                .isCloseTo(here.plane.above(rail.get(i).at()), within(HEIGHT));
          }
        });
  }

  @Test
  void more_water_comes_over_it_by_the_area_of_its_waterplane() {
    RandomCases.each(
        boats,
        settled -> {
          RandomAfloat boat = settled.boat();
          HydrostaticState here = settled.state();
          double h = 1e-6;
          double up = volume(boat, here, h) - here.part.volume();
          double down = here.part.volume() - volume(boat, here, -h);
          assertSlope(here.part.area(), up / h, down / h, 1e-5);
        });
  }

  private double volume(RandomAfloat boat, HydrostaticState here, double by) {
    WaterPlane moved = here.plane.withHeight(here.plane.height() + by);
    return Lift.immersed(boat.floating().lifts(), moved, immersion).volume();
  }

  @Test
  void the_moments_are_the_slopes_of_the_energy() {
    RandomCases.each(
        boats,
        settled -> {
          RandomAfloat boat = settled.boat();
          FloatingBody floating = boat.floating();
          HydrostaticState here = settled.state();
          double h = 1e-5;
          double heel = turned(floating, here, h, 0).energy - turned(floating, here, -h, 0).energy;
          double trim = turned(floating, here, 0, h).energy - turned(floating, here, 0, -h).energy;
          double scale = 1 + greatest(here.restoring);
          assertThat(here.heelMoment).isCloseTo(heel / (2 * h), within(1e-6 * scale));
          assertThat(here.trimMoment).isCloseTo(trim / (2 * h), within(1e-6 * scale));
        });
  }

  // Along a turn the moment that matters is the one about the turn's own axis: the slope of the
  // energy in space taken along the way the upward direction goes.
  @Test
  void the_stiffness_is_the_slope_of_the_moments() {
    RandomCases.each(
        boats,
        (settled, random) -> {
          RandomAfloat boat = settled.boat();
          double round = share(random);
          FloatingBody floating = boat.floating();
          HydrostaticState here = settled.state();
          double a = Math.cos(2 * Math.PI * round);
          double b = Math.sin(2 * Math.PI * round);
          double h = 1e-6;
          double at = here.heelMoment * a + here.trimMoment * b;
          double ahead = along(turned(floating, here, h * a, h * b), here, a, b, h);
          double behind = along(turned(floating, here, -h * a, -h * b), here, a, b, -h);
          RestoringStiffness k = here.restoring;
          double ours = k.heel() * a * a + 2 * k.product() * a * b + k.trim() * b * b;
          assertSlope(ours, (ahead - at) / h, (at - behind) / h, 1e-4 * (1 + greatest(k)));
        });
  }

  private HydrostaticState turned(
      FloatingBody floating, HydrostaticState from, double heel, double trim) {
    return HydrostaticState.at(
            floating, from.plane.turned(heel, trim), from.heightAfter(heel, trim), immersion)
        .orElseThrow();
  }

  /** The slope of the energy on going on in a direction, after a turn that way. */
  private static double along(
      HydrostaticState there, HydrostaticState from, double a, double b, double turn) {
    Vector3 slope =
        there
            .plane
            .athwart()
            .times(there.heelMoment)
            .minus(there.plane.ahead().times(there.trimMoment));
    Vector3 start = from.plane.athwart().times(a).minus(from.plane.ahead().times(b));
    Vector3 way = start.times(Math.cos(turn)).minus(from.plane.up().times(Math.sin(turn)));
    return slope.dot(way);
  }

  private static double greatest(RestoringStiffness k) {
    return Math.max(Math.abs(k.stiffest()), Math.abs(k.softest()));
  }

  // The middle of both is the better; but a flat of the hull that meets the water within the step
  // bends the slope on one side of it, and then the other is right.
  private static void assertSlope(double ours, double ahead, double behind, double near) {
    double oneSided = Math.min(Math.abs(ours - ahead), Math.abs(ours - behind));
    double off = Math.min(oneSided, Math.abs(ours - (ahead + behind) / 2));
    assertThat(off).as("%s from %s or %s", ours, ahead, behind).isLessThan(near);
  }
}
