package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Progress;
import thwartwise.boat.BoatModel;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

/**
 * Named people are judged with their own masses: what the screen found sure enough for adults of 95
 * kg says nothing of two people of 150 kg.
 */
class NamedCrewJudgementTest {
  private static final RuleBook BOOK = RuleBook.of(RuleSetFile.cautiousDefault());

  private static final SpreadJudgement CANOE =
      (SpreadJudgement)
          Inspection.judgedWithoutAdvice(
              PlainHulls.canoe(),
              BOOK,
              RuleSetFile.measuringSpreads(),
              PlainHulls.TODAY,
              Progress.UNHEARD);

  private static List<NamedPerson> two(double each) {
    return List.of(
        NamedPerson.weighedDressed("Ann", each), NamedPerson.weighedDressed("Bea", each));
  }

  private static CrewAnswer screened(List<NamedPerson> people) {
    return CANOE.inspection().seats(people, loaded -> List.of());
  }

  @Test
  void heavy_people_whom_too_few_boats_measured_like_this_would_carry_do_not_all_go() {
    assertThat(
            CrewSeating.of(BoatModel.of(PlainHulls.canoe(), PlainHulls.TODAY), BOOK, two(150))
                .allMayGo())
        .isTrue();
    CrewAnswer judged = CANOE.seats(two(150));
    assertThat(judged.allMayGo()).isFalse();
    assertThat(judged.breaks()).isNotEmpty();
    assertThat(judged.seats()).hasSizeLessThan(2);
  }

  /** The screen allows two of 150 kg, of which 93 in 100 boats measured like this would do. */
  @Test
  void the_heaviest_people_of_each_number_are_told_as_heavy_as_95_of_100_boats_carry() {
    Recommendation judged = CANOE.inspection().recommendation();
    Recommendation screen = InspectedBoats.underOwn(PlainHulls.canoe()).recommendation();
    assertThat(screen.crewLimits().get(1).massLimit()).isEqualTo(150);
    assertThat(judged.crewLimits().get(1).massLimit()).isBetween(140.0, 149.0);
    assertThat(judged.crew()).isLessThanOrEqualTo(2 * 149);
    assertThat(judged.people()).isEqualTo(screen.people());
    double each = judged.crewLimits().get(1).massLimit();
    assertThat(CANOE.seats(two(each)).allMayGo()).isTrue();
    assertThat(CANOE.seats(two(each + 1)).allMayGo()).isFalse();
  }

  @Test
  void people_who_are_sure_enough_sit_as_the_screen_seats_them() {
    assertThat(CANOE.seats(two(100))).isEqualTo(screened(two(100)));
  }
}
