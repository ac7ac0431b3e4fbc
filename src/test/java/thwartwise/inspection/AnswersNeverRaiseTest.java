package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import thwartwise.advice.Progress;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.rules.RuleBook;

/** What was found bad of a boat never lets more aboard than may go in the boat as it was stated. */
class AnswersNeverRaiseTest {
  private static final RuleBook BOOK = RuleBook.of(RuleSetFile.cautiousDefault());

  /**
   * Its one side tank heels it while it is swamped; without that tank it would lie level and carry
   * an adult.
   */
  private static final Boat LOPSIDED = withSideTank(0.6, 1.7, 0.3, 0);

  private static Boat withSideTank(double from, double to, double inner, double bottom) {
    Box box = new Box(new Span(from, to), new Span(inner, 1), new Span(bottom, 0.36));
    List<Chamber> chambers = new ArrayList<>(PlainHulls.pram().chambers());
    chambers.add(BoxBoat.proven("port", box, Optional.empty()));
    return PlainHulls.pram().withChambers(chambers);
  }

  @ParameterizedTest
  @EnumSource(names = {"CHAMBER_OPEN", "SEAL_CLAIMED"})
  void a_tank_that_heels_the_swamped_boat_and_is_found_bad_lets_nobody_more_aboard(BoatFact fact) {
    QuickAnswer stated = QuickAnswer.of(LOPSIDED, BOOK, PlainHulls.TODAY);
    assertThat(stated.people()).isZero();
    assertThat(QuickAnswer.of(PlainHulls.pram(), BOOK, PlainHulls.TODAY).people()).isEqualTo(1);
    assertThat(QuickAnswer.of(found(LOPSIDED, fact), BOOK, PlainHulls.TODAY)).isEqualTo(stated);
  }

  @Test
  void the_whole_recommendation_stays_below_as_well_and_says_what_stops_the_next_person() {
    Recommendation stated = QuickAnswer.recommended(LOPSIDED, BOOK, PlainHulls.TODAY);
    Recommendation found =
        QuickAnswer.recommended(found(LOPSIDED, BoatFact.CHAMBER_OPEN), BOOK, PlainHulls.TODAY);
    assertThat(found.people()).isEqualTo(stated.people());
    assertThat(found.crew()).isEqualTo(stated.crew());
    assertThat(found.load()).isEqualTo(stated.load());
    assertThat(found.governedBy()).isEqualTo(stated.governedBy());
    assertThat(found.nextPersonBreaks()).isEqualTo(stated.nextPersonBreaks());
  }

  /** With one of two side tanks lost the swamped boat heels, with both it lies level again. */
  @Test
  void a_second_tank_found_bad_lets_nobody_more_aboard_than_the_first_alone() {
    Boat both = withSideTanks();
    QuickAnswer one = QuickAnswer.of(found(both, BoatFact.CHAMBER_OPEN), BOOK, PlainHulls.TODAY);
    QuickAnswer two = QuickAnswer.of(bothBad(), BOOK, PlainHulls.TODAY);
    assertThat(QuickAnswer.of(both, BOOK, PlainHulls.TODAY).people()).isEqualTo(1);
    assertThat(one.people()).isZero();
    assertThat(QuickAnswer.of(PlainHulls.pram(), BOOK, PlainHulls.TODAY).people()).isEqualTo(1);
    assertThat(two).isEqualTo(one);
  }

  @Test
  void a_change_that_is_only_tried_is_held_to_it_too() {
    BoatModel twice = BoatModel.of(bothBad(), PlainHulls.TODAY);
    assertThat(judged(twice).people()).isZero();
    assertThat(judged(BoatModel.of(twice.boat(), PlainHulls.TODAY)).people()).isEqualTo(1);
  }

  private static Boat bothBad() {
    Boat both = withSideTanks();
    return both.withPointAnswers(
        List.of(
            answer(both, "port", BoatFact.CHAMBER_OPEN),
            answer(both, "starboard", BoatFact.CHAMBER_OPEN)));
  }

  private static Recommendation judged(BoatModel changed) {
    return Inspection.judgedWithoutAdvice(
            changed, BOOK, RuleSetFile.measuringSpreads(), PlainHulls.TODAY, Progress.UNHEARD)
        .report()
        .recommendation();
  }

  @Test
  void a_boat_is_held_to_every_selection_of_up_to_three_answers() {
    Boat both = withSideTanks();
    PointAnswer port = answer(both, "port", BoatFact.CHAMBER_OPEN);
    PointAnswer starboard = answer(both, "starboard", BoatFact.SEAL_CLAIMED);
    assertThat(fewer(both, port)).isEqualTo(1);
    assertThat(fewer(both, port, starboard)).isEqualTo(3);
    assertThat(fewer(both, port, port)).isEqualTo(1);
    assertThat(fewer(both, port, answer(both, "elsewhere", BoatFact.CHAMBER_OPEN))).isEqualTo(1);
  }

