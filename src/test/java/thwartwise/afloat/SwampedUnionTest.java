package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * What lifts a swamped boat is a union, never a sum.
 *
 * <p>In a box boat every body is a block along the axes, so the union can be counted cell by cell
 * between all their faces, without any of the program's sums.
 */
class SwampedUnionTest {
  private static final double L = 3;
  private static final double B = 1.2;
  private static final double D = 0.5;
  private static final double T = 0.01;

  private static BoxBoat boat() {
    return BoxBoat.of(L, B, D).hull(80, 0.2).solidShell(T).floor(0.02);
  }

  private static FloatingBody swamped(BoatModel model, Body... people) {
    return Swamping.of(new Loading(model, List.of(people), List.of(), 1), 1).floating(List.of());
  }

  private static final Box OUTSIDE =
      new Box(new Span(0, L), new Span(-B / 2, B / 2), new Span(0, D));
  private static final Box INSIDE =
      new Box(new Span(T, L - T), new Span(-B / 2 + T, B / 2 - T), new Span(T, D));

  /** Litres by litres: a cell lifts when it is shell, or in any of the blocks. */
  private static double union(List<Box> blocks, double water) {
    List<Box> all = new ArrayList<>(blocks);
    all.add(OUTSIDE);
    all.add(INSIDE);
    List<List<Double>> cuts = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (int axis = 0; axis < 3; axis++) {
      TreeSet<Double> places = new TreeSet<>();
      for (Box box : all) {
        Span span = axis == 0 ? box.x() : axis == 1 ? box.y() : box.z();
        places.add(span.from());
        places.add(span.to());
      }
      if (axis == 2) {
        places.add(water);
      }
      cuts.get(axis).addAll(places);
    }
    double sum = 0;
    for (int i = 0; i + 1 < cuts.get(0).size(); i++) {
      for (int j = 0; j + 1 < cuts.get(1).size(); j++) {
        for (int k = 0; k + 1 < cuts.get(2).size(); k++) {
          Span x = new Span(cuts.get(0).get(i), cuts.get(0).get(i + 1));
          Span y = new Span(cuts.get(1).get(j), cuts.get(1).get(j + 1));
          Span z = new Span(cuts.get(2).get(k), cuts.get(2).get(k + 1));
          Vector3 p = Vector3.of(x.middle(), y.middle(), z.middle());
          boolean shell = OUTSIDE.contains(p) && !INSIDE.contains(p);
          boolean lifts = shell || blocks.stream().anyMatch(b -> b.contains(p));
          if (lifts && p.z() < water) {
            sum += new Box(x, y, z).volume();
          }
        }
      }
    }
    return sum;
  }

  private static double immersed(FloatingBody floating, double water) {
    return Lift.immersed(floating.lifts(), WaterPlane.of(0, 0, water), new Immersion()).volume();
  }

