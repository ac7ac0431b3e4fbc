package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Progress;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

/**
 * Named people are judged with their own masses: what the screen found sure enough for adults of 95
 * kg says nothing of two people of 150 kg.
 */
class NamedCrewJudgementTest {
  private static final SpreadJudgement CANOE =
      (SpreadJudgement)
          Inspection.judgedWithoutAdvice(
              PlainHulls.canoe(),
              RuleBook.of(RuleSetFile.cautiousDefault()),
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
    assertThat(screened(two(150)).allMayGo()).isTrue();
    CrewAnswer judged = CANOE.seats(two(150));
    assertThat(judged.allMayGo()).isFalse();
    assertThat(judged.breaks()).isNotEmpty();
    assertThat(judged.seats()).hasSizeLessThan(2);
  }

  @Test
  void people_who_are_sure_enough_sit_as_the_screen_seats_them() {
    assertThat(CANOE.seats(two(100))).isEqualTo(screened(two(100)));
  }
}