  /** With each answer the boat is held to all it was held to before, and to what it was then. */
  @Test
  void an_answer_of_a_later_day_takes_away_no_boat_that_is_held_to() {
    Boat boat = withSideTanks();
    List<String> chambers = boat.chambers().stream().map(Chamber::name).toList();
    assertThat(chambers).hasSize(4);
    List<PointAnswer> answers = new ArrayList<>();
    Set<List<Chamber>> before = heldTo(boat);
    for (String chamber : chambers) {
      // Lists are asked in their own order: what was found last may stand first.
      answers.add(0, answer(boat, chamber, BoatFact.CHAMBER_OPEN, answers.size()));
      Set<List<Chamber>> now = heldTo(boat.withPointAnswers(answers));
      assertThat(now).hasSizeGreaterThan(before.size()).containsAll(before);
      before = now;
    }
  }

  private static Set<List<Chamber>> heldTo(Boat boat) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    return Stream.concat(Stream.of(model), model.withFewerAnswers().stream())
        .map(held -> held.boat().chambers())
        .collect(Collectors.toSet());
  }

  private static int fewer(Boat boat, PointAnswer... answers) {
    return BoatModel.of(boat.withPointAnswers(List.of(answers)), PlainHulls.TODAY)
        .withFewerAnswers()
        .size();
  }

  private static Boat withSideTanks() {
    Box box = new Box(new Span(0.6, 1.7), new Span(-1, -0.3), new Span(0, 0.36));
    List<Chamber> chambers = new ArrayList<>(LOPSIDED.chambers());
    chambers.add(BoxBoat.proven("starboard", box, Optional.empty()));
    return LOPSIDED.withChambers(chambers);
  }

  @Test
  void no_tank_thrown_by_dice_lets_more_aboard_when_it_is_found_bad() {
    Random random = new Random(20261127);
    for (int i = 0; i < 4; i++) {
      double from = 0.5 + 0.4 * random.nextDouble();
      double to = 1.3 + 0.5 * random.nextDouble();
      Boat boat =
          withSideTank(from, to, 0.2 + 0.15 * random.nextDouble(), 0.1 * random.nextDouble());
      QuickAnswer stated = QuickAnswer.of(boat, BOOK, PlainHulls.TODAY);
      QuickAnswer found =
          QuickAnswer.of(found(boat, BoatFact.SEAL_CLAIMED), BOOK, PlainHulls.TODAY);
      assertThat(found.people()).isLessThanOrEqualTo(stated.people());
      assertThat(found.crew()).isLessThanOrEqualTo(stated.crew());
      assertThat(found.load()).isLessThanOrEqualTo(stated.load());
    }
  }

  /** Otherwise a change that does nothing would look like one that lets more people aboard. */
  @Test
  void a_boat_changed_in_something_else_is_still_held_to_what_was_stated() {
    BoatModel model = BoatModel.of(found(LOPSIDED, BoatFact.CHAMBER_OPEN), PlainHulls.TODAY);
    Boat lighter = model.boat().withHullMass(model.boat().hull().mass() - 1);
    BoatModel after = model.fittedOut(lighter, PlainHulls.TODAY);
    assertThat(after.boat().chambers()).isEqualTo(model.boat().chambers());
    assertThat(after.withFewerAnswers().get(0).boat().chambers()).isEqualTo(LOPSIDED.chambers());
    assertThat(after.withFewerAnswers().get(0).boat().hull()).isEqualTo(lighter.hull());
  }

  @Test
  void a_boat_of_which_nothing_bad_was_found_is_not_worked_out_twice() {
    assertThat(BoatModel.of(LOPSIDED, PlainHulls.TODAY).withFewerAnswers()).isEmpty();
    assertThat(
            BoatModel.of(found(LOPSIDED, BoatFact.BUNG_LOST), PlainHulls.TODAY).withFewerAnswers())
        .isEmpty();
  }

  private static Boat found(Boat boat, BoatFact fact) {
    return boat.withPointAnswers(List.of(answer(boat, "port", fact)));
  }

  private static PointAnswer answer(Boat boat, String thing, BoatFact fact) {
    return answer(boat, thing, fact, 0);
  }

  private static PointAnswer answer(Boat boat, String thing, BoatFact fact, int daysLater) {
    return new PointAnswer(
        "seal",
        "Chambers",
        thing,
        "The seal is whole",
        PointCondition.NOT_AS_IT_SHOULD_BE,
        PointGravity.ADVICE,
        Optional.of(fact),
        0,
        "",
        "Iris",
        PlainHulls.TODAY.plusDays(daysLater),
        PointAnswer.mark(boat, thing));
  }
}
