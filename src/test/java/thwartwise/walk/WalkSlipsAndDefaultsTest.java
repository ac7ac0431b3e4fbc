package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.hull.HullForm;
import thwartwise.report.AssumptionWords;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;

/** Slips seen at once, and figures nobody can measure taken from what is known. */
class WalkSlipsAndDefaultsTest {
  private static final Sheet SMALL = Sheet.small();
  private static final Sheet FULL = Sheet.full(true);

  private static Reply.Refused refused(Sheet sheet, String key, String typed) {
    return (Reply.Refused) Sheet.WALK.take(sheet.upTo(key), typed);
  }

  @Test
  void a_deck_longer_than_half_the_boat_is_asked_about() {
    Sheet decked = SMALL.with("hull.decked.1.any", "yes").with("hull.decked.1.from", "0.3");
    Reply.Refused asked = refused(decked, "hull.decked.1.to", "2.4");
    assertThat(asked.reason())
        .isEqualTo(
            "That deck is 2.10 m long, more than half of the boat (2.40 m). Is it the deck, and not"
                + " the open part?");
    assertThat(asked.insisted()).hasValue("2.4 indeed");
    assertThat(decked.accepted("hull.decked.1.to", "1.2")).endsWith("1.20 m");
  }

  @Test
  void a_battery_in_a_tight_chamber_is_asked_about_with_what_it_costs() {
    Sheet tight = FULL.with("chamber.1.litres", "146").with("chamber.2.litres", "");
    Reply.Refused asked = refused(tight, "kit.1.in", "fore locker");
    assertThat(asked.reason())
        .isEqualTo("In there \"battery\" costs 146 l: such a space never counts. Really?");
    assertThat(asked.meant()).hasValue("none");
    assertThat(asked.insisted()).hasValue("fore locker indeed");
  }

  @Test
  void a_battery_in_a_chamber_that_never_counted_is_not_asked_about() {
    assertThat(FULL.accepted("kit.1.in", "midships thwart")).contains("vent it, do not seal it");
  }

  @Test
  void a_motor_in_a_box_is_asked_about() {
    assertThat(refused(FULL, "kit.2.in", "midships thwart").reason())
        .isEqualTo(
            "A motor hangs on the transom under way. Is it really stowed in \"midships thwart\"?");
  }

  @Test
  void bottom_and_sides_may_be_told_apart_and_the_thicker_counts() {
    assertThat(SMALL.accepted("hull.thickness", "9 mm; 6 mm"))
        .isEqualTo("Thickness of the shell: bottom 9 mm, sides 6 mm, the thicker counts");
    assertThat(SMALL.with("hull.thickness", "6 mm; 9 mm").boat().hull().thickness())
        .isEqualTo(0.009);
    assertThat(SMALL.refused("hull.thickness", "9 mm; 6"))
        .startsWith("6.00 m is not between 0.5 and 60 mm");
  }

  /** 18.14 kg of battery at 2800 kg a cubic metre: 6.48 l, shown down to tenths. */
  @Test
  void the_volume_of_kit_follows_from_what_it_is_and_is_a_guess() {
    assertThat(FULL.accepted("kit.1.litres", "battery"))
        .isEqualTo("Kit \"battery\", its own volume: 6.4 l, by its mass, dense for battery");
    Boat boat = FULL.with("kit.1.litres", "battery").boat();
    assertThat(boat.kit().get(0).volume().orElseThrow()).isEqualTo(18.1436948 / 2800);
    assertThat(AssumptionWords.of(boat))
        .contains(
            "Guessed, not measured: Kit \"battery\", its own volume: 6.4 l, by its mass, dense for"
                + " battery.");
  }

  /** Enter takes a higher centre than that of the skin, which counts where nobody knows any. */
  @Test
  void a_centre_nobody_measured_lies_above_that_of_the_skin() {
    Sheet known = SMALL.with("hull.centre", "yes").with("hull.centre.x", "1.2");
    Boat boat = known.boat();
    double taken = boat.hull().centre().orElseThrow().z();
    double skin = HullForm.of(SMALL.boat().hull()).centre().z();
    double rail = 0.5;
    assertThat(taken).isGreaterThanOrEqualTo(skin + 0.25 * (rail - skin)).isLessThan(rail);
    Boat heavy = known.with("hull.mass", "60").boat();
    assertThat(heavy.hull().centre().orElseThrow().z()).isGreaterThan(taken);
    assertThat(AssumptionWords.of(boat)).anyMatch(a -> a.contains("from its skin"));
  }

  private static double centre(String thickness, String mass) {
    return SMALL
        .with("hull.thickness", thickness)
        .with("hull.mass", mass)
        .with("hull.centre", "yes")
        .with("hull.centre.x", "1.2")
        .boat()
        .hull()
        .centre()
        .orElseThrow()
        .z();
  }

  /**
   * DERIVED. Skin of so many square metres at the thinner t weighs A t rho wherever bottom and
   * sides part; the rest of the mass m lies at most at the rail, 0.5 m up, so that the centre lies
   * at most at low + (1 - A t rho / m) (0.5 - low). Of 30 kg and plywood of 750 kg a cubic metre.
   */
  @Test
  void where_bottom_and_sides_differ_the_thinner_is_the_skin_and_the_rest_lies_at_the_rail() {
    HullForm form = HullForm.of(SMALL.with("hull.thickness", "9 mm").boat().hull());
    double low = form.centre().z();
    double thinner = low + (1 - form.shellArea() * 0.006 * 750 / 30) * (0.5 - low);
    assertThat(centre("9 mm; 6 mm", "30")).isCloseTo(thinner, within(1e-9));
    assertThat(centre("6 mm; 9 mm", "30")).isCloseTo(thinner, within(1e-9));
    assertThat(centre("9 mm", "30")).isLessThan(thinner - 0.01);
    assertThat(centre("6 mm", "30")).isCloseTo(thinner, within(1e-9));
  }

  @Test
  void before_the_work_the_boat_is_told_in_at_most_ten_lines() {
    Question finish = Sheet.open(FULL.upTo("finish"));
    assertThat(finish.how()).hasSizeLessThanOrEqualTo(10);
    assertThat(String.join("\n", finish.how()))
        .isEqualTo(
            """
            Gravy Boat: 3.658 m long, 1.384 m wide, 0.584 m deep, 3 stations.
            Bare hull 68.04 kg.
            Openings: motor notch, drain.
            Chambers: fore locker (proven), midships thwart (not proven), side foam ...
            Places: midships thwart (2), stern seat (1).
            Kit: 28.58 kg in all, battery, motor.
            Aboard: helm, bow.
            yes: it is worked out now. list shows every answer; back or change mends one.""");
    assertThat(finish.how()).allMatch(line -> line.length() <= 78);
  }

  /** Only a walk of changes told of them, as those of the walk before. */
  @Test
  void before_the_work_the_guesses_of_the_walk_are_counted() {
    Question finish = Sheet.open(FULL.with("kit.1.mass", "about 40").upTo("finish"));
    assertThat(finish.how()).contains("Not measured, taken on the poor side: one thing.");
  }

  @Test
  void nothing_is_worked_out_before_yes() {
    List<Answer> before = SMALL.upTo("finish");
    assertThat(refused(SMALL, "finish", "no").reason()).startsWith("Then type list");
    assertThat(Sheet.WALK.take(before, "yes")).isInstanceOf(Reply.Accepted.class);
    assertThat(refused(SMALL, "finish", "not sure").reason()).startsWith("Then type list");
  }
}
