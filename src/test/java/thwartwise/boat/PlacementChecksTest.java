package thwartwise.boat;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.hull.UnusableBoat;
import thwartwise.record.SampleBoats;

class PlacementChecksTest {
  private static final Boat SKIFF = SampleBoats.plain();

  @Test
  void what_lies_in_the_boat_is_taken() {
    Boat boat = box(new Place("thwart", 1.5, 0.2, 0.4, 2), kit(-0.2, 0), notch(0, 0.35), List.of());
    assertThatCode(() -> model(boat)).doesNotThrowAnyException();
  }

  // Its rail rises toward the bow, so the height lies within that of the hull.
  @Test
  void a_notch_above_the_rail_it_is_cut_into_is_refused_and_a_well_is_not() {
    HullForm form = model(SKIFF).form();
    Vector3 aft = form.aftRail().get(0);
    Vector3 side = form.railAt(1.2, true);
    assertThatThrownBy(
            () ->
                model(
                    SKIFF.withOpenings(List.of(new Opening("notch", up(aft, 0, 0.05), 0.3, true)))))
        .isInstanceOf(UnusableBoat.class)
        .hasMessage(
            String.format(
                Locale.ROOT,
                "Opening \"notch\": its lowest edge is %.2f m up, above the rail it is cut into"
                    + " (%.2f m there). Measure it again, straight up from the lowest point of the"
                    + " bottom.",
                aft.z() + 0.05,
                aft.z()));
    Opening oar = new Opening("oar notch", up(side, side.y(), 0.05), 0.1, false);
    assertThatThrownBy(() -> model(SKIFF.withOpenings(List.of(oar))))
        .isInstanceOf(UnusableBoat.class)
        .hasMessageContaining("above the rail it is cut into");
    for (Opening fine :
        List.of(
            new Opening("notch", up(aft, 0, 0), 0.3, true),
            new Opening("centreboard case", up(side, 0, 0.05), 0.3, false))) {
      assertThatCode(() -> model(SKIFF.withOpenings(List.of(fine)))).doesNotThrowAnyException();
    }
  }

  private static Vector3 up(Vector3 rail, double y, double by) {
    return Vector3.of(rail.x(), y, rail.z() + by);
  }

  @Test
  void a_place_typed_in_centimetres_is_refused() {
    Boat boat = box(new Place("thwart", 150, 0.2, 0.4, 2), kit(0, 0), notch(0, 0.35), List.of());
    assertThatThrownBy(() -> model(boat))
        .isInstanceOf(UnusableBoat.class)
        .hasMessage(
            "Place \"thwart\": x is 150.00 m, outside the 0.00 to 3.00 m that this hull leaves."
                + " Measure it from the aft end, in metres.");
  }

  @Test
  void a_seat_wider_than_the_boat_is_refused() {
    Boat boat = box(new Place("thwart", 1.5, 0.2, 0.7, 2), kit(0, 0), notch(0, 0.35), List.of());
    assertThatThrownBy(() -> model(boat))
        .hasMessage(
            "Place \"thwart\": halfWidth is 0.70 m, outside the 0.00 to 0.60 m that this hull"
                + " leaves. It is how far from the middle line the middle of a person can get, in"
                + " metres.");
  }

  @Test
  void a_side_seat_outside_the_boat_is_refused_by_the_end_that_is() {
    Place bench = new Place("bench", new Span(1, 2), new Span(0.5, 0.7), 0.2, 2, Posture.SITTING);
    assertThatThrownBy(() -> model(box(bench, kit(0, 0), notch(0, 0.35), List.of())))
        .hasMessage(
            "Place \"bench\": y is 0.70 m, outside the -0.60 to 0.60 m that this hull leaves. It"
                + " is from where to where the middle of a person can be, to port of the middle"
                + " line, in metres.");
    Place ahead = new Place("bench", new Span(2, 5), new Span(0.4, 0.5), 0.2, 2, Posture.SITTING);
    assertThatThrownBy(() -> model(box(ahead, kit(0, 0), notch(0, 0.35), List.of())))
        .hasMessage(
            "Place \"bench\": x is 5.00 m, outside the 0.00 to 3.00 m that this hull leaves."
                + " Measure it from the aft end, in metres.");
  }

