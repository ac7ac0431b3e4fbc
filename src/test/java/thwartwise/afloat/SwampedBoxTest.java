package thwartwise.afloat;

import static thwartwise.Assertions.assertThat;
import static thwartwise.afloat.BoxAfloat.meets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** Swamped boxes with chambers at ends and sides, all there or one lost, by closed forms. */
class SwampedBoxTest {
  private static final double POUND = 0.45359237; // kg, exact by definition
  private static final double CUBIC_FOOT = 0.028316846592; // m3, exact by definition

  static Stream<Reference> resting() {
    return Reference.of("swamped-rest");
  }

  @ParameterizedTest
  @MethodSource("resting")
  void a_swamped_box_rests_as_the_closed_form_says(Reference r) {
    Loading loading = loading(r);
    List<Space> lost =
        loading.model().spaces().stream()
            .filter(s -> r.inputs().containsKey("lost_" + s.name()))
            .toList();
    FloatingBody swamped = Swamping.of(loading, 1).floating(lost);
    meets(r, "spare", swamped.liftVolume() * 1000 - swamped.totalMass());
    Equilibria found = Equilibrium.from(swamped);
    assertThat(found.reached()).hasSize(1);
    assertThat(found.allStable()).isTrue();
    meetsPose(r, found.reached().get(0));
  }

  private static void meetsPose(Reference r, Pose pose) {
    meets(r, "draft", BoxAfloat.draughtAt(pose, r.in("L") / 2, 0));
    meets(r, "GM", pose.metacentricHeight());
    meets(r, "heel", Math.toDegrees(pose.heel()));
    meets(r, "trim", Math.toDegrees(pose.trim()));
    meets(r, "middle", BoxAfloat.draughtAt(pose, r.in("L") / 2, 0));
    meets(r, "aft", BoxAfloat.draughtAt(pose, 0, 0));
    meets(r, "fore", BoxAfloat.draughtAt(pose, r.in("L"), 0));
    meets(r, "upX", pose.plane().up().x());
    meets(r, "water", pose.plane().height());
  }

  private static Loading loading(Reference r) {
    BoxBoat boat =
        BoxBoat.of(r.in("L"), r.in("B"), r.in("D"))
            .hull(r.in("m"), Vector3.of(r.in("xG"), r.in("yG"), r.in("zG")))
            .weightlessShell()
            .floor(r.in("floor", 0));
    for (String name : List.of("a", "b", "c")) {
      if (r.inputs().keySet().stream().anyMatch(k -> k.matches("[xyz][01]_" + name))) {
        boat.proven(name, span(r, "x", name), span(r, "y", name), span(r, "z", name));
      }
    }
    if (r.inputs().containsKey("kit")) {
      Vector3 amidships = Vector3.of(r.in("L") / 2, 0, r.in("kitZ"));
      boat.kit("tin", r.in("kit"), amidships, r.in("kitVolume"));
    }
    return new Loading(boat.model(), people(r), List.of(), 1);
  }

  private static Span span(Reference r, String axis, String name) {
    return new Span(
        r.in(axis + "0_" + name, Double.NEGATIVE_INFINITY),
        r.in(axis + "1_" + name, Double.POSITIVE_INFINITY));
  }

  private static List<Body> people(Reference r) {
    List<Body> people = new ArrayList<>();
    if (r.inputs().containsKey("person")) {
      Place seat = new Place("seat", r.in("L") / 2, r.in("seat"), 0.4, 1);
      people.add(Body.seated("helm", r.in("person"), seat, 0, r.in("floor")));
    }
    return people;
  }

  static Stream<Reference> weights() {
    return Reference.of("submerged-weight");
  }

  /**
   * A bare boat of one stuff, wholly under: what its weight exceeds its lift by, over its weight.
   */
  @ParameterizedTest
  @MethodSource("weights")
  void a_bare_hull_under_water_weighs_the_published_share(Reference r) {
    double mass = r.in("kg");
    BoxBoat boat = BoxBoat.of(3, 1.2, 0.5).hull(mass, 0.2).shell(1000 * r.in("SG"), 0.01);
    Loading loading = new Loading(boat.model(), List.of(), List.of(), 1);
    FloatingBody swamped = Swamping.of(loading, 1).floating(List.of());
    double sinks = swamped.totalMass() - 1000 * swamped.liftVolume();
    meets(r, "factor", sinks / mass);
    assertThat(Equilibrium.from(swamped).exist()).isEqualTo(r.in("SG") < 1);
  }

  static Stream<Reference> holding() {
    return Reference.of("air-that-holds-up");
  }

  /** A chamber of the foam's volume, with the foam's weight aboard. */
  @ParameterizedTest
  @MethodSource("holding")
  void so_much_air_just_holds_the_boat_up(Reference r) {
    double volume = r.in("ft3") * CUBIC_FOOT;
    double foam = r.in("ft3") * r.in("foam") * POUND;
    BoxBoat boat =
        BoxBoat.of(6, 2, 0.5)
            .hull(r.in("hull") * POUND, 0.2)
            .shell(1000 * r.in("SG"), 1e-7)
            .weight("dry", r.in("dry") * POUND, Vector3.of(3, 0, 0.5))
            .weight("foam", foam, Vector3.of(3, 0, 0.2))
            .proven("foam", new Span(3, 3 + volume));
    Loading loading = new Loading(boat.model(), List.of(), List.of(), 1);
    FloatingBody swamped = Swamping.of(loading, 1).floating(List.of());
    meets(r, "spare", (1000 * swamped.liftVolume() - swamped.totalMass()) / POUND);
  }
}
