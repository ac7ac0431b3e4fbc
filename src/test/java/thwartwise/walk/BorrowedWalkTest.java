package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.checks.Outcome;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.crew.WeightForAge;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitSystem;
import thwartwise.plausibility.Plausibility;
import thwartwise.report.AssumptionWords;
import thwartwise.walk.borrowed.EstimatedLines;
import thwartwise.walk.borrowed.SectionForm;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** The short walk on the bank. */
class BorrowedWalkTest {
  private static final Sheet FLAT = Sheet.borrowed(true);

  /** Twenty, after the way was chosen and before all is looked over. */
  @Test
  void in_sheltered_water_with_nothing_to_show_it_asks_twenty_questions_about_the_boat() {
    assertThat(questions(FLAT.with("short.tested", "nothing"))).hasSize(20);
    assertThat(questions(FLAT.with("short.form", "round").with("short.tested", "nothing")))
        .hasSize(19);
    assertThat(questions(FLAT)).hasSize(25);
    assertThat(questions(Sheet.borrowedAndTried())).hasSize(29);
  }

  private static List<String> questions(Sheet sheet) {
    return sheet.toTheEnd().stream()
        .map(Answer::question)
        .filter(key -> !key.equals("way") && !key.equals("finish"))
        .toList();
  }

  @Test
  void who_goes_is_asked_children_by_age_and_the_heaviest_sit_in_the_middle() {
    Boat boat = FLAT.with("short.people", "girl 9, Ann 62 kg, boy 12, Ben 80 kg dressed").boat();
    assertThat(boat.aboard())
        .extracting(p -> p.name() + " at " + p.place())
        .containsExactly(
            "Ben at middle seat",
            "boy of 12 at middle seat",
            "Ann at fore seat",
            "girl of 9 at fore seat");
    // A heavy girl of nine, CDC 2000, 95th percentile at ten, and 5 kg of clothes.
    assertThat(boat.aboard().get(3).mass())
        .isCloseTo(WeightForAge.heaviest(Sex.GIRL, 9) + 5, within(1e-9));
    assertThat(AssumptionWords.of(boat))
        .anyMatch(a -> a.startsWith("Who goes: girl of 9 (a heavy girl of 9 and 5 kg for clothes"));
    assertThat(FLAT.boat().aboard()).isEmpty();
  }

  @Test
  void more_people_than_seats_are_not_seated() {
    assertThat(FLAT.refused("short.people", "A 60, B 60, C 60, D 60, E 60, F 60, G 60"))
        .isEqualTo("7 people are named, and the seats take 6. Name fewer, or change the seats.");
  }

  /** 22 kg for each of 3.6576 times 1.3843 square metres are 245.6 lb: said rounded up. */
  @Test
  void a_heavy_guess_is_said_in_whole_pounds() {
    Sheet feet = Sheet.borrowed(false);
    assertThat(Sheet.open(feet.upTo("short.mass")).prompt())
        .contains("[Enter: 246 lb, a heavy guess]");
    assertThat(String.join(" ", Sheet.open(feet.upTo("short.people")).how())).doesNotContain("kg");
  }

  /**
   * 15 degrees Celsius are 59 Fahrenheit; "15 degrees" alone is ice to whoever reads Fahrenheit.
   */
  @Test
  void warm_water_is_said_in_the_degrees_of_the_boat() {
    assertThat(String.join(" ", Sheet.open(FLAT.upTo("waters.sheltered")).how()))
        .contains("water of 15 °C or warmer");
    assertThat(String.join(" ", Sheet.open(Sheet.borrowed(false).upTo("waters.sheltered")).how()))
        .contains("water of 59 °F or warmer");
  }

  @Test
  void a_bare_weight_is_in_the_units_of_the_boat() {
    Boat boat = Sheet.borrowed(false).with("short.people", "Ann 150 dressed").boat();
    assertThat(boat.aboard().get(0).mass()).isCloseTo(150 * 0.45359237, within(1e-9));
  }

  @Test
  void what_the_hull_is_made_of_is_asked_and_unknown_sinks_as_the_heaviest() {
    assertThat(FLAT.with("short.material", "plywood").boat().hull().density()).isEqualTo(750);
    assertThat(FLAT.boat().hull().density()).isEqualTo(2700);
    assertThat(AssumptionWords.of(FLAT.boat()))
        .contains("What the hull is made of: not known, taken to sink as aluminium does.");
    assertThat(AssumptionWords.of(FLAT.with("short.material", "plywood").boat()))
        .noneMatch(a -> a.contains("aluminium"));
  }

  /** 68 kg, of a shell nobody measured: what it is made of must not make a doubt of that. */
  @ParameterizedTest
  @ValueSource(strings = {"plywood", "softwood", "GRP", "aluminium", ""})
  void no_material_makes_an_ordinary_mass_look_wrong(String material) {
    Boat boat = FLAT.with("short.material", material).boat();
    assertThat(
            Plausibility.of(BoatModel.of(boat, Sheet.TODAY), RuleSetFile.cautiousDefault()).stream()
                .map(found -> found.finding().outcome()))
        .doesNotContain(Outcome.FALLS_SHORT);
  }

  @Test
  void the_waters_are_asked() {
    assertThat(FLAT.with("waters.sheltered", "no").with("waters.waves", "0.2").boat().waters())
        .extracting(w -> w.waves().orElseThrow())
        .isEqualTo(0.2);
  }

