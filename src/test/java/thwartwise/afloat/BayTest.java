package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.afloat.BoxAfloat.meets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Thwart boxes that reach from side to side dam the boat into bays. */
class BayTest {
  private static final double NO_END = Double.POSITIVE_INFINITY;

  private static BoxBoat boat(Reference r) {
    BoxBoat boat = BoxBoat.of(r.in("L"), r.in("B"), r.in("D")).weightlessShell();
    Vector3 centre = Vector3.of(r.in("xG", r.in("L") / 2), 0, r.in("zG", 0.2));
    boat.hull(r.in("m", 500), centre).floor(r.in("floor", 0));
    for (String thwart : List.of("a", "b")) {
      if (r.inputs().containsKey("from_" + thwart)) {
        Span along = new Span(r.in("from_" + thwart), r.in("to_" + thwart));
        Span up = new Span(Double.NEGATIVE_INFINITY, r.in("high_" + thwart, NO_END));
        boat.proven(thwart, along, Span.ALL, up);
      }
    }
    return boat;
  }

  private static Loading loading(BoxBoat boat, Body... people) {
    return new Loading(boat.model(), List.of(people), List.of(), 1);
  }

  static Stream<Reference> capacities() {
    return Reference.of("bay-capacity");
  }

  @ParameterizedTest
  @MethodSource("capacities")
  void a_bay_holds_up_to_its_lower_dam(Reference r) {
    Loading loading = loading(boat(r));
    List<Bay> bays = Bay.each(loading.model());
    meets(r, "bays", bays.size());
    for (int i = 0; i < bays.size(); i++) {
      meets(r, "bay" + i, LooseWater.of(loading).capacity(bays.get(i)));
    }
  }

  static Stream<Reference> trims() {
    return Reference.of("bay-trim");
  }

  @ParameterizedTest
  @MethodSource("trims")
  void water_in_one_bay_alone_trims_the_boat(Reference r) {
    Loading loading = loading(boat(r));
    Bay bay = Bay.each(loading.model()).get((int) r.in("bay"));
    Equilibria found = Equilibrium.from(LooseWater.of(loading).in(bay, r.in("w")));
    assertThat(found.reached()).hasSize(1);
    Pose pose = found.reached().get(0);
    meets(r, "trim", Math.toDegrees(pose.trim()));
    meets(r, "aft", BoxAfloat.draughtAt(pose, 0, 0));
    meets(r, "fore", BoxAfloat.draughtAt(pose, r.in("L"), 0));
    assertThat(pose.heel()).isCloseTo(0, within(1e-7));
  }

  static Stream<Reference> stoodIn() {
    return Reference.of("hold-capacity");
  }

  @ParameterizedTest
  @MethodSource("stoodIn")
  void kit_and_legs_leave_less_room_for_water(Reference r) {
    Place seat = new Place("seat", 3, r.in("seat"), 0.4, 1);
    Body helm = Body.seated("helm", r.in("person"), seat, 0, r.in("floor"));
    BoxBoat boat = boat(r).kit("can", 5, Vector3.of(1, 0, 0.2), r.in("cube"));
    meets(r, "whole", LooseWater.of(loading(boat, helm)).capacity(Bay.WHOLE));
  }

  static Stream<Reference> depths() {
    return Reference.of("hold-depth");
  }

  @ParameterizedTest
  @MethodSource("depths")
  void the_water_inside_stands_so_deep_over_a_point(Reference r) {
    Vector3 point = Vector3.of(r.in("L") / 2, r.in("y"), 0);
    Vector3 up = WaterPlane.upward(Math.toRadians(r.in("heel")), 0);
    LooseWater water = LooseWater.of(loading(boat(r)));
    meets(r, "depth", water.depthOver(point, up, Bay.WHOLE, r.in("w")).orElseThrow());
  }

  private static BoxBoat plain() {
    return BoxBoat.of(4, 1.4, 0.5).hull(500, 0.2).weightlessShell().floor(0.05);
  }

  private static List<Bay> bays(BoxBoat boat) {
    return Bay.each(boat.model());
  }

  private static Chamber thwart(Box box, Seal seal, boolean limberHole) {
    Filling air = new Filling.Air(seal, Optional.empty());
    return new Chamber("thwart", box, air, Optional.empty(), false, limberHole);
  }

  private static Box box(double foot, Span across) {
    return new Box(new Span(1.6, 2), across, new Span(foot, 0.3));
  }

  @Test
  void a_boat_without_thwart_boxes_is_one_bay() {
    assertThat(bays(plain())).isEmpty();
  }

  @Test
  void bays_are_named_after_the_thwarts_beside_them() {
    BoxBoat boat =
        plain().proven("fore thwart", new Span(2.6, 2.8)).proven("after thwart", new Span(1, 1.3));
    assertThat(bays(boat))
        .extracting(Bay::name)
        .containsExactly(
            "the bay aft of the after thwart",
            "the bay between the after thwart and the fore thwart",
            "the bay forward of the fore thwart");
    assertThat(bays(boat).get(1).box().x().from()).isCloseTo(1.3, within(1e-12));
    assertThat(bays(boat).get(1).box().x().to()).isCloseTo(2.6, within(1e-12));
  }

  @Test
  void a_locker_at_the_very_end_leaves_no_bay_beyond_it() {
    assertThat(bays(plain().proven("bow locker", new Span(3, 4))))
        .extracting(Bay::name)
        .containsExactly("the bay aft of the bow locker");
  }

  // A sliver that holds under ten litres is no bay anybody would bail.
  @Test
  void a_gap_of_a_hand_between_two_thwarts_is_a_bay_and_a_crack_is_not() {
    BoxBoat crack = plain().proven("a", new Span(1, 1.5)).proven("b", new Span(1.51, 2));
    BoxBoat hand = plain().proven("a", new Span(1, 1.5)).proven("b", new Span(1.56, 2));
    assertThat(bays(crack)).hasSize(2);
    assertThat(bays(hand)).hasSize(3);
  }

  @Test
  void a_limber_hole_lets_the_water_past() {
    Box whole = box(0, Span.ALL);
    assertThat(bays(plain().chamber(thwart(whole, Seal.CLAIMED, false)))).hasSize(2);
    assertThat(bays(plain().chamber(thwart(whole, Seal.CLAIMED, true)))).isEmpty();
  }

  @Test
  void an_open_box_fills_and_dams_nothing() {
    assertThat(bays(plain().chamber(thwart(box(0, Span.ALL), Seal.OPEN, false)))).isEmpty();
  }

  // The floor lies at 0.05: a box from 0.07 still holds water back, from 0.071 it runs under.
  @Test
  void a_thwart_clear_of_the_floor_dams_nothing() {
    assertThat(bays(plain().chamber(thwart(box(0.07, Span.ALL), Seal.CLAIMED, false)))).hasSize(2);
    assertThat(bays(plain().chamber(thwart(box(0.071, Span.ALL), Seal.CLAIMED, false)))).isEmpty();
  }

  @Test
  void a_thwart_that_leaves_room_at_one_side_dams_nothing() {
    Chamber port = thwart(box(0, new Span(-0.6, 1)), Seal.CLAIMED, false);
    Chamber starboard = thwart(box(0, new Span(-1, 0.6)), Seal.CLAIMED, false);
    Chamber both = thwart(box(0, new Span(-0.7, 0.7)), Seal.CLAIMED, false);
    assertThat(bays(plain().chamber(port))).isEmpty();
    assertThat(bays(plain().chamber(starboard))).isEmpty();
    assertThat(bays(plain().chamber(both))).hasSize(2);
  }
}
