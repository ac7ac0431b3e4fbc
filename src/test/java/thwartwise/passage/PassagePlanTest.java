package thwartwise.passage;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.electrics.UsableCharge;
import thwartwise.files.boat.BoatFile;
import thwartwise.sampleboats.ElectricBoat;

/** A whole boat in, running times and the way home out. */
class PassagePlanTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  private static PassagePlan plan(String... replaced) {
    return PassagePlan.of(boat(replaced), TODAY);
  }

  private static Boat boat(String... replaced) {
    String json = ElectricBoat.JSON;
    for (int i = 0; i < replaced.length; i += 2) {
      assertThat(json).contains(replaced[i]);
      json = json.replace(replaced[i], replaced[i + 1]);
    }
    return BoatFile.parse(json, "boat.json");
  }

  /** Lamps are on while the motor runs: 31 A and half an ampere. */
  @Test
  void lamps_and_sockets_shorten_the_running_time() {
    MotorSpeed lit = plan().speeds().get(0);
    UsableCharge usable = plan().usable().orElseThrow();
    assertThat(lit.time()).isCloseTo(usable.time(31.5), within(1e-6));
    assertThat(plan().fullDraw()).hasValue(45.5);
    assertThat(lit.time())
        .isLessThan(plan("\"amps\": 0.5", "\"amps\": 0.1").speeds().get(0).time());
  }

  @Test
  void untimed_lamps_count_too() {
    String runs = "\"runs\": [";
    String json =
        ElectricBoat.JSON.replaceAll("(?s)\"runs\": \\[.*?\\],\\s+\"panel\"", "\"panel\"");
    assertThat(json).doesNotContain(runs);
    PassagePlan plan = PassagePlan.of(BoatFile.parse(json, "boat.json"), TODAY);
    assertThat(plan.speeds().get(0).time())
        .isCloseTo(plan.usable().orElseThrow().time(45.5), within(1e-6));
  }

  /** A lamp of half an ampere, on for three hours or, where nobody said, for eight. */
  @ParameterizedTest
  @CsvSource({"true, 1.5", "false, 4.0"})
  void a_lamp_nobody_timed_is_on_for_eight_hours_a_day(boolean stated, double ampereHours) {
    PassagePlan plan = stated ? plan() : plan(", \"hoursADay\": 3", "");
    assertThat(plan.usedADay() / 3600).isCloseTo(ampereHours, within(1e-9));
  }

  @Test
  void a_panel_that_is_not_aboard_gives_nothing_back() {
    assertThat(plan().givenBack(Month.JUNE)).isPresent();
    assertThat(plan("\"name\": \"panel\"", "\"name\": \"plank\"").givenBack(Month.JUNE)).isEmpty();
  }

  /** DERIVED: 0.5 h at 45.5 A is longer than 20 (80/910)^1.25 x 0.5 x 0.827 x 0.8 = 0.32 h. */
  @Test
  void a_claimed_time_is_met_or_not_on_both_sides_of_what_the_battery_gives() {
    double given = plan().fullTime().orElseThrow() / 3600;
    assertThat(given).isCloseTo(0.3166, within(0.0005));
    assertThat(plan("\"claimedHours\": 5", "\"claimedHours\": 0.32").claimNotMet())
        .hasValue(0.32 * 3600);
    assertThat(plan("\"claimedHours\": 5", "\"claimedHours\": 0.31").claimNotMet()).isEmpty();
    assertThat(plan(", \"claimedHours\": 5", "").claimNotMet()).isEmpty();
  }

  /** DERIVED: 600 W at the shaft are 1000 W at 0.6, 83.3 A at 12 V; power over volts is 50. */
  @Test
  void a_motor_known_by_the_power_of_its_shaft_takes_more_than_that_from_the_battery() {
    String json =
        ElectricBoat.JSON
            .replaceAll("(?s)\"motor\": \\{.*?\\},\\s+\"runs\": \\[.*?\\],", "")
            .replace(
                "\"water\": \"fresh\",",
                "\"water\": \"fresh\", \"propulsion\": { \"kind\": \"outboard\", \"kilowatts\": 0.6 },");
    PassagePlan plan = PassagePlan.of(BoatFile.parse(json, "boat.json"), TODAY);
    assertThat(plan.fullCurrent().orElseThrow()).isCloseTo(1000 / 12.0, within(1e-9));
  }

  @Test
  void who_has_paddles_alone_is_slower_home_than_who_has_oars() {
    assertThat(plan().rowing()).hasValue(Rowing.OARS);
    assertThat(plan("\"oars\"", "\"paddles\"").rowing()).hasValue(Rowing.PADDLES);
    assertThat(plan("\"oars\"", "\"oars and paddle\"").rowing()).hasValue(Rowing.PADDLES);
    assertThat(plan("\"oars\"", "\"plank\"").rowing()).isEmpty();
  }

  /** The day before its tenth birthday something of it counts, then nothing. */
  @Test
  void of_a_battery_ten_years_old_nothing_counts() {
    assertThat(plan("2024-04-01", "2016-07-01").speeds()).isNotEmpty();
    PassagePlan old = plan("2024-04-01", "2016-05-01");
    assertThat(old.usable().orElseThrow().isWornOut()).isTrue();
    assertThat(old.speeds()).isEmpty();
    assertThat(old.claimNotMet()).hasValue(5 * 3600.0);
  }

  /** DERIVED: a fifth of a starter battery counts instead of half. */
  @Test
  void a_battery_found_to_be_a_starter_one_counts_as_one() {
    double stated = plan().speeds().get(0).time();
    PassagePlan found =
        PassagePlan.of(
            found(BoatFact.STARTER_BATTERY, PointCondition.NOT_AS_IT_SHOULD_BE, "battery"), TODAY);
    assertThat(found.speeds().get(0).time()).isCloseTo(stated * 0.4, within(1e-6));
    assertThat(found.boat().electrics().battery().orElseThrow().starter()).hasValue(true);
  }

  @Test
  void a_good_answer_or_one_about_something_else_changes_nothing() {
    PassagePlan stated = plan();
    for (PointCondition condition : PointCondition.values()) {
      if (condition != PointCondition.NOT_AS_IT_SHOULD_BE) {
        assertThat(PassagePlan.of(found(BoatFact.STARTER_BATTERY, condition, "battery"), TODAY))
            .returns(stated.speeds(), PassagePlan::speeds);
      }
    }
    assertThat(
            PassagePlan.of(
                    found(BoatFact.STARTER_BATTERY, PointCondition.NOT_AS_IT_SHOULD_BE, "charger"),
                    TODAY)
                .speeds())
        .isEqualTo(stated.speeds());
    // A good answer does not make a traction battery of one that is stated to start engines.
    Boat starter =
        answered(
            boat("\"starter\": false", "\"starter\": true"),
            BoatFact.STARTER_BATTERY,
            PointCondition.AS_IT_SHOULD_BE,
            "battery");
    assertThat(PassagePlan.of(starter, TODAY).boat().electrics().battery().orElseThrow().starter())
        .hasValue(true);
  }

  @ParameterizedTest
  @EnumSource
  void nothing_that_is_found_makes_it_last_longer(BoatFact fact) {
    PassagePlan found =
        PassagePlan.of(found(fact, PointCondition.NOT_AS_IT_SHOULD_BE, "battery"), TODAY);
    for (int i = 0; i < plan().speeds().size(); i++) {
      assertThat(found.speeds().get(i).time()).isLessThanOrEqualTo(plan().speeds().get(i).time());
    }
  }

  private static Boat found(BoatFact fact, PointCondition condition, String thing) {
    return answered(boat(), fact, condition, thing);
  }

  private static Boat answered(Boat boat, BoatFact fact, PointCondition condition, String thing) {
    return boat.withPointAnswers(
        List.of(
            new PointAnswer(
                "battery-kind",
                "Battery",
                thing,
                "It is a traction battery",
                condition,
                PointGravity.ADVICE,
                Optional.of(fact),
                0,
                "",
                "Iris",
                TODAY,
                PointAnswer.mark(boat, thing))));
  }
}