  @Test
  void feet_and_inches_give_the_same_boat() {
    assertThat(Sheet.borrowed(false).boat().in(UnitSystem.METRIC))
        .usingRecursiveComparison()
        .ignoringFields("assumptions")
        .isEqualTo(FLAT.boat());
  }

  @Test
  void what_is_taken_for_granted_is_said_in_the_units_of_the_boat() {
    assertThat(AssumptionWords.of(Sheet.borrowed(false).boat()))
        .anyMatch(words -> words.contains("loose, 6 in up"))
        .noneMatch(words -> words.matches(".*\\d (m|kg)\\b.*"));
    assertThat(AssumptionWords.of(FLAT.boat()))
        .anyMatch(words -> words.contains("loose, 0.15 m up"));
  }

  @Test
  void a_chamber_counts_only_when_a_written_test_is_shown() {
    Chamber shown = FLAT.boat().chambers().get(0);
    assertThat(BoatModel.of(FLAT.boat(), Sheet.TODAY).spaces().get(0).counting().share())
        .isPositive();
    assertThat(((Filling.Air) shown.filling()).test().orElseThrow().date())
        .isEqualTo(LocalDate.of(2026, 4, 1));
    assertThat(FLAT.with("short.tested", "no").boat().chambers()).isEmpty();
    assertThat(AssumptionWords.of(FLAT.with("short.tested", "").boat()))
        .contains("Chambers: none counts, since no leak test was shown.");
  }

  @Test
  void what_was_not_measured_is_named() {
    Boat guessed = FLAT.with("short.mass", "").boat();
    assertThat(AssumptionWords.of(guessed))
        .anyMatch(a -> a.startsWith("Mass of the hull: not weighed"))
        .anyMatch(a -> a.startsWith("The hull is drawn from a few dimensions"))
        .anyMatch(a -> a.startsWith("Seats: "));
    assertThat(guessed.hull().mass()).isCloseTo(22 * 3.6576 * 1.3843, within(1e-6));
    assertThat(AssumptionWords.of(FLAT.boat())).noneMatch(a -> a.startsWith("Mass of the hull"));
  }

  @Test
  void a_motor_weighs_what_the_table_says_and_no_motor_is_none() {
    assertThat(FLAT.boat().propulsion()).isInstanceOf(Propulsion.Outboard.class);
    // 33 CFR part 183, motor weight table of 2018: up to 2 hp 32 lb and nothing else.
    assertThat(FLAT.boat().kit().get(0).mass()).isCloseTo(32 * 0.45359237, within(1e-9));
    assertThat(FLAT.with("short.motor", "no").boat().propulsion())
        .isEqualTo(new Propulsion.Manual());
  }

  @Test
  void the_seats_between_are_evenly_spaced() {
    List<Place> places = FLAT.boat().places();
    assertThat(places)
        .extracting(Place::name)
        .containsExactly("aft seat", "middle seat", "fore seat");
    assertThat(places.get(1).x())
        .isCloseTo((places.get(0).x() + places.get(2).x()) / 2, within(1e-12));
    assertThat(FLAT.with("short.seats", "1").with("short.seat.seat", "1.7").boat().places())
        .hasSize(1);
  }

  /** Closed form: a flat bottom under parabolas, worked by hand from the same few dimensions. */
  @Test
  void the_plan_is_two_parabolas() {
    EstimatedLines lines = new EstimatedLines(4, 1.4, 1.4, 0.5, 1.0, SectionForm.FLAT);
    double aft = 0.45 * 4 * (0.5 + 2 / 3.0 * 0.2);
    double fore = 0.55 * 4 * (0.02 + 2 / 3.0 * 0.68);
    double sum = 0;
    int steps = 20_000;
    for (int i = 0; i < steps; i++) {
      sum += lines.half((i + 0.5) / steps) * 4 / steps;
    }
    assertThat(sum).isCloseTo(aft + fore, within(1e-6));
  }

  @Test
  void each_form_goes_from_the_keel_to_the_rail() {
    for (SectionForm form : SectionForm.values()) {
      List<Vector3> points = form.points(1, 0.1, 0.5, 0.6, 0.4);
      assertThat(points.get(0)).isEqualTo(Vector3.of(1, 0, 0.1));
      Vector3 rail = points.get(points.size() - 1);
      assertThat(rail.y()).isCloseTo(0.6, within(1e-12));
      assertThat(rail.z()).isCloseTo(0.5, within(1e-12));
    }
  }

  /** The hull drawn from the full sheet's own dimensions holds less water than the measured one. */
  @Test
  void the_drawn_hull_is_leaner_than_the_measured_one() {
    double measured = volume(Sheet.full(true).boat());
    assertThat(volume(FLAT.boat())).isLessThan(measured).isGreaterThan(0.6 * measured);
  }

  private static double volume(Boat boat) {
    return BoatModel.of(boat, Sheet.TODAY).form().outside().volume();
  }

  @Test
  void the_first_words_say_what_shows_that_it_holds_anybody_up() {
    assertThat(String.join(" ", Sheet.open(List.of()).how()))
        .contains("holds up nobody until a leak test is shown or a trial was seen");
  }

  @Test
  void the_way_may_be_changed_and_what_was_answered_stays() {
    List<Answer> all = FLAT.toTheEnd();
    Reply.WentBack open = (Reply.WentBack) Sheet.WALK.take(all, "change 1");
    List<Answer> own = Sheet.answer(open.answers(), "own");
    assertThat(own).containsAll(all.subList(1, all.size()));
    assertThat(Sheet.open(own).key()).isEqualTo("measuredBy");
  }
}
