package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.checks.Finding;
import thwartwise.checks.FindingText;
import thwartwise.checks.Role;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.inspection.PlainHulls;
import thwartwise.measure.UnitFormat;
import thwartwise.report.PlausibilityWords;
import thwartwise.rules.RuleSet;
import thwartwise.sampleboats.BoatEdits;
import thwartwise.sampleboats.OrdinaryBoats;

/** Heights of seats and boxes, on a pram whose thwart box is 0.26 m high and carries the seat. */
class SeatPlausibilityTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final Boat PRAM = OrdinaryBoats.all().get(0);

  private static List<PlausibilityFinding> of(Boat boat) {
    return SeatPlausibility.of(BoatModel.of(boat, OrdinaryBoats.TODAY), new PlausibleLimits(RULES));
  }

  @Test
  void a_seat_written_in_inches_for_centimetres_is_inside_its_box() {
    PlausibilityFinding doubt = only(BoatEdits.withPlace(PRAM, 0, p -> p.at(0.26 / 2.54)));
    Finding finding = doubt.finding();
    assertThat(doubt.id().text()).isEqualTo("seat:middle thwart");
    assertThat(doubt.withholds()).isTrue();
    assertThat(FindingText.check(finding)).isEqualTo("seat \"middle thwart\", height");
    assertThat(finding.role()).isEqualTo(Role.LIMITS_CREW);
    assertThat(finding.limit()).isEqualTo(0.26);
    assertThat(FindingText.note(finding))
        .isEqualTo(
            "that is inside the chamber \"middle thwart\": measure the seat's height and the"
                + " chamber's top again");
    assertThat(finding.source())
        .isEqualTo("nobody sits inside a sealed box; the tape may be off by as much (judgement)");
  }

  /** 3 cm is what tape and cushion may differ by. */
  @ParameterizedTest
  @ValueSource(doubles = {0.231, 0.26, 0.37})
  void a_seat_at_the_top_of_its_box_or_over_it_is_not_doubted(double height) {
    assertThat(of(BoatEdits.withPlace(PRAM, 0, p -> p.at(height)))).isEmpty();
  }

  /** 0.26 written as 0.66; the rail abreast of it is 0.42 m high. */
  @Test
  void a_seat_above_the_rail_is_doubted() {
    Boat high = PRAM.withPlaces(List.of(new Place("rowing seat", 0.80, 0.66, 0.2, 1)));
    assertThat(PlausibilityWords.of(only(high), UnitFormat.METRIC))
        .isEqualTo(
            "seat \"rowing seat\", height: 0.66 m, limit 0.50 m; that is too high to sit"
                + " on: were those centimetres where inches are meant, or is it measured from the"
                + " ground?");
    assertThat(of(PRAM.withPlaces(List.of(new Place("rowing seat", 0.80, 0.48, 0.2, 1)))))
        .isEmpty();
  }

  /** The top of the box under the seat, 0.26 m, written as 0.10. */
  @Test
  void a_seat_high_above_the_box_of_its_name_is_doubted() {
    Boat low = BoatEdits.withChamber(PRAM, 2, c -> up(c, 0.10));
    assertThat(PlausibilityWords.of(only(low), UnitFormat.METRIC))
        .isEqualTo(
            "seat \"middle thwart\", height above the chamber of that name: 0.16 m, limit"
                + " 0.12 m; measure the seat's height and the chamber's top again, each in the unit"
                + " asked for");
  }

  @Test
  void a_box_written_too_high_holds_the_seat_on_it() {
    Boat tall = BoatEdits.withChamber(PRAM, 2, c -> up(c, 0.26 * 1.5));
    assertThat(FindingText.note(only(tall).finding()))
        .contains("inside the chamber \"middle thwart\"");
  }

  @Test
  void a_box_that_ends_above_the_hull_is_doubted_with_the_seat_on_it() {
    Boat tall = BoatEdits.withChamber(PRAM, 0, c -> up(c, 3.4));
    PlausibilityFinding doubt = only(tall);
    assertThat(doubt.id().text()).isEqualTo("chamber-top:bow box");
    assertThat(FindingText.check(doubt.finding()))
        .isEqualTo("chamber \"bow box\", height of its top");
    assertThat(FindingText.note(doubt.finding()))
        .isEqualTo(
            "that is above the whole hull: measure it again, or leave it out where the chamber"
                + " reaches the rail");
  }

  @Test
  void a_box_to_the_rail_needs_no_height() {
    Boat open =
        BoatEdits.withChamber(PRAM, 0, c -> within(c, new Box(c.box().x(), c.box().y(), Span.ALL)));
    assertThat(of(open)).isEmpty();
  }

  @Test
  void a_thwart_a_few_centimetres_above_the_floor_is_doubted_with_its_whole_text() {
    Boat low = PRAM.withPlaces(List.of(new Place("rowing seat", 0.80, 0.10, 0.2, 1)));
    Finding finding = only(low).finding();
    assertThat(FindingText.check(finding))
        .isEqualTo("seat \"rowing seat\", height above the floor");
    assertThat(finding.limit()).isEqualTo(0.12);
    assertThat(FindingText.note(finding))
        .isEqualTo(
            "measure it from the lowest point of the bottom, in centimetres or inches as asked;"
                + " who kneels or stands there has a posture of its own");
  }

  @Test
  void who_kneels_may_be_as_low_as_the_floor() {
    Place kneeling =
        new Place("mat", new Span(0.8, 0.8), new Span(-0.2, 0.2), 0.04, 1, Posture.KNEELING);
    assertThat(of(PRAM.withPlaces(List.of(kneeling)))).isEmpty();
  }

  @Test
  void a_canoe_knelt_in_from_low_thwarts_is_not_doubted() {
    assertThat(of(PlainHulls.kneltInCanoe())).isEmpty();
  }

  /** The full breadth for the half, and heights in centimetres for inches, of all eleven kinds. */
  @Test
  void breadths_and_heights_in_different_units_show_in_the_depth_amidships() {
    for (Boat sound : OrdinaryBoats.all()) {
      Boat boat = sound.withPlaces(List.of()).withChambers(List.of());
      assertThat(depth(boat)).as(boat.name()).isEmpty();
      assertThat(depth(BoatEdits.withEveryStation(boat, BoatEdits.outBy(2))))
          .as(boat.name())
          .isPresent();
      assertThat(depth(BoatEdits.withEveryStation(boat, BoatEdits.upBy(2.54))))
          .as(boat.name())
          .isPresent();
      assertThat(depth(BoatEdits.withEveryStation(boat, BoatEdits.outBy(1 / 2.54))))
          .as(boat.name())
          .isPresent();
    }
  }

  @Test
  void the_depth_is_doubted_with_its_whole_text() {
    Boat broad = BoatEdits.withEveryStation(PRAM, BoatEdits.outBy(2));
    Finding finding = depth(broad).orElseThrow().finding();
    // 0.42 m deep at half the length, the rail of the middle station; twice 1.26 m broad.
    assertThat(finding.value().orElseThrow()).isBetween(0.42 / 2.52 - 0.001, 0.42 / 2.52 + 0.001);
    assertThat(FindingText.check(finding))
        .isEqualTo("depth of the hull amidships as a share of its breadth");
    assertThat(FindingText.note(finding))
        .isEqualTo(
            "was the full breadth taped where half is asked for, or were heights and breadths"
                + " written in different units?");
  }

  @Test
  void the_limit_of_the_breadth_falls_with_the_length() {
    PlausibleLimits limits = new PlausibleLimits(RULES);
    assertThat(limits.breadthOverLength(2.0)).isEqualTo(0.65);
    assertThat(limits.breadthOverLength(2.5)).isEqualTo(0.65);
    assertThat(limits.breadthOverLength(4.25)).isEqualTo((0.65 + 0.48) / 2);
    assertThat(limits.breadthOverLength(6.0)).isEqualTo(0.48);
    assertThat(limits.breadthOverLength(7.0)).isEqualTo(0.48);
  }

  private static Optional<PlausibilityFinding> depth(Boat boat) {
    Stream<PlausibilityFinding> all =
        Plausibility.of(BoatModel.of(boat, OrdinaryBoats.TODAY), RULES).stream();
    return all.filter(f -> f.id().text().equals("depth")).findFirst();
  }

  private static PlausibilityFinding only(Boat boat) {
    List<PlausibilityFinding> found = of(boat);
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Chamber up(Chamber c, double top) {
    return within(c, new Box(c.box().x(), c.box().y(), new Span(0, top)));
  }

  private static Chamber within(Chamber c, Box box) {
    return new Chamber(c.name(), box, c.filling(), c.measuredVolume(), c.mirrored());
  }
}