  // Heavy kit, bodies and a chamber strewn at random, many of them through the shell and through
  // each other: at every height of the water the program's sum is the counted union.
  @Test
  void bodies_kit_chamber_and_shell_lift_as_their_union() {
    Random random = new Random(10);
    for (int trial = 0; trial < 25; trial++) {
      BoxBoat boat = boat();
      boat.proven("tank", new Span(2, 3));
      List<Box> blocks = new ArrayList<>();
      blocks.add(INSIDE.common(new Box(new Span(2, 3), Span.ALL, Span.ALL)));
      for (int i = 0; i < 4; i++) {
        Vector3 at =
            Vector3.of(
                3.2 * random.nextDouble() - 0.1,
                1.3 * (random.nextDouble() - 0.5),
                0.5 * random.nextDouble());
        double volume = 0.004 + 0.02 * random.nextDouble();
        boat.kit("ballast " + i, 2000 * volume, at, volume);
        blocks.add(Box.cube(at, volume));
      }
      BoatModel model = boat.model();
      List<Body> people = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        double x = 0.3 + 2.4 * random.nextDouble();
        Place place = new Place("thwart", x, 0.25, 0.5, 1);
        Body body =
            Body.seated("crew", 40 + 60 * random.nextDouble(), place, random.nextDouble() - 0.5, T);
        people.add(body);
        blocks.addAll(model.boxes(body));
      }
      FloatingBody floating = swamped(model, people.toArray(new Body[0]));
      for (double water : new double[] {0.05, 0.2, 0.33, 0.5, 3}) {
        assertThat(immersed(floating, water))
            .as("trial %d, water at %s", trial, water)
            .isCloseTo(union(blocks, water), within(1e-6));
      }
    }
  }

  @Test
  void two_things_in_the_same_spot_lift_no_more_than_one() {
    Vector3 spot = Vector3.of(1.5, 0, 0.2);
    double one = swamped(boat().kit("can", 20, spot, 0.01).model()).liftVolume();
    double two =
        swamped(boat().kit("can", 20, spot, 0.01).kit("other can", 20, spot, 0.01).model())
            .liftVolume();
    assertThat(two).isCloseTo(one, within(1e-12));
  }

  @Test
  void kit_inside_a_counted_chamber_adds_nothing_and_in_a_claimed_one_its_own() {
    Vector3 inTank = Vector3.of(2.5, 0, 0.2);
    double tank = swamped(boat().proven("tank", new Span(2, 3)).model()).liftVolume();
    double both =
        swamped(boat().proven("tank", new Span(2, 3)).kit("can", 20, inTank, 0.01).model())
            .liftVolume();
    assertThat(both).isCloseTo(tank, within(1e-12));
    double bare = swamped(boat().model()).liftVolume();
    double claimed =
        swamped(boat().claimed("tank", new Span(2, 3)).kit("can", 20, inTank, 0.01).model())
            .liftVolume();
    assertThat(claimed - bare).isCloseTo(0.01, within(1e-12));
  }

  @Test
  void kit_in_a_lost_chamber_lifts_by_itself_again() {
    BoatModel model =
        boat().proven("tank", new Span(2, 3)).kit("can", 20, Vector3.of(2.5, 0, 0.2), 0.01).model();
    Loading loading = new Loading(model, List.of(), List.of(), 1);
    double lost = Swamping.of(loading, 1).floating(List.of(model.spaces().get(0))).liftVolume();
    assertThat(lost - swamped(boat().model()).liftVolume()).isCloseTo(0.01, within(1e-12));
  }

  @Test
  void heavy_kit_lifts_its_own_volume_and_light_kit_its_own_weight() {
    Vector3 at = Vector3.of(1.5, 0, 0.2);
    double bare = swamped(boat().model()).liftVolume();
    assertThat(swamped(boat().kit("anchor", 40, at, 0.005).model()).liftVolume() - bare)
        .isCloseTo(0.005, within(1e-12));
    assertThat(swamped(boat().kit("cushion", 2, at, 0.020).model()).liftVolume() - bare)
        .isCloseTo(0.002, within(1e-12));
    double salted = swamped(boat().salt().kit("cushion", 2, at, 0.020).model()).liftVolume();
    assertThat(salted - bare).isCloseTo(2.0 / 1025, within(1e-12));
  }

  @Test
  void unfastened_kit_and_kit_without_litres_lift_nothing() {
    double bare = swamped(boat().model()).liftVolume();
    Vector3 at = Vector3.of(1.5, 0, 0.2);
    assertThat(swamped(boat().weight("anchor", 40, at).model()).liftVolume())
        .isCloseTo(bare, within(1e-12));
    var loose =
        new thwartwise.boat.Kit("cushion", 2, at, Optional.of(0.02), false, Optional.empty());
    assertThat(swamped(boat().kit(loose).model()).liftVolume()).isCloseTo(bare, within(1e-12));
  }

  // Legs from the floor at 0.02 to the seat at 0.25 stand wholly in the box under it: 32 % of the
  // body lifts nothing, whether that box counts or not.
  @Test
  void legs_drawn_into_an_uncounted_chamber_lift_nothing() {
    Place place = new Place("thwart", 2.5, 0.25, 0.4, 1);
    Body body = Body.seated("crew", 80, place, 0, 0.02);
    BoxBoat claimed = boat();
    claimed.chamber(
        new thwartwise.boat.Chamber(
            "thwart box",
            new Box(new Span(2, 3), Span.ALL, new Span(0, 0.25)),
            new thwartwise.boat.Filling.Air(thwartwise.boat.Filling.Seal.CLAIMED, Optional.empty()),
            Optional.empty(),
            false));
    double bare = swamped(boat().model()).liftVolume();
    assertThat(swamped(claimed.model(), body).liftVolume() - bare)
        .isCloseTo(0.68 * 0.080, within(1e-9));
    assertThat(swamped(boat().model(), body).liftVolume() - bare).isCloseTo(0.080, within(1e-9));
  }

  // By hand: tank 0.99 x 1.18 x 0.49 inside the shell, hull 80 kg whose shell lifts its own volume
  // 3 x 1.2 x 0.5 - 2.98 x 1.18 x 0.49, anchor 40 kg of 5 l, crew 80 kg of 80 l.
  @Test
  void spare_buoyancy_of_a_box_boat_is_what_paper_says() {
    BoatModel model =
        boat()
            .proven("tank", new Span(2, 3))
            .kit("anchor", 40, Vector3.of(0.5, 0, 0.2), 0.005)
            .model();
    Body body = Body.seated("crew", 80, new Place("thwart", 1.2, 0.25, 0.4, 1), 0, 0.02);
    FloatingBody floating = swamped(model, body);
    double tank = 0.99 * 1.18 * 0.49;
    double shell = 1.8 - 2.98 * 1.18 * 0.49;
    double lift = 1000 * (tank + shell + 0.005 + 0.080);
    assertThat(floating.density() * floating.liftVolume() - floating.mass())
        .isCloseTo(lift - 200, within(1e-6));
  }

  // The allowance takes a tenth off chambers and kit, and leaves shell and bodies alone.
  @Test
  void the_allowance_shrinks_what_was_drawn_and_nothing_else() {
    BoatModel model = boat().proven("tank", new Span(2, 3)).model();
    Loading loading = new Loading(model, List.of(), List.of(), 1.05);
    double less = Swamping.of(loading, 0.9).floating(List.of()).liftVolume();
    double full = Swamping.of(loading, 1).floating(List.of()).liftVolume();
    assertThat(full - less).isCloseTo(0.1 * 0.99 * 1.18 * 0.49, within(1e-9));
  }
}
