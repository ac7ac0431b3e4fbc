package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.loadcase.Allowance;
import thwartwise.rules.RuleSet;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** How things were measured, as the walk asks for it, and the walk of changes. */
class MethodsInTheWalkTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static MeasuringMethod said(MeasurementKind kind, MeasuringWay way) {
    return new MeasuringMethod(kind, Optional.empty(), way);
  }

  private static MeasuringMethod battery(MeasuringWay way) {
    return new MeasuringMethod(MeasurementKind.KIT_WEIGHTS, Optional.of("battery"), way);
  }

  private static Allowance allowance(Boat boat) {
    return Allowance.of(RULES, BoatModel.of(boat, Sheet.TODAY));
  }

  @Test
  void enter_asks_nothing_further_and_the_boat_is_as_before() {
    List<Answer> answers = Sheet.answer(Sheet.full(true).upTo("measuredHow.any"), "");
    assertThat(Sheet.open(answers).key()).isEqualTo("finish");
    Boat boat = Sheet.full(true).boat();
    assertThat(boat.methods()).isEmpty();
    assertThat(allowance(boat)).isEqualTo(new Allowance(1.05, 0.8, 0.04));
  }

  @Test
  void each_kind_and_one_thing_that_differs_are_said() {
    assertThat(Sheet.saidHow().boat().methods())
        .containsExactlyInAnyOrder(
            said(MeasurementKind.HALF_BREADTHS, MeasuringWay.STEEL_TAPE),
            said(MeasurementKind.EDGE_HEIGHTS, MeasuringWay.TAUT_LINE),
            said(MeasurementKind.HULL_WEIGHT, MeasuringWay.BATHROOM_SCALES),
            said(MeasurementKind.KIT_WEIGHTS, MeasuringWay.LUGGAGE_SCALE),
            said(MeasurementKind.CHAMBER_LITRES, MeasuringWay.JUG),
            battery(MeasuringWay.GUESS));
  }

  /** Yes, and Enter at each: nothing is more exact than where nobody was asked. */
  @Test
  void yes_and_enter_at_every_kind_say_nothing() {
    Sheet sheet = Sheet.full(true).with("measuredHow.any", "yes");
    assertThat(sheet.toTheEnd())
        .extracting(Answer::question)
        .contains("measuredHow.edge heights", "measuredHow.people's weights");
    assertThat(sheet.boat()).isEqualTo(Sheet.full(true).boat());
  }

  @Test
  void the_repeat_says_what_it_counts_as() {
    Sheet sheet = Sheet.full(true).with("measuredHow.any", "yes");
    assertThat(repeat(sheet, "hull weight", "bathroom"))
        .isEqualTo("Bare hull, how weighed: bathroom scales (right to 4 % in 95 of 100)");
    assertThat(repeat(sheet, "edge heights", "taut line"))
        .endsWith("taut line (right to 10\u00a0mm in 95 of 100)");
    assertThat(repeat(sheet, "hull weight", "guess"))
        .endsWith("guess (off by 3 times what counts where nobody says how)");
    assertThat(repeat(sheet, "hull weight", "")).endsWith("how weighed: not said");
  }

  private static String repeat(Sheet sheet, String kind, String typed) {
    return ((Reply.Accepted) Sheet.WALK.take(sheet.upTo("measuredHow." + kind), typed))
        .understood();
  }

  @Test
  void all_kinds_can_be_said_in_a_row() {
    List<Answer> answers = Sheet.full(true).upTo("measuredHow.any");
    Reply reply = Sheet.WALK.take(answers, "bathroom; luggage; bath; roller; no; steel");
    assertThat(reply).as(reply.toString()).isInstanceOf(Reply.Accepted.class);
    assertThat(Sheet.open(((Reply.Accepted) reply).answers()).key())
        .isEqualTo("measuredHow.bottom heights");
  }

  /** What was not measured on this boat, or guessed in its own answer, is not asked. */
  @Test
  void only_what_was_measured_is_asked() {
    List<Answer> small = Sheet.small().with("measuredHow.any", "yes").toTheEnd();
    assertThat(small)
        .extracting(Answer::question)
        .contains("measuredHow.hull weight", "measuredHow.half-breadths")
        .doesNotContain(
            "measuredHow.kit weights",
            "measuredHow.people's weights",
            "measuredHow.hull balance",
            "measuredHow.hull inclined",
            "measuredHow.shell thickness",
            "measuredHow.soaked density",
            "measuredHow.chamber litres");
    Boat guessed =
        Sheet.full(true).with("hull.mass", "guess 60 kg").with("measuredHow.any", "yes").boat();
    assertThat(guessed.methods()).contains(said(MeasurementKind.HULL_WEIGHT, MeasuringWay.GUESS));
    assertThat(
            Sheet.full(true)
                .with("hull.mass", "guess 60 kg")
                .with("measuredHow.any", "yes")
                .toTheEnd())
        .extracting(Answer::question)
        .doesNotContain("measuredHow.hull weight");
  }

  /** 1.6449 times 5 mm of a taut line, and the 20 mm that three stations leave out. */
  @Test
  void what_is_said_reaches_the_allowance() {
    assertThat(allowance(Sheet.saidHow().boat()).freeboardLoss()).isEqualTo(1.6449 * 0.005 + 0.02);
  }

  @Test
  void a_refit_shows_what_was_said_and_enter_keeps_it() {
    Boat before = Sheet.saidHow().boat();
    ChangedSheet sheet = ChangedSheet.of(before).with("changed.1", "how measured");
    assertThat(sheet.questions())
        .anyMatch(
            q ->
                q.key().equals("changed.1.measuredHow.hull weight")
                    && q.skipped().equals(Optional.of("bathroom scales")))
        .anyMatch(
            q ->
                q.key().equals("changed.1.measuredHow.other.1.any")
                    && q.how().contains("So far: kit weights of the battery: guess."));
    assertThat(sheet.boat().methods()).containsExactlyInAnyOrderElementsOf(before.methods());
  }

  @Test
  void a_refit_changes_and_takes_back_what_was_said() {
    Boat after =
        ChangedSheet.of(Sheet.saidHow().boat())
            .with("changed.1", "how measured")
            .with("changed.1.measuredHow.hull weight", "not said")
            .with("changed.1.measuredHow.kit weights", "bathroom")
            .with("changed.1.measuredHow.other.1.any", "yes")
            .with("changed.1.measuredHow.other.1.kind", "kit")
            .with("changed.1.measuredHow.other.1.name", "battery")
            .with("changed.1.measuredHow.other.1.how", "as the rest")
            .boat();
    assertThat(after.methods())
        .containsExactlyInAnyOrder(
            said(MeasurementKind.HALF_BREADTHS, MeasuringWay.STEEL_TAPE),
            said(MeasurementKind.EDGE_HEIGHTS, MeasuringWay.TAUT_LINE),
            said(MeasurementKind.KIT_WEIGHTS, MeasuringWay.BATHROOM_SCALES),
            said(MeasurementKind.CHAMBER_LITRES, MeasuringWay.JUG));
  }

  /** Another battery, guessed: that the rest was hung from a hook says nothing of it. */
  @Test
  void a_guess_added_in_a_refit_says_so_of_itself() {
    Boat before =
        Sheet.saidHow().boat().withMethods(List.of(said(MeasurementKind.KIT_WEIGHTS, LUGGAGE)));
    ChangedSheet added =
        ChangedSheet.of(before)
            .with("changed.1", "added")
            .with("changed.1.name", "spare battery")
            .with("changed.1.mass", "guess 12 kg")
            .with("changed.1.x", "0.5")
            .with("changed.1.y", "0")
            .with("changed.1.z", "0.2")
            .with("changed.1.fastened", "yes")
            .with("changed.1.in", "none");
    assertThat(added.boat().methods())
        .containsExactly(
            said(MeasurementKind.KIT_WEIGHTS, LUGGAGE),
            new MeasuringMethod(
                MeasurementKind.KIT_WEIGHTS, Optional.of("spare battery"), MeasuringWay.GUESS));
    assertThat(added.with("changed.1.mass", "12 kg").boat().methods()).hasSize(1);
  }

  @Test
  void kit_that_is_removed_takes_along_what_was_said_of_it() {
    Boat after =
        ChangedSheet.of(Sheet.saidHow().boat())
            .with("changed.1", "removed")
            .with("changed.1.which", "battery")
            .boat();
    assertThat(after.methods()).doesNotContain(battery(MeasuringWay.GUESS)).hasSize(5);
  }

  @Test
  void people_who_were_guessed_are_not_as_exact_as_those_who_were_weighed() {
    Boat before =
        Sheet.full(true)
            .boat()
            .withMethods(
                List.of(said(MeasurementKind.PEOPLE_WEIGHTS, MeasuringWay.BATHROOM_SCALES)));
    ChangedSheet sheet =
        ChangedSheet.of(before)
            .with("changed.1", "people")
            .with("changed.1.person.1.any", "yes")
            .with("changed.1.person.1.name", "helm")
            .with("changed.1.person.1.mass", "guess 80 kg")
            .with("changed.1.person.1.place", "stern seat")
            .with("changed.1.person.1.y", "0")
            .with("changed.1.person.2.any", "no");
    assertThat(sheet.boat().methods()).isEmpty();
    assertThat(sheet.with("changed.1.person.1.mass", "80 kg").boat().methods()).hasSize(1);
  }

  private static final MeasuringWay LUGGAGE = MeasuringWay.LUGGAGE_SCALE;
}
