package thwartwise.inspection;

import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.rules.RuleSet;

/** A box 3 m long and 0.5 m deep of 60 kg, with a thwart amidships, at 1.5 m. */
class OutfitFindingsTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static Boat boat(String... kit) {
    BoxBoat box = BoxBoat.of(3, 1.2, 0.5).hull(60, 0.2).place("thwart", 1.5, 0.25, 0.4, 1);
    Stream.of(kit).forEach(name -> box.weight(name, 10, Vector3.of(1, 0, 0.1)));
    return box.boat();
  }

  private static List<Finding> findings(Boat boat) {
    return OutfitFindings.of(BoatModel.of(boat, BoxBoat.TODAY), RULES);
  }

  private static Finding only(Boat boat, CheckId check) {
    List<Finding> found =
        findings(boat).stream().filter(f -> f.question().check() == check).toList();
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  private static Boat rowed(Boat boat, double x) {
    return boat.withOutfit(Outfit.NOT_STATED.with(new Rowlocks(x)));
  }

  @Test
  void a_boat_of_which_nothing_is_known_is_asked_nothing() {
    assertThat(findings(boat("oars"))).isEmpty();
    assertThat(findings(boat("electric motor"))).isEmpty();
    assertThat(findings(boat("electric motor", "battery", "oars"))).isEmpty();
  }

  @Test
  void nobody_goes_out_under_motor_without_oars_or_paddles() {
    Finding alone = only(boat("electric motor", "battery"), CheckId.SECOND_WAY_HOME);
    assertThat(alone.role()).isEqualTo(Role.FORBIDS_AN_ACT);
    assertThat(alone.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(alone.note()).isEqualTo(Note.of(Note.Fact.NOTHING_TO_ROW_WITH));
    assertThat(only(boat("outboard motor", "petrol tank"), CheckId.SECOND_WAY_HOME).note())
        .isEqualTo(Note.of(Note.Fact.NOTHING_TO_ROW_WITH));
  }

  // From the middle of the rower 0.35 m back, a hand more or less.
  @Test
  void rowlocks_are_in_reach_from_a_quarter_to_under_half_a_metre_aft() {
    Finding best = only(rowed(boat("oars"), 1.15), CheckId.ROWING);
    assertThat(best.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(best.question().things()).containsExactly("thwart");
    assertThat(best.value().orElseThrow()).isCloseTo(0, within(1e-12));
    assertThat(only(rowed(boat("oars"), 1.06), CheckId.ROWING).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(only(rowed(boat("oars"), 1.04), CheckId.ROWING).outcome())
        .isEqualTo(Outcome.FALLS_SHORT);
    assertThat(only(rowed(boat("oars"), 1.24), CheckId.ROWING).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(only(rowed(boat("oars"), 1.26), CheckId.ROWING).outcome())
        .isEqualTo(Outcome.FALLS_SHORT);
  }

  @Test
  void oars_whose_rowlocks_no_seat_reaches_are_no_way_home_and_paddles_need_none() {
    assertThat(only(rowed(boat("motor", "battery", "oars"), 1.8), CheckId.SECOND_WAY_HOME).note())
        .isEqualTo(Note.of(Note.Fact.ROWLOCKS_OUT_OF_REACH));
    assertThat(findings(rowed(boat("motor", "battery", "oars"), 1.15)))
        .extracting(f -> f.question().check())
        .containsExactly(CheckId.ROWING);
    assertThat(findings(rowed(boat("motor", "battery", "paddles"), 1.8)))
        .extracting(f -> f.question().check())
        .containsExactly(CheckId.ROWING);
  }

  private static Boat steered(double x, String from) {
    Boat boat =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(60, 0.2)
            .place("stern seat", x, 0.25, 0.4, 1)
            .weight("motor", 10, Vector3.of(-0.1, 0, 0.3))
            .boat();
    return from.isEmpty() ? boat : boat.withKit(List.of(boat.kit().get(0).withWorkedFrom(from)));
  }

  // The motor hangs 0.1 m behind the aft end; an arm and a tiller are 1 m (judgement).
  @Test
  void a_motor_steered_from_a_stated_place_is_within_a_metre_or_needs_an_extension() {
    Finding near = only(steered(0.89, "stern seat"), CheckId.STEERING);
    assertThat(near.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(near.value().orElseThrow()).isCloseTo(0.99, within(1e-12));
    assertThat(near.note()).isEqualTo(Note.NONE);
    Finding far = only(steered(0.91, "stern seat"), CheckId.STEERING);
    assertThat(far.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(far.role()).isEqualTo(Role.INFORMATION);
    assertThat(far.question().things()).containsExactly("stern seat");
    assertThat(far.note()).isEqualTo(Note.of(Note.Fact.TILLER_TOO_SHORT));
    assertThat(findings(steered(0.5, ""))).isEmpty();
  }

  private static Boat twoThwarts(double pins, String oarsFrom) {
    BoxBoat box =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(60, 0.2)
            .place("thwart", 1.5, 0.25, 0.4, 1)
            .place("fore thwart", 2.2, 0.25, 0.4, 1)
            .weight("oars", 4, Vector3.of(1, 0, 0.1))
            .weight("motor", 10, Vector3.of(0, 0, 0.3))
            .weight("battery", 10, Vector3.of(1, 0, 0.1));
    Boat boat = rowed(box.boat(), pins);
    List<Kit> kit = new ArrayList<>(boat.kit());
    kit.set(0, kit.get(0).withWorkedFrom(oarsFrom));
    return boat.withKit(kit);
  }

  // 1.15 suits the thwart at 1.5; from the fore thwart at 2.2 it is 1.05 m aft, 0.70 too far.
  @Test
  void rowlocks_are_judged_from_the_place_stated_for_the_oars_and_not_from_a_better_one() {
    Finding far = only(twoThwarts(1.15, "fore thwart"), CheckId.ROWING);
    assertThat(far.question().things()).containsExactly("fore thwart");
    assertThat(far.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(far.value().orElseThrow()).isCloseTo(0.70, within(1e-12));
    assertThat(only(twoThwarts(1.15, "fore thwart"), CheckId.SECOND_WAY_HOME).note())
        .isEqualTo(Note.of(Note.Fact.ROWLOCKS_OUT_OF_REACH));
    assertThat(only(twoThwarts(1.15, "thwart"), CheckId.ROWING).outcome()).isEqualTo(Outcome.MEETS);
  }

  @Test
  void of_two_pairs_the_one_that_suits_the_stated_place_is_judged_from_it() {
    Boat boat = twoThwarts(1.15, "fore thwart");
    boat = boat.withOutfit(boat.outfit().with(new Rowlocks(1.85)));
    assertThat(findings(boat).stream().filter(f -> f.question().check() == CheckId.ROWING))
        .extracting(f -> f.question().things().get(0), Finding::outcome)
        .containsExactly(tuple("thwart", Outcome.MEETS), tuple("fore thwart", Outcome.MEETS));
  }

  // Three metres deep and a bow ring 0.4 m up: five times is 17 m, seven times 23.8 m.
  @Test
  void the_line_is_five_times_depth_and_bow_on_sand_and_seven_times_elsewhere() {
    Boat ring = boat("anchor").withCleats(List.of(new Cleat("ring", Vector3.of(2.9, 0, 0.4))));
    Outfit sand = Outfit.NOT_STATED.withAnchorDepth(3).withAnchorBottom(AnchorBottom.SAND_OR_MUD);
    Finding enough = only(ring.withOutfit(sand.withAnchorLine(17)), CheckId.ANCHOR_LINE);
    assertThat(enough.limit()).isCloseTo(17, within(1e-9));
    assertThat(enough.role()).isEqualTo(Role.INFORMATION);
    Finding shorter = only(ring.withOutfit(sand.withAnchorLine(16.9)), CheckId.ANCHOR_LINE);
    assertThat(shorter.role()).isEqualTo(Role.FORBIDS_AN_ACT);
    assertThat(shorter.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    Finding unnamed =
        only(
            ring.withOutfit(Outfit.NOT_STATED.withAnchorDepth(3).withAnchorLine(20)),
            CheckId.ANCHOR_LINE);
    assertThat(unnamed.limit()).isCloseTo(23.8, within(1e-9));
    assertThat(unnamed.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  @Test
  void a_line_nobody_measured_is_too_short() {
    Finding none =
        only(boat("anchor").withOutfit(Outfit.NOT_STATED.withAnchorDepth(2)), CheckId.ANCHOR_LINE);
    assertThat(none.value()).isEmpty();
    assertThat(none.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // Hull 60 kg and 10 kg of kit; five in a hundred more is 73.5 kg.
  @Test
  void hull_and_kit_must_not_weigh_more_than_the_trailer_carries() {
    assertThat(only(boat("oars").withTrailer(74), CheckId.ROAD_LOAD).role())
        .isEqualTo(Role.INFORMATION);
    Finding close = only(boat("oars").withTrailer(73), CheckId.ROAD_LOAD);
    assertThat(close.outcome()).isEqualTo(Outcome.BORDERLINE);
    assertThat(close.role()).isEqualTo(Role.FORBIDS_AN_ACT);
    Finding over = only(boat("oars").withTrailer(69), CheckId.ROAD_LOAD);
    assertThat(over.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(over.value().orElseThrow()).isEqualTo(70);
  }
}
