package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Opening;
import thwartwise.boat.Space;
import thwartwise.checks.HatchLeftOpen;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.report.BuoyancyReasonWords;
import thwartwise.walk.engine.Answer;

/** What an opening is decides what is asked of it, and where it leads. */
class OpeningsInTheWalkTest {
  /** Its transom is raked: 0.06 m forward at the keel, 0 at the rail 0.48 m up. */
  private static final Sheet DEMO = CountedWalks.demo();

  private static List<String> asked(Sheet sheet, int number) {
    String group = "opening." + number + ".";
    return sheet.upTo("opening." + (number + 1) + ".any").stream()
        .map(Answer::question)
        .filter(key -> key.startsWith(group))
        .map(key -> key.substring(group.length()))
        .toList();
  }

  private static Opening opening(Sheet sheet, int number) {
    return sheet.boat().openings().get(number - 1);
  }

  /** The transom runs from (0.06, 0.09) to (0, 0.48): at 0.39 m up it is 0.06 x 9 / 39 forward. */
  @Test
  void a_notch_is_where_the_transom_is_at_its_height() {
    assertThat(asked(DEMO, 1)).containsExactly("any", "kind", "name", "y", "z", "width");
    Opening notch = opening(DEMO, 1);
    assertThat(notch.middle().x()).isCloseTo(0.06 * 9 / 39, within(1e-12));
    assertThat(notch.middle().z()).isEqualTo(0.39);
    assertThat(notch.athwart()).isTrue();
    assertThat(notch.floodsTheBoat()).isTrue();
  }

  @Test
  void a_drain_has_a_diameter_and_may_go_through_the_transom() {
    assertThat(asked(DEMO, 2))
        .containsExactly("any", "kind", "into", "name", "x", "y", "z", "diameter", "closedBy");
    Opening drain = opening(DEMO, 2);
    assertThat(drain.diameter()).contains(0.022);
    assertThat(drain.width()).isEqualTo(0.022);
    assertThat(drain.closedBy()).contains("bung");
    assertThat(drain.into()).isEmpty();
    // 0.11 m up: 0.06 x 37 / 39 forward.
    assertThat(drain.middle().x()).isCloseTo(0.06 * 37 / 39, within(1e-12));
    assertThat(opening(DEMO.with("opening.2.x", "1.06"), 2).middle())
        .isEqualTo(Vector3.of(1.06, 0.2, 0.11));
  }

  @Test
  void a_hatch_leads_into_its_chamber() {
    assertThat(asked(DEMO, 3))
        .containsExactly("any", "kind", "into", "name", "x", "y", "z", "width", "closedBy");
    Opening hatch = opening(DEMO, 3);
    assertThat(hatch.into()).contains("bow locker");
    assertThat(hatch.closedBy()).contains("hatch lid");
    assertThat(hatch.athwart()).isTrue();
    assertThat(DEMO.refused("opening.3.x", "2.5"))
        .isEqualTo(
            "2.50 m is not at the bow locker, which lies from 3.31 m to 4.02 m. Measure it again, or"
                + " back.");
  }

  private static Space bowLocker(Boat boat) {
    return BoatModel.of(boat, Sheet.TODAY).spaces().stream()
        .filter(space -> space.name().equals("bow locker"))
        .findFirst()
        .orElseThrow();
  }

  /** Of it a checklist asks after lid and seal, and it is tried left open. */
  @Test
  void a_hatch_that_is_shut_is_tried_open_and_one_that_nothing_shuts_fills_its_chamber() {
    Boat shut = DEMO.boat();
    assertThat(opening(DEMO, 3).isHatch()).isTrue();
    BoatModel model = BoatModel.of(shut, Sheet.TODAY);
    assertThat(
            new HatchLeftOpen(RuleSetFile.cautiousDefault())
                .readings(LoadedBoat.of(model, model.aboard())))
        .extracting(reading -> reading.question().things())
        .contains(List.of("hatch of the bow locker"));
    assertThat(bowLocker(shut).counting().share()).isPositive();
    Boat open = DEMO.with("opening.3.closedBy", "no").boat();
    assertThat(BuoyancyReasonWords.of(bowLocker(open).counting().why(), UnitFormat.METRIC))
        .isEqualTo("has an opening that nothing closes, the hatch of the bow locker: it fills");
  }

  @Test
  void a_pocket_or_deck_plate_is_a_hatch_in_the_deck_or_seat() {
    for (String word : List.of("pocket", "screw-in pocket", "deck plate", "hatch in the deck")) {
      assertThat(DEMO.accepted("opening.3.kind", word)).isEqualTo("Opening: deck hatch");
    }
    assertThat(DEMO.refused("opening.3.kind", "hatch"))
        .isEqualTo(
            "A hatch lies in a deck or a seat top (deck hatch) or stands in an upright face (face"
                + " hatch). Type which of the two.");
    Boat cut =
        ChangedSheet.of(DEMO.boat())
            .with("changed.1", "pocket")
            .with("changed.1.kind", "pocket")
            .with("changed.1.into", "bow locker")
            .with("changed.1.x", "3.5")
            .with("changed.1.y", "0")
            .with("changed.1.z", "0.4")
            .with("changed.1.width", "0.12")
            .boat();
    Opening pocket = cut.openings().get(cut.openings().size() - 1);
    assertThat(pocket.into()).contains("bow locker");
    assertThat(pocket.floodsTheBoat()).isFalse();
  }

