package thwartwise.afloat;

import static thwartwise.afloat.BoxAfloat.meets;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.boat.Side;
import thwartwise.boat.Water;
import thwartwise.geometry.Box;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;

/** Where people's weight stands, and what the water weighs. */
class PeopleAboardTest {
  private static final double POUND = 0.45359237; // kg, exact by definition
  private static final double CUBIC_FOOT = 0.028316846592; // m3, exact by definition

  private static Body body(Reference r) {
    Place seat = new Place("thwart", 1.5, r.in("seat"), 0.4, 1);
    Body seated = Body.seated("helm", r.in("mass", 80), seat, 0, r.in("floor"));
    return r.in("standing", 0) > 0 ? seated.standing() : seated;
  }

  static Stream<Reference> centres() {
    return Reference.of("body-centre");
  }

  @ParameterizedTest
  @MethodSource("centres")
  void a_persons_weight_stands_where_the_convention_puts_it(Reference r) {
    BoxBoat boat = BoxBoat.of(3, 1.2, 0.5).hull(1, 0);
    Loading loading = new Loading(boat.model(), List.of(body(r).stiff()), List.of(), 1);
    // The hull's kilogram at the bottom is taken out again.
    meets(r, "centre", loading.centre().z() * loading.mass() / (loading.mass() - 1));
  }

  static Stream<Reference> legs() {
    return Reference.of("body-legs");
  }

  @ParameterizedTest
  @MethodSource("legs")
  void legs_are_the_published_share_of_a_body(Reference r) {
    List<Box> boxes = body(r).boxes();
    double whole = boxes.stream().mapToDouble(Box::volume).sum();
    meets(r, "share", boxes.get(0).volume() / whole);
  }

  static Stream<Reference> climbing() {
    return Reference.of("rail-moment");
  }

  @ParameterizedTest
  @MethodSource("climbing")
  void a_person_at_the_rail_heels_with_all_their_weight(Reference r) {
    BoxBoat boat = BoxBoat.of(4, 1.4, 0.5).hull(400, 0.2);
    Vector3 rail = Vector3.of(2, r.in("y"), 0.5);
    Loading.Weight swimmer = new Loading.Weight(r.in("mass"), rail);
    Loading loading = new Loading(boat.model(), List.of(), List.of(swimmer), 1);
    RightingCurve curve =
        RightingCurve.toward(Side.PORT, FloatingBody.dry(loading), List.of()).orElseThrow();
    meets(r, "moment", -curve.moment(curve.points().get(0)));
  }

  static Stream<Reference> waters() {
    return Reference.of("water-density");
  }

  @ParameterizedTest
  @MethodSource("waters")
  void water_weighs_as_the_tables_say(Reference r) {
    double density = (r.in("salt") > 0 ? Water.SALT : Water.FRESH).density();
    meets(r, "lbft3", density * CUBIC_FOOT / POUND);
    meets(r, "tm3", density / 1000);
  }
}
