package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.crew.AppliedRules;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.RuleBook;

/** Six plain hulls with proven buoyancy, under every rule set that comes with the program. */
class SixPlainHullsTest {
  private static final RuleBook BOOK = RuleSetFile.bundledRuleBook();
  private static final Map<Boat, Answer> KNOWN = new ConcurrentHashMap<>();

  private record Answer(QuickAnswer quick, List<CapacityFigure> figures) {}

  /**
   * Common practice, no source: what somebody who hires out such boats would put in them. The punt
   * has six seats: with six adults it draws 655 kg over some 5.2 m², 0.13 m, which leaves 0.35 m of
   * side, and everyone three fifths out, 570 kg x 0.27 m over a metacentric height of some 1.2 m,
   * heel it by 11 degrees and leave 0.2 m. Three in the canoe come to 285 kg; makers give canoes of
   * this size more at six inches of side (references E5, READ).
   */
  static Stream<Arguments> hulls() {
    return Stream.of(
        Arguments.of("2.4 m pram", PlainHulls.pram(), 1, 2),
        Arguments.of("3.6 m skiff", PlainHulls.skiff(), 2, 3),
        Arguments.of("4.3 m punt", PlainHulls.punt(), 3, 6),
        Arguments.of("4.9 m canoe", PlainHulls.kneltInCanoe(), 1, 3),
        Arguments.of("3.2 m round dinghy", PlainHulls.roundDinghy(), 1, 3),
        Arguments.of("5.5 m dory", PlainHulls.dory(), 2, 4));
  }

  private static Answer of(Boat boat) {
    return KNOWN.computeIfAbsent(boat, SixPlainHullsTest::worked);
  }

  private static Answer worked(Boat boat) {
    AppliedRules applied = new AppliedRules(BoatModel.of(boat, PlainHulls.TODAY), BOOK);
    return new Answer(answer(boat), applied.figures(List.of()));
  }

  /** Other tests ask for the whole report of all but the canoe that is knelt in. */
  private static QuickAnswer answer(Boat boat) {
    if (boat.equals(PlainHulls.kneltInCanoe())) {
      return QuickAnswer.of(boat, BOOK, PlainHulls.TODAY);
    }
    Recommendation recommended = InspectedBoats.underShipped(boat).recommendation();
    return new QuickAnswer(recommended.people(), recommended.crew(), recommended.load());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("hulls")
  void neither_nobody_nor_a_crowd(String name, Boat boat, int least, int most) {
    QuickAnswer quick = of(boat).quick();
    assertThat(quick.people()).isBetween(least, most);
    assertThat(quick.crew()).isGreaterThanOrEqualTo(95.0 * quick.people());
    assertThat(quick.crew() + boat.kitMass()).isLessThanOrEqualTo(quick.load());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("hulls")
  void never_more_than_a_rule_that_takes_part_allows(String name, Boat boat, int least, int most) {
    Answer answer = of(boat);
    for (CapacityFigure figure : answer.figures()) {
      if (figure.takesPart()) {
        notAbove(answer.quick(), figure);
      }
    }
  }

  private static void notAbove(QuickAnswer quick, CapacityFigure figure) {
    figure.persons().ifPresent(p -> assertThat(quick.people()).isLessThanOrEqualTo(p));
    if (figure.caps() == CapKind.PEOPLE) {
      assertThat(quick.crew()).as(figure.formula()).isLessThanOrEqualTo(figure.value());
    }
    if (figure.caps() == CapKind.LOAD) {
      assertThat(quick.load()).as(figure.formula()).isLessThanOrEqualTo(figure.value());
    }
  }
}
