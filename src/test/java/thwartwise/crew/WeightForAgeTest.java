package thwartwise.crew;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.geometry.Reference;

class WeightForAgeTest {

  static Stream<Reference> rows() {
    return Reference.of("weight-for-age");
  }

  static Stream<Reference> scores() {
    return Reference.of("weight-score");
  }

  private static double at(Reference r, double z) {
    return WeightForAge.at(r.in("girl") == 1 ? Sex.GIRL : Sex.BOY, (int) r.in("age"), z);
  }

  // Normal scores of 5, 50, 95 and 97 in 100: statistical tables, DERIVED to eight digits.
  @ParameterizedTest
  @MethodSource("rows")
  void the_published_percentiles_come_out_of_l_m_and_s(Reference r) {
    assertThat(at(r, -1.6448536)).isCloseTo(r.wanted("p5"), within(r.near("p5")));
    assertThat(at(r, 0)).isCloseTo(r.wanted("p50"), within(r.near("p50")));
    assertThat(at(r, 1.6448536)).isCloseTo(r.wanted("p95"), within(r.near("p95")));
    assertThat(at(r, 1.8807936)).isCloseTo(r.wanted("p97"), within(r.near("p97")));
  }

  @ParameterizedTest
  @MethodSource("scores")
  void a_score_worked_by_hand_comes_out_the_same(Reference r) {
    assertThat(at(r, r.in("z"))).isCloseTo(r.wanted("kg"), within(r.near("kg")));
  }

  // CDC growth charts 2000, wtage.csv, P95 of a boy of 13 and P5 of one of 12 (READ).
  @Test
  void somebody_of_twelve_may_turn_thirteen_tomorrow() {
    assertThat(WeightForAge.heaviest(Sex.BOY, 12)).isCloseTo(66.10, within(0.00501));
    assertThat(WeightForAge.lightest(Sex.BOY, 12)).isCloseTo(30.55, within(0.00501));
  }

  // The same, P95 at 20 and P5 at 18 (READ).
  @Test
  void where_there_is_no_row_for_nineteen_the_one_for_twenty_stands_in() {
    for (int age : new int[] {18, 19}) {
      assertThat(WeightForAge.heaviest(Sex.GIRL, age)).isCloseTo(82.95, within(0.00501));
      assertThat(WeightForAge.lightest(Sex.GIRL, age)).isCloseTo(45.36, within(0.00501));
    }
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void an_older_youth_is_never_taken_for_lighter(Sex sex) {
    for (int age = WeightForAge.YOUNGEST; age < WeightForAge.OLDEST; age++) {
      assertThat(WeightForAge.heaviest(sex, age + 1))
          .isGreaterThanOrEqualTo(WeightForAge.heaviest(sex, age));
      assertThat(WeightForAge.heaviest(sex, age)).isGreaterThan(WeightForAge.lightest(sex, age));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 5, 20, 99})
  void an_age_outside_the_table_is_not_answered(int age) {
    assertThat(WeightForAge.covers(age)).isFalse();
    assertThatThrownBy(
            () -> {
              WeightForAge.lightest(Sex.BOY, Math.min(age, 5));
              WeightForAge.heaviest(Sex.BOY, age);
            })
        .isInstanceOf(IllegalArgumentException.class);
  }
}
