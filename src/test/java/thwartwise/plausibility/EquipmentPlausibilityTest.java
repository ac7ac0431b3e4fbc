package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Cleat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.checks.Finding;
import thwartwise.checks.FindingText;
import thwartwise.checks.Role;
import thwartwise.crew.Refusal;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.PlainHulls;
import thwartwise.measure.UnitFormat;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.report.PlausibilityWords;
import thwartwise.rules.RuleSet;

class EquipmentPlausibilityTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  /** 3.6 m long, rails 1.35 m apart and at most 0.60 m high. */
  private static final Boat SKIFF = PlainHulls.skiff();

  private static List<PlausibilityFinding> doubts(Boat boat) {
    return Plausibility.of(BoatModel.of(boat, PlainHulls.TODAY), RULES).stream()
        .filter(PlausibilityFinding::isDoubtful)
        .toList();
  }

  private static PlausibilityFinding only(Boat boat) {
    List<PlausibilityFinding> doubts = doubts(boat);
    assertThat(doubts).hasSize(1);
    return doubts.get(0);
  }

  private static Boat with(double x, double y, double z) {
    Vector3 at = Vector3.of(x, y, z);
    List<Kit> kit = new ArrayList<>(SKIFF.kit());
    kit.add(new Kit("tool box", 20, at, Optional.empty(), true, Optional.empty()));
    return SKIFF.withKit(kit);
  }

  private static Boat with(Opening opening) {
    return SKIFF.withOpenings(List.of(opening));
  }

  private static Opening hole(double z, double width, Optional<String> lid, Optional<String> into) {
    return new Opening("hole", Vector3.of(0, 0, z), width, true, lid, into, Optional.empty());
  }

  @Test
  void nothing_of_a_plain_skiff_is_doubted() {
    assertThat(doubts(SKIFF)).isEmpty();
  }

  @Test
  void a_tool_box_a_metre_under_the_keel_is_doubted() {
    PlausibilityFinding doubt = only(with(1.8, 0, -1));
    assertThat(doubt.id().text()).isEqualTo("kit:tool box");
    assertThat(PlausibilityWords.of(doubt, UnitFormat.METRIC))
        .isEqualTo(
            "kit \"tool box\", height of its middle: -1.00 m, limit 0.00 m; that is under"
                + " the keel: measure up from the lowest point of the bottom");
    assertThat(doubts(with(1.8, 0, -0.01))).isEmpty();
  }

  @Test
  void kit_far_outside_or_far_above_the_rail_is_doubted_and_a_motor_and_an_anchor_are_not() {
    assertThat(only(with(1.7, 1.4, 0.3)).finding().value().orElseThrow()).isBetween(0.72, 0.73);
    assertThat(PlausibilityWords.of(only(with(4.3, 0, 0.3)), UnitFormat.METRIC))
        .isEqualTo(
            "kit \"tool box\", how far outside the hull: 0.70 m, limit 0.60 m; measure"
                + " again where its middle lies");
    assertThat(doubts(with(1.7, 0, 2.3))).hasSize(1);
    assertThat(doubts(with(-0.15, 0, 0.4))).isEmpty();
    assertThat(doubts(with(4.0, 0, 0.5))).isEmpty();
    assertThat(doubts(with(1.7, 0, 1.2))).isEmpty();
  }

  /** A boat is narrow at the stem: half its beam lies well outside there. */
  @Test
  void a_cleat_abreast_of_nothing_is_doubted() {
    assertThat(doubts(cleat(Vector3.of(3.5, 0.5, 0.5)))).hasSize(1);
    assertThat(only(cleat(Vector3.of(3.5, 0.5, 0.5))).id().text()).isEqualTo("cleat:ring");
    assertThat(doubts(cleat(Vector3.of(3.6, 0, 0.4)))).isEmpty();
    assertThat(doubts(cleat(Vector3.of(1.7, 0.7, 0.45)))).isEmpty();
  }

  private static Boat cleat(Vector3 at) {
    return new Boat(
        SKIFF.name(),
        SKIFF.water(),
        SKIFF.hull(),
        SKIFF.openings(),
        SKIFF.chambers(),
        SKIFF.places(),
        SKIFF.kit(),
        SKIFF.aboard(),
        SKIFF.propulsion(),
        List.of(new Cleat("ring", at)),
        SKIFF.bailer(),
        SKIFF.waters(),
        SKIFF.measuredBy(),
        SKIFF.assumptions());
  }

  /** 0.45 m a person (BinSchUO, READ); the limits of a place are for the middle of a person. */
  @Test
  void twenty_people_on_a_thwart_for_one_are_doubted_and_two_on_one_for_two_are_not() {
    PlausibilityFinding doubt = only(seat(0.25, 20));
    assertThat(PlausibilityWords.of(doubt, UnitFormat.METRIC))
        .isEqualTo(
            "place \"thwart\", length of seat its people take: 9.00 m, limit 0.95 m;"
                + " fewer people sit there, or it reaches farther out");
    assertThat(doubt.finding().source())
        .isEqualTo("0.45 m of seat for each person (BinSchUO) (READ)");
    assertThat(doubts(seat(0.25, 2))).isEmpty();
    assertThat(doubts(seat(0.20, 2))).hasSize(1);
    assertThat(doubts(seat(0, 1))).isEmpty();
  }

  /** 0.36 m written as 0.036. */
  @Test
  void a_seat_three_centimetres_wide_is_doubted_and_one_without_width_is_not() {
    assertThat(PlausibilityWords.of(only(seat(0.036, 1)), UnitFormat.METRIC))
        .isEqualTo(
            "place \"thwart\", how far out from the middle line: 0.03 m, limit 0.07 m; did"
                + " the decimal point slip? For a seat on which nobody can move to one side write"
                + " 0");
    assertThat(doubts(seat(0.07, 1))).isEmpty();
  }

  private static Boat seat(double halfWidth, int people) {
    return SKIFF.withPlaces(List.of(new Place("thwart", 1.69, 0.25, halfWidth, people)));
  }

  @Test
  void a_lidded_hole_of_half_a_metre_just_above_the_keel_is_doubted() {
    Optional<String> lid = Optional.of("lid");
    PlausibilityFinding doubt = only(with(hole(0.08, 0.5, lid, Optional.empty())));
    assertThat(PlausibilityWords.of(doubt, UnitFormat.METRIC))
        .isEqualTo(
            "opening \"hole\", so low in the hull, its width: 0.50 m, limit 0.15 m;"
                + " measure its lowest edge and its width again");
    assertThat(doubts(with(hole(0.08, 0.03, lid, Optional.empty())))).isEmpty();
    assertThat(doubts(with(hole(0.35, 0.5, lid, Optional.empty())))).isEmpty();
    // One that nothing closes floods the boat there, and a hatch into a locker lies inside it.
    assertThat(doubts(with(hole(0.08, 0.5, Optional.empty(), Optional.empty())))).isEmpty();
    assertThat(doubts(with(hole(0.08, 0.5, lid, Optional.of("bow locker"))))).isEmpty();
  }

  @Test
  void what_is_kept_with_a_reason_withholds_nothing_and_says_so() {
    Boat boat = with(1.8, 0, -1);
    Finding doubted = only(boat).finding();
    assertThat(doubted.role()).isEqualTo(Role.LIMITS_CREW);
    assertThat(only(boat).withholds()).isTrue();
    PlausibilityFinding kept =
        only(
            boat.withConfirmedMeasurements(
                List.of(new ConfirmedMeasurement("kit:tool box", "ballast in a bulb"))));
    assertThat(kept.withholds()).isFalse();
    assertThat(kept.finding().role()).isEqualTo(Role.INFORMATION);
    assertThat(FindingText.note(kept.finding())).isEqualTo("kept: ballast in a bulb");
    // Another one's reason is none.
    assertThat(
            only(boat.withConfirmedMeasurements(
                    List.of(new ConfirmedMeasurement("kit:anchor", "so it is"))))
                .withholds())
        .isTrue();
  }

  @Test
  void a_reason_given_for_one_measurement_stands_for_no_other() {
    ConfirmedMeasurement kept =
        new ConfirmedMeasurement("kit:tool box", "ballast in a bulb", Optional.of("-1 m"));
    Boat as = with(1.8, 0, -1);
    assertThat(only(as).measured()).isEqualTo("-1 m");
    assertThat(only(as.withConfirmedMeasurements(List.of(kept))).withholds()).isFalse();
    PlausibilityFinding deeper = only(with(1.8, 0, -1.2).withConfirmedMeasurements(List.of(kept)));
    assertThat(deeper.withholds()).isTrue();
    assertThat(
            FindingText.refusals(
                List.of(new Refusal.Implausible(deeper.id(), deeper.isConfirmedForOtherValue()))))
        .containsExactly(
            "a measurement looks wrong: kit \"tool box\" (what it was before was kept with a reason;"
                + " it was measured anew since). Measure it again; if it is right, keep it with a"
                + " reason (\"kept\", about \"kit:tool box\")");
  }

  @Test
  void an_identity_is_read_as_it_is_written() {
    for (PlausibilityTopic topic : PlausibilityTopic.values()) {
      PlausibilityId id = new PlausibilityId(topic, topic.isNamed() ? "a: b" : "");
      assertThat(PlausibilityId.parse(id.text())).hasValue(id);
    }
    assertThat(PlausibilityId.parse("hull-mass:x")).isEmpty();
    assertThat(PlausibilityId.parse("station")).isEmpty();
    assertThat(PlausibilityId.parse("station:")).isEmpty();
    assertThat(PlausibilityId.parse("hullmass")).isEmpty();
  }
}