  // The middle line is where everybody sat when a place had no side.
  @Test
  void somebody_beside_their_side_seat_is_refused() {
    Place bench = new Place("bench", new Span(1, 2), new Span(0.4, 0.5), 0.2, 2, Posture.SITTING);
    BoxBoat box = BoxBoat.of(3, 1.2, 0.4).place(bench);
    assertThatThrownBy(() -> box.aboard("helm", 80, "bench", 0).model())
        .hasMessage(
            "\"helm\": y is 0.00 m, outside the 0.40 to 0.50 m of \"bench\". Measure to the middle"
                + " of the person, or leave it out.");
    BoxBoat ahead = BoxBoat.of(3, 1.2, 0.4).place(bench);
    assertThatThrownBy(
            () -> ahead.aboard(new Person("helm", 80, "bench", 0.45, Optional.of(2.5))).model())
        .hasMessage(
            "\"helm\": x is 2.50 m, outside the 1.00 to 2.00 m of \"bench\". Measure to the middle"
                + " of the person, or leave it out.");
    BoxBoat odd = BoxBoat.of(3, 1.2, 0.4).place(bench);
    assertThatThrownBy(() -> odd.aboard("helm", 80, "bench", Double.NaN).model())
        .isInstanceOf(UnusableBoat.class);
  }

  @Test
  void a_floor_above_every_rail_is_refused_in_one_line() {
    assertThatThrownBy(
            () -> BoxBoat.of(3, 1.2, 0.4).floor(0.9).place("thwart", 1.5, 0.2, 0.4, 1).model())
        .hasMessage(
            "Hull: the floor is 0.90 m up, above the highest point of the rail (0.40 m). Measure it"
                + " from the lowest point of the bottom up to what people stand on, in metres.");
  }

  @Test
  void a_deck_longer_than_the_boat_is_refused() {
    assertThatThrownBy(() -> BoxBoat.of(2.4, 1.2, 0.4).decked(5, 6).model())
        .hasMessage(
            "Hull: the deck from 5.00 to 6.00 m reaches beyond the boat, which lies between 0.00 and"
                + " 2.40 m. Measure both ends of it from the aft end, in metres.");
  }

  @Test
  void a_seat_that_is_no_number_is_refused() {
    Boat boat =
        box(new Place("thwart", 1.5, Double.NaN, 0.4, 2), kit(0, 0), notch(0, 0.35), List.of());
    assertThatThrownBy(() -> model(boat)).isInstanceOf(UnusableBoat.class);
  }

  @Test
  void kit_and_openings_far_from_the_hull_are_refused() {
    Place thwart = new Place("thwart", 1.5, 0.2, 0.4, 2);
    assertThatThrownBy(() -> model(box(thwart, kit(9, 0), notch(0, 0.35), List.of())))
        .hasMessage(
            "Kit \"battery\": x is 9.00 m, outside the -1.00 to 4.00 m that this hull leaves."
                + " Measure it from the aft end, in metres.");
    assertThatThrownBy(() -> model(box(thwart, kit(0, 0), notch(0, 35), List.of())))
        .hasMessage(
            "Opening \"notch\": z is 35.00 m, outside the -0.02 to 0.42 m that this hull leaves."
                + " Measure its lowest edge up from the lowest point of the bottom, in metres.");
  }

  @Test
  void chambers_drawn_over_each_other_are_refused_by_both_names() {
    Chamber a = air("stern box", new Span(0, 0.6));
    Chamber b = air("after locker", new Span(0.5, 1));
    Boat boat =
        box(new Place("thwart", 1.5, 0.2, 0.4, 2), kit(0, 0), notch(0, 0.35), List.of(a, b));
    // 0.1 m of the inside: 1.188 m wide (1.2 less two skins), 0.394 m high: 46.8 litres.
    assertThatThrownBy(() -> model(boat))
        .hasMessage(
            "Chambers \"stern box\" and \"after locker\" overlap by 46.8 litres. The same air"
                + " cannot count twice: change the x, y or z of one so that they only touch.");
  }

  @Test
  void a_boat_that_nothing_can_flood_is_refused() {
    Boat boat = BoxBoat.of(3, 1.2, 0.4).decked(0, 3).boat();
    assertThatThrownBy(() -> model(boat))
        .hasMessage(
            "Hull: the rail is decked from end to end and no opening stays open, so nothing could"
                + " flood. This is for open boats: give \"decked\" only the lengths that have a"
                + " deck, or name the openings that nothing closes.");
  }

