package thwartwise.walk.questions;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitSystem;

class PeopleTextTest {
  private static final PlannedMasses PLANNED = PlannedMasses.of(RuleSetFile.cautiousDefault());
  private static final PeopleText READER = new PeopleText(PLANNED, UnitSystem.METRIC);
  private static final PeopleText IN_POUNDS =
      new PeopleText(PLANNED, UnitSystem.FEET_INCHES_POUNDS);

  private static List<NamedPerson> read(String typed) {
    Reading<List<NamedPerson>> read = READER.read(typed);
    assertThat(read.refusal()).isEmpty();
    return ((Reading.Understood<List<NamedPerson>>) read).value();
  }

  private static String refused(String typed) {
    return READER.read(typed).refusal().orElseThrow();
  }

  @Test
  void people_of_three_kinds_are_told_apart() {
    assertThat(read("Iris 62 kg, Tom 80 dressed, boy 12, Girl of 10; adult"))
        .containsExactly(
            NamedPerson.weighed("Iris", 62),
            NamedPerson.weighedDressed("Tom", 80),
            NamedPerson.youth("boy of 12", Sex.BOY, 12),
            NamedPerson.youth("girl of 10", Sex.GIRL, 10),
            NamedPerson.adult("adult", PLANNED));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Ann 12 st 4 | 78.02",
        "Ann 150 lb | 68.04",
        "Ann 62,5 kg | 62.5",
        "Old Ann Bee 61 | 61"
      })
  void a_weight_may_be_typed_in_any_unit(String typed, double mass) {
    assertThat(read(typed).get(0).heaviest()).isCloseTo(mass + 5, within(0.005));
  }

  @Test
  void a_comma_between_two_figures_is_a_decimal_one_and_any_other_parts_people() {
    assertThat(read("Ann 62,5,Bo 70"))
        .extracting(NamedPerson::heaviest)
        .containsExactly(67.5, 75.0);
  }

  @Test
  void several_of_one_kind_are_numbered() {
    assertThat(read("adult, adult, boy 9, boy 9, adult"))
        .extracting(NamedPerson::name)
        .containsExactly(
            "adult", "adult, number 2", "boy of 9", "boy of 9, number 2", "adult, number 3");
  }

  @Test
  void nobody_is_refused() {
    assertThat(refused(" , "))
        .isEqualTo(
            "\" , \" names nobody. Type who wants to come, such as \"Iris 62 kg, boy 12, girl 10,"
                + " adult\".");
  }

  @Test
  void a_name_without_a_weight_is_refused() {
    assertThat(refused("Ann 61, Bo"))
        .isEqualTo(
            "\"Bo\" has no weight. Type kilograms after a name, an age after boy or girl, or adult,"
                + " such as \"Iris 62 kg, boy 12, girl 10, adult\".");
  }

  @Test
  void an_age_without_a_weight_is_refused() {
    assertThat(refused("boy 5"))
        .isEqualTo(
            "\"boy 5\": weights by age are known from 6 to 19 years. Weigh them and type the"
                + " kilograms, such as \"boy 31 kg\".");
    assertThat(refused("girl 20")).startsWith("\"girl 20\": weights by age are known");
    assertThat(refused("girl 999")).startsWith("\"girl 999\": weights by age are known");
  }

  @Test
  void a_weight_nobody_has_is_refused() {
    assertThat(refused("Tom 800"))
        .isEqualTo(
            "\"Tom\" at 805 kg, dressed: from 8 to 150 kg can be seated here. Weigh them again, or"
                + " leave them out.");
    assertThat(refused("Tom 0")).startsWith("\"Tom\" at 5 kg, dressed");
    assertThat(refused("Tom 0 dressed")).startsWith("\"Tom\" at 0 kg, dressed");
  }

  @Test
  void a_weight_in_a_length_is_refused() {
    assertThat(refused("Tom 1.8 m"))
        .isEqualTo(
            "\"1.8 m\" is not a mass this can use. Type a mass such as 95 (kg), 500 g or 12 st 4"
                + " lb.");
  }

  @Test
  void two_of_one_name_are_refused() {
    assertThat(refused("Ann 60, Ann 70"))
        .isEqualTo("Two people are called \"Ann\". Give each a name of their own.");
  }

  @Test
  void more_than_eight_are_refused() {
    assertThat(refused("adult," + "boy 9,".repeat(8)))
        .isEqualTo("9 people are named; at most 8 can be seated here. Name fewer.");
  }

  @Test
  void a_weighed_boy_is_weighed_and_not_of_that_age() {
    assertThat(read("boy 24 kg")).containsExactly(NamedPerson.weighed("boy", 24));
  }

  /** 150 lb is 68.04 kg, and 5 kg of clothes make 161.02 lb; rounded up. */
  @Test
  void what_is_understood_names_each_with_the_most_they_may_weigh() {
    assertThat(understood(READER, "Ann 62.2, Ben 80 dressed"))
        .isEqualTo("at the most, dressed: Ann 68 kg; Ben 80 kg; together 148 kg");
    assertThat(understood(IN_POUNDS, "Ann 150")).isEqualTo("at the most, dressed: Ann 162 lb");
  }

  private static String understood(PeopleText reader, String typed) {
    return ((Reading.Understood<List<NamedPerson>>) reader.read(typed)).text();
  }

  @Test
  void a_boat_in_feet_is_refused_in_pounds() {
    for (String typed : List.of(" , ", "Bo", "boy 5", "child 40", "Tom 800", "Tom 5 dressed")) {
      assertThat(IN_POUNDS.read(typed).refusal().orElseThrow())
          .doesNotContainPattern("\\bkg\\b|kilogram");
    }
    assertThat(IN_POUNDS.read("Tom 800").refusal().orElseThrow())
        .isEqualTo(
            "\"Tom\" at 811 lb, dressed: from 18 to 330 lb can be seated here. Weigh them again, or"
                + " leave them out.");
  }

  @Test
  void where_it_is_answered_at_once_a_bare_weight_in_a_boat_in_feet_is_refused() {
    PeopleText atOnce = PeopleText.forOneLine(PLANNED, UnitSystem.FEET_INCHES_POUNDS);
    assertThat(atOnce.read("Iris 137 lb, Tom 80").refusal())
        .hasValue(
            "\"Tom 80\" may be pounds or kilograms. Type lb or kg behind the weight, such as"
                + " \"Iris 137 lb, boy 12, girl 10, adult\".");
    assertThat(atOnce.read("Iris 137 lb, Tom 80 kg").refusal()).isEmpty();
    assertThat(PeopleText.forOneLine(PLANNED, UnitSystem.METRIC).read("Tom 80").refusal())
        .isEmpty();
  }
}