  /** Between the ends of a side tank there is only its front, and that runs along. */
  @Test
  void a_hatch_in_the_front_of_a_side_seat_runs_along() {
    Sheet side =
        DEMO.with("opening.3.into", "stern bench box, port")
            .with("opening.3.x", "0.7")
            .with("opening.3.y", "0.34");
    assertThat(opening(side, 3).athwart()).isFalse();
    assertThat(opening(side, 3).into()).contains("stern bench box, port");
    assertThat(opening(side.with("opening.3.x", "1.21"), 3).athwart()).isTrue();
  }

  @Test
  void an_oar_notch_is_where_the_rail_is() {
    Sheet notched =
        DEMO.with("opening.1.kind", "oar notch")
            .with("opening.1.x", "2.06")
            .with("opening.1.side", "starboard")
            .with("opening.1.z", "0.43")
            .with("opening.1.width", "8 cm");
    assertThat(asked(notched, 1)).containsExactly("any", "kind", "name", "x", "side", "z", "width");
    assertThat(opening(notched, 1).middle()).isEqualTo(Vector3.of(2.06, -0.74, 0.43));
    assertThat(opening(notched, 1).athwart()).isFalse();
  }

  @Test
  void a_cable_hole_into_a_chamber_is_open_until_something_shuts_it() {
    Sheet wired =
        DEMO.with("opening.3.kind", "cable hole")
            .with("opening.3.name", "")
            .with("opening.3.diameter", "15 mm")
            .with("opening.3.closedBy", "");
    Opening hole = opening(wired, 3);
    assertThat(hole.name()).isEqualTo("cable hole of bow locker");
    assertThat(hole.closedBy()).isEmpty();
    assertThat(hole.into()).contains("bow locker");
    assertThat(wired.refused("opening.3.diameter", "15"))
        .isEqualTo(
            "15.00 m is not between 0.01 and 0.1 m, the diameter of such a hole. Did you mean 15 mm?");
  }

  @Test
  void of_anything_else_everything_is_asked() {
    Sheet other = Sheet.full(true);
    assertThat(asked(other, 1))
        .containsExactly("any", "kind", "into", "name", "x", "y", "z", "width", "closedBy", "edge");
    assertThat(opening(other, 1).into()).isEqualTo(Optional.empty());
  }

  @Test
  void names_follow_from_what_it_is() {
    Sheet drains =
        DEMO.with("opening.1.kind", "drain").with("opening.1.name", "").with("opening.2.name", "");
    assertThat(Sheet.open(drains.upTo("opening.1.name")).prompt())
        .isEqualTo("Opening, name [Enter: drain]:");
    assertThat(
            Sheet.open(
                    drains
                        .with("opening.1.into", "boat")
                        .with("opening.1.x", "transom")
                        .with("opening.1.diameter", "2 cm")
                        .upTo("opening.2.name"))
                .prompt())
        .isEqualTo("Opening, name [Enter: drain 2]:");
  }

  /** A row of a kind may leave the name out; what it is may be said where another is asked for. */
  @Test
  void what_it_is_and_a_row_are_two_lines() {
    assertThat(Sheet.open(DEMO.upTo("opening.1.name")).prompt())
        .isEqualTo("Notch (name; to port; up; length):");
    assertThat(Sheet.open(DEMO.upTo("opening.2.into")).prompt())
        .isEqualTo("Drain (leads into; name; forward; to port; up; diameter; shut by):");
    List<Answer> kind = Sheet.answer(DEMO.upTo("opening.2.any"), "drain");
    List<Answer> row = Sheet.answer(kind, "boat; ; transom; 0.2; 0.11; 22 mm; bung");
    assertThat(Sheet.open(row).key()).isEqualTo("opening.3.any");
    List<Answer> notch = Sheet.answer(DEMO.upTo("opening.1.any"), "notch");
    assertThat(Sheet.answer(notch, "0; 0.39; 0.32").get(notch.size()).typed()).isEmpty();
  }

  /** A row is typed there, so that is where the drawing is wanted. */
  @Test
  void what_is_measured_where_is_drawn_where_a_row_begins() {
    for (String question : List.of("any", "kind", "into")) {
      assertThat(Sheet.open(DEMO.upTo("opening.3." + question)).sketch())
          .as(question)
          .isNotEmpty()
          .allMatch(line -> line.length() <= 78);
    }
  }

  /** Enter said "nothing" and no word of what a hole costs that nothing shuts. */
  @Test
  void a_hole_that_nothing_shuts_says_what_becomes_of_a_tested_chamber() {
    assertThat(DEMO.accepted("opening.3.closedBy", ""))
        .endsWith("nothing (bow locker then counts for nothing, whatever its leak test showed)");
    assertThat(DEMO.accepted("opening.3.closedBy", "hatch lid")).endsWith("hatch lid");
  }
}