  @Test
  void a_drain_with_its_bung_may_lie_low_down_and_a_hatch_inside() {
    Opening drain = shut("drain", Vector3.of(0, 0.2, 0), Optional.empty());
    Opening hatch = shut("hatch", Vector3.of(2.5, 0, 0.2), Optional.of("fore locker"));
    Boat boat =
        BoxBoat.of(3, 1.2, 0.4)
            .proven("fore locker", new Span(2.5, 3))
            .opening(drain)
            .opening(hatch)
            .boat();
    assertThatCode(() -> model(boat)).doesNotThrowAnyException();
  }

  @Test
  void a_drain_below_the_bottom_is_refused() {
    Opening drain = shut("drain", Vector3.of(0, 0.2, -0.11), Optional.empty());
    Boat boat = BoxBoat.of(3, 1.2, 0.4).opening(drain).boat();
    assertThatThrownBy(() -> model(boat))
        .hasMessage(
            "Opening \"drain\": z is -0.11 m, outside the -0.02 to 0.42 m that this hull leaves."
                + " Measure its lowest edge up from the lowest point of the bottom, in metres.");
  }

  @Test
  void cleats_on_the_hull_and_a_little_beyond_it_are_taken() {
    for (Vector3 at :
        List.of(
            Vector3.of(-0.29, 0.25, 0.46),
            Vector3.of(3.29, 0, 0.54),
            Vector3.of(1.5, -0.69, 0.4),
            Vector3.of(3, 0, 0))) {
      assertThatCode(() -> model(withCleat(at))).doesNotThrowAnyException();
    }
  }

  @Test
  void cleats_far_from_the_hull_are_refused() {
    refused(
        Vector3.of(3.4, 0, 0.4),
        "Cleat \"ring\": x is 3.40 m, outside the -0.30 to 3.30 m that this hull leaves."
            + " Measure it from the aft end, in metres.");
    refused(
        Vector3.of(0, 0.8, 0.4),
        "Cleat \"ring\": y is 0.80 m, outside the -0.70 to 0.70 m that this hull leaves."
            + " Measure it from the middle line, in metres.");
    refused(
        Vector3.of(0, 0, 0.6),
        "Cleat \"ring\": z is 0.60 m, outside the -0.02 to 0.55 m that this hull leaves."
            + " Measure it up from the lowest point of the bottom, in metres.");
    for (Vector3 nowhere :
        List.of(
            Vector3.of(Double.NaN, 0, 0.4),
            Vector3.of(0, Double.NaN, 0.4),
            Vector3.of(0, 0, Double.NaN))) {
      assertThatThrownBy(() -> model(withCleat(nowhere))).isInstanceOf(UnusableBoat.class);
    }
  }

  private static void refused(Vector3 at, String message) {
    assertThatThrownBy(() -> model(withCleat(at)))
        .isInstanceOf(UnusableBoat.class)
        .hasMessage(message);
  }

  /** A box 3 m long, 1.2 m wide and 0.4 m deep, with a ring. */
  private static Boat withCleat(Vector3 at) {
    Boat boat = BoxBoat.of(3, 1.2, 0.4).boat();
    return new Boat(
        boat.name(),
        boat.water(),
        boat.hull(),
        boat.openings(),
        boat.chambers(),
        boat.places(),
        boat.kit(),
        boat.aboard(),
        boat.propulsion(),
        List.of(new Cleat("ring", at)),
        Optional.empty(),
        boat.waters(),
        boat.measuredBy(),
        boat.assumptions());
  }

  private static Opening shut(String name, Vector3 at, Optional<String> into) {
    return new Opening(name, at, 0.03, true, Optional.of("bung"), into, Optional.empty());
  }

  private static BoatModel model(Boat boat) {
    return BoatModel.of(boat, LocalDate.of(2026, 11, 25));
  }

  private static Kit kit(double x, double y) {
    return new Kit("battery", 20, Vector3.of(x, y, 0.1), Optional.empty(), true, Optional.empty());
  }

  private static Opening notch(double x, double z) {
    return new Opening("notch", Vector3.of(x, 0, z), 0.3, true);
  }

  private static Chamber air(String name, Span x) {
    return new Chamber(
        name,
        new Box(x, Span.ALL, Span.ALL),
        new Filling.Air(Seal.CLAIMED, Optional.empty()),
        Optional.empty(),
        false);
  }

  /** A box 3 m long, 1.2 m wide and 0.4 m deep. */
  private static Boat box(Place place, Kit kit, Opening opening, List<Chamber> chambers) {
    BoxBoat box = BoxBoat.of(3, 1.2, 0.4).place(place).kit(kit).opening(opening);
    chambers.forEach(box::chamber);
    return box.boat();
  }
}
