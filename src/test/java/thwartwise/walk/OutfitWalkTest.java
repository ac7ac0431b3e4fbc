package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Cleat;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.AnchorBottom;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.boat.Space;
import thwartwise.geometry.Vector3;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** Rowlocks, cleats, anchor line and leaks, each entered on one line. */
class OutfitWalkTest {
  private static Boat with(String... lines) {
    List<Answer> answers = Sheet.full(true).upTo("outfit.1.any");
    for (String line : lines) {
      Reply reply = Sheet.WALK.take(answers, line);
      assertThat(reply).as(line + ": " + reply).isInstanceOf(Reply.Accepted.class);
      answers = ((Reply.Accepted) reply).answers();
    }
    return Sheet.boat(Sheet.full(true).toTheEnd(answers));
  }

  private static String refused(String line) {
    return ((Reply.Refused) Sheet.WALK.take(Sheet.full(true).upTo("outfit.1.any"), line)).reason();
  }

  @Test
  void enter_asks_nothing_further() {
    List<Answer> answers = Sheet.full(true).upTo("outfit.1.any");
    answers = Sheet.answer(answers, "");
    assertThat(Sheet.open(answers).key()).isEqualTo("bailer");
    Boat none = with("");
    assertThat(none.outfit()).isEqualTo(Outfit.NOT_STATED);
    assertThat(none.cleats()).isEmpty();
  }

  @Test
  void everything_is_entered_on_one_line_each() {
    Boat boat =
        with(
            "rowlocks; 1.2",
            "cleat; bow ring; 3.6; 0; 0.5",
            "anchor; 20 m; 3 m; mud",
            "leak; port chine; 3 l; 30 min",
            "leak; keel; 1 l; 30 min",
            "no");
    assertThat(boat.outfit())
        .isEqualTo(
            new Outfit(
                List.of(new Rowlocks(1.2)),
                List.of(new SeamLeak("port chine", 0.003, 1800), new SeamLeak("keel", 0.001, 1800)),
                Optional.of(20.0),
                Optional.of(3.0),
                Optional.of(AnchorBottom.SAND_OR_MUD)));
    assertThat(boat.cleats()).containsExactly(new Cleat("bow ring", Vector3.of(3.6, 0, 0.5)));
  }

  private static Space foreLocker(Boat boat) {
    return BoatModel.of(boat, Sheet.TODAY).spaces().stream()
        .filter(s -> s.name().equals("fore locker"))
        .findFirst()
        .orElseThrow();
  }

  /** Only there is it known where it is, and into which chamber it leads. */
  @Test
  void a_hatch_or_pocket_is_sent_to_the_openings() {
    String there =
        "A hatch or pocket is one of the openings: type list and change the question for another"
            + " opening; in a walk of changes answer cut.";
    assertThat(refused("hatch; bow hatch; fore locker; shut; 20 cm"))
        .isEqualTo(
            "Value 1 of the row, \"hatch\" for Which of them: "
                + there
                + " Nothing of the row was taken.");
    assertThat(refused("pocket; seat pocket")).contains(there);
  }

  // The sheet's battery lies in the midships thwart; 5 kg of bags loose in the locker take 5
  // litres.
  @Test
  void bags_entered_as_stowed_loose_in_a_chamber_take_up_its_air() {
    List<Answer> answers = Sheet.full(true).upTo("kit.3.any");
    answers =
        ((Reply.Accepted) Sheet.WALK.take(answers, "bags; 5; 3; 0; 0.2; no; fore; ")).answers();
    Space stowed = foreLocker(Sheet.boat(Sheet.full(true).toTheEnd(answers)));
    Space empty = foreLocker(with(""));
    assertThat(1000 * (lift(empty) - lift(stowed))).isCloseTo(5, within(1e-6));
  }

  private static double lift(Space space) {
    return space.solid().volume() * space.counting().share();
  }

  @Test
  void a_leak_without_its_time_is_no_rate() {
    assertThat(refused("leak; port chine; 3 l; "))
        .startsWith("Value 4 of the row, \"\" for Leak ")
        .endsWith("Nothing of the row was taken.");
  }

  @Test
  void in_a_walk_of_changes_a_seam_that_is_watched_again_leaks_as_it_does_now() {
    Boat before =
        Sheet.full(true)
            .boat()
            .withOutfit(Outfit.NOT_STATED.with(new SeamLeak("keel", 0.002, 1800)));
    Boat after =
        ChangedSheet.of(before)
            .with("changed.1", "outfit")
            .with("changed.1.what", "leak")
            .with("changed.1.seam", "keel")
            .with("changed.1.litres", "8")
            .with("changed.1.minutes", "20")
            .boat();
    assertThat(after.outfit().leaks()).containsExactly(new SeamLeak("keel", 0.008, 1200));
  }
}
