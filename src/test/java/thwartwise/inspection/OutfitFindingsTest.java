package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.AnchorBottom;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Outfit;
import thwartwise.boat.Rowlocks;
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
