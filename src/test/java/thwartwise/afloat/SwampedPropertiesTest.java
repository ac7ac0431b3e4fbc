package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import thwartwise.RandomCases;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Space;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Box;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;
import thwartwise.hull.RandomHull;

/**
 * What must hold of swamped boats with chambers, a box of kit and somebody aboard, at any heel and
 * trim; over a thousand random boats, since each is built with all its solids.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SwampedPropertiesTest {
  private static final double HEIGHT = 1e-9;

  /** In a raked sharp end the inside stands out through the outside by up to this, m³. */
  private static final double SHARP_END = 1e-4;

  private final Immersion immersion = new Immersion();

  private final List<Loading> loadings = RandomCases.of(1_000, SwampedPropertiesTest::swamped);

  static Loading swamped(Random random) {
    double mass = RandomHull.between(30, 120, random);
    return loading(
        RandomHull.any(random),
        RandomHull.between(0.1, 0.4, random),
        RandomHull.between(0.05, 0.3, random),
        RandomHull.between(0.3, 1, random),
        RandomHull.between(-0.3, 0.3, random),
        mass);
  }

  private static Vector3 direction(Random random) {
    return WaterPlane.upward(
        RandomHull.between(-3.1, 3.1, random), RandomHull.between(-1.5, 1.5, random));
  }

  /** Two chambers across the boat, one of them low and one to port; kit and a person anywhere. */
  private static Loading loading(
      RandomHull hull, double from, double length, double height, double out, double mass) {
    double whole = hull.size().length();
    double depth = hull.size().depth();
    Span low = new Span(0, height * depth);
    Span aft = new Span(from * whole, (from + length) * whole);
    Span fore = new Span(aft.to(), Math.min(aft.to() + length * whole, 0.9 * whole));
    List<Chamber> chambers =
        List.of(
            BoxBoat.proven("aft", new Box(aft, Span.ALL, low), Optional.empty()),
            BoxBoat.proven("fore", new Box(fore, new Span(-0.05, 9), Span.ALL), Optional.empty()));
    double y = out * hull.size().beam() / 2;
    Kit kit =
        new Kit(
            "box",
            mass / 8,
            Vector3.of(aft.to(), y, depth / 2),
            Optional.of(mass / 4000),
            true,
            Optional.empty());
    Place seat = new Place("seat", whole / 2, depth / 2, 0.1, 1);
    Boat boat =
        new Boat(
            "any",
            Water.FRESH,
            hull.measured(),
            List.of(),
            chambers,
            List.of(seat),
            List.of(kit),
            List.of(new Person("guest", mass, "seat", -y)),
            new Propulsion.Manual(),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            Optional.empty(),
            List.of());
    BoatModel model = BoatModel.of(boat, BoxBoat.TODAY);
    return new Loading(model, model.aboard(), List.of(), 1);
  }

  // One kind of boat is an exception, by a few micrometres, and none of these is one: kit that
  // stands in a chamber of which less counts than of the kit. What both take up counts as the
  // chamber does, and with the chamber lost as the kit does.
  @Test
  void a_lost_chamber_raises_no_freeboard() {
    AtomicInteger floating = new AtomicInteger();
    RandomCases.each(
        loadings,
        (loading, random) -> {
          Vector3 up = direction(random);
          Swamping swamping = Swamping.of(loading, 1);
          FloatingBody tight = swamping.floating(List.of());
          if (!(tight.liftVolume() > 1.001 * tight.neededVolume())) {
            return;
          }
          floating.incrementAndGet();
          WaterPlane before = settled(tight, up);
          for (Space space : loading.model().spaces()) {
            FloatingBody lost = swamping.floating(List.of(space));
            assertThat(lost.liftVolume()).isLessThan(tight.liftVolume());
            if (lost.liftVolume() > lost.neededVolume()) {
              noneRises(loading.model().edges(), before, settled(lost, up));
            }
          }
        });
    assertThat(floating.get()).isGreaterThan(loadings.size() / 2);
  }

  @Test
  void added_weight_raises_no_freeboard() {
    AtomicInteger floating = new AtomicInteger();
    RandomCases.each(
        loadings,
        (loading, random) -> {
          Vector3 up = direction(random);
          FloatingBody light = Swamping.of(loading, 1).floating(List.of());
          if (!(light.liftVolume() > 1.1 * light.neededVolume())) {
            return;
          }
          floating.incrementAndGet();
          FloatingBody heavy =
              new FloatingBody(1.1 * light.mass(), light.centre(), light.lifts(), light.density());
          noneRises(loading.model().edges(), settled(light, up), settled(heavy, up));
        });
    assertThat(floating.get()).isGreaterThan(loadings.size() / 2);
  }

  // Nothing lifts less than nothing: as the water rises, what is under it never shrinks. Not quite
  // so in a raked sharp end: there inner and outer flats of the shell cross, by 0.06 litres at most
  // in a thousand hulls, counted by the shell's factor.
  @Test
  void rising_water_never_lifts_less() {
    RandomCases.each(
        loadings,
        (loading, random) -> {
          Vector3 up = direction(random);
          FloatingBody floating = Swamping.of(loading, 1).floating(List.of());
          Span reach = floating.extent(up);
          double crossed = SHARP_END * loading.model().form().shellFactor();
          double before = 0;
          for (int i = 0; i <= 40; i++) {
            WaterPlane plane = new WaterPlane(up, reach.from() + i * reach.length() / 40);
            double wet = Lift.immersed(floating.lifts(), plane, immersion).volume();
            assertThat(wet).isGreaterThanOrEqualTo(before - crossed);
            before = Math.max(before, wet);
          }
          assertThat(before).isCloseTo(floating.liftVolume(), within(crossed));
        });
  }

  private WaterPlane settled(FloatingBody floating, Vector3 up) {
    return HydrostaticState.at(floating, up, 0, immersion).orElseThrow().plane;
  }

  private static void noneRises(List<FloodPoint> edges, WaterPlane before, WaterPlane after) {
    assertThat(edges).isNotEmpty();
    assertThat(after.height()).isGreaterThanOrEqualTo(before.height() - HEIGHT);
    for (FloodPoint edge : edges) {
      assertThat(after.above(edge.at())).isLessThanOrEqualTo(before.above(edge.at()) + HEIGHT);
    }
  }
}
