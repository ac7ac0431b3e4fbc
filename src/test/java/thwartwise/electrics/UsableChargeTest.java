package thwartwise.electrics;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.electrics.UsableCharge.Guess;

class UsableChargeTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final Battery NEW =
      new Battery(
          "battery",
          12,
          100 * 3600,
          Optional.of(Chemistry.AGM),
          Optional.of(20 * 3600.0),
          Optional.empty(),
          Optional.of(TODAY),
          Optional.of(false),
          Optional.empty(),
          Optional.empty());
  private static final Battery UNKNOWN =
      new Battery(
          "battery",
          12,
          100 * 3600,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  private static double hours(Battery battery, double celsius, double current) {
    return UsableCharge.of(battery, TODAY, Optional.of(celsius)).time(current) / 3600;
  }

  /** DERIVED: half of 20 (100 / 200)^1.25 = 8.4090 h. */
  @Test
  void a_new_warm_battery_gives_its_usable_share_of_what_peukert_says() {
    assertThat(hours(NEW, 25, 10)).isCloseTo(8.4090 / 2, within(0.0001));
  }

  /**
   * DERIVED: 100 Ah over 20 h at 10 A last 20 h x 0.5^n; n as sourced in {@link Chemistry}: half of
   * it usable of lead-acid and four fifths of lithium (READ, several).
   */
  @ParameterizedTest
  @CsvSource({
    "FLOODED, 1.30, 0.5",
    "AGM, 1.25, 0.5",
    "GEL, 1.25, 0.5",
    "LIFEPO4, 1.05, 0.8",
    "LITHIUM_ION, 1.05, 0.8"
  })
  void each_chemistry_has_its_exponent_and_its_usable_share(
      Chemistry chemistry, double exponent, double usable) {
    Battery battery =
        new Battery(
            NEW.kit(),
            NEW.volts(),
            NEW.charge(),
            Optional.of(chemistry),
            NEW.ratedTime(),
            NEW.exponent(),
            NEW.since(),
            NEW.starter(),
            NEW.strapped(),
            NEW.terminalsCovered());
    assertThat(hours(battery, 25, 10))
        .isCloseTo(20 * Math.pow(0.5, exponent) * usable, within(1e-9));
  }

  @Test
  void heat_gives_no_more_than_the_label_and_cold_takes_a_hundredth_a_degree() {
    assertThat(hours(NEW, 35, 10)).isEqualTo(hours(NEW, 25, 10));
    assertThat(hours(NEW, 5, 10)).isCloseTo(0.8 * hours(NEW, 25, 10), within(1e-9));
  }

  @Test
  void an_old_battery_gives_less_and_a_day_to_come_is_no_age() {
    Battery old = since(NEW, TODAY.minusDays(731));
    assertThat(hours(old, 25, 10) / hours(NEW, 25, 10))
        .isCloseTo(1 - 0.08 * 731 / 365.25, within(1e-9));
    UsableCharge slip = UsableCharge.of(since(NEW, TODAY.plusYears(1)), TODAY, Optional.of(25.0));
    assertThat(slip.guesses()).containsExactly(UsableCharge.Guess.AGE);
    // Six years of a lead-acid one, as where nobody said.
    assertThat(slip.aged()).isCloseTo(1 - 6 * 0.08, within(1e-12));
  }

  /** Lead would have a fifth left of its label at ten years, lithium seven tenths. */
  @Test
  void of_a_battery_of_ten_years_nothing_counts_whatever_it_is_made_of() {
    for (Chemistry chemistry : Chemistry.values()) {
      assertThat(chemistry.agedShare(9.99)).isGreaterThan(0.19);
      assertThat(chemistry.agedShare(10)).isZero();
      assertThat(chemistry.agedShare(30)).isZero();
    }
    Battery old = since(NEW, TODAY.minusYears(11));
    assertThat(hours(old, 25, 10)).isZero();
    assertThat(UsableCharge.of(old, TODAY, Optional.empty()).isWornOut()).isTrue();
    assertThat(UsableCharge.of(NEW, TODAY, Optional.empty()).isWornOut()).isFalse();
  }

  /** READ: lead-acid 1.1 to 1.3; DERIVED from 5 A for 20 h and 100 A for half an hour: 1.231. */
  @Test
  void no_lead_battery_counts_with_a_better_exponent_than_the_published_one() {
    double published = Math.log(40) / Math.log(20);
    for (Chemistry chemistry : Chemistry.values()) {
      if (chemistry.isLead()) {
        assertThat(chemistry.exponent()).isBetween(published, 1.3);
      }
    }
  }

  private static Battery since(Battery b, LocalDate day) {
    return new Battery(
        b.kit(),
        b.volts(),
        b.charge(),
        b.chemistry(),
        b.ratedTime(),
        b.exponent(),
        Optional.of(day),
        b.starter(),
        b.strapped(),
        b.terminalsCovered());
  }

  @Test
  void what_nobody_said_is_named_and_never_lasts_longer() {
    UsableCharge unknown = UsableCharge.of(UNKNOWN, TODAY, Optional.empty());
    assertThat(unknown.guesses()).isEqualTo(EnumSet.allOf(Guess.class));
    for (Chemistry chemistry : Chemistry.values()) {
      for (double rated : new double[] {5, 10, 20, 100}) {
        Battery known =
            new Battery(
                "battery",
                12,
                100 * 3600,
                Optional.of(chemistry),
                Optional.of(rated * 3600),
                Optional.empty(),
                Optional.of(TODAY.minusYears(6)),
                Optional.of(false),
                Optional.empty(),
                Optional.empty());
        for (double current : new double[] {2, 20, 60}) {
          assertThat(unknown.time(current))
              .isLessThanOrEqualTo(UsableCharge.of(known, TODAY, Optional.of(5.0)).time(current));
        }
      }
    }
  }

  /** One thing left out of a battery that is known otherwise, so that no other guess hides it. */
  @Test
  void each_thing_left_out_counts_as_no_better_than_the_usual_worst() {
    Battery full = battery(Optional.of(20.0), Optional.of(TODAY.minusYears(2)), Optional.of(false));
    for (double hours : new double[] {5, 10, 20, 100}) {
      Battery known =
          battery(Optional.of(hours), Optional.of(TODAY.minusYears(2)), Optional.of(false));
      Battery left =
          battery(Optional.empty(), Optional.of(TODAY.minusYears(2)), Optional.of(false));
      assertThat(hours(left, 25, 20)).isLessThanOrEqualTo(hours(known, 25, 20));
    }
    for (int years = 0; years <= 6; years++) {
      Battery known =
          battery(Optional.of(20.0), Optional.of(TODAY.minusYears(years)), Optional.of(false));
      Battery left = battery(Optional.of(20.0), Optional.empty(), Optional.of(false));
      // Years of 365.25 days: six on the calendar may be a day more or less.
      assertThat(hours(left, 25, 20)).isLessThanOrEqualTo(hours(known, 25, 20) * 1.001);
    }
    Battery starter = battery(Optional.of(20.0), full.since(), Optional.of(true));
    Battery left = battery(Optional.of(20.0), full.since(), Optional.empty());
    assertThat(hours(left, 25, 20)).isEqualTo(hours(starter, 25, 20));
    // DERIVED: a fifth may be taken of one, half of the other.
    assertThat(hours(starter, 25, 20) / hours(full, 25, 20)).isCloseTo(0.4, within(1e-12));
  }

  private static Battery battery(
      Optional<Double> hours, Optional<LocalDate> since, Optional<Boolean> starter) {
    return new Battery(
        "battery",
        12,
        100 * 3600,
        Optional.of(Chemistry.FLOODED),
        hours.map(h -> h * 3600),
        Optional.empty(),
        since,
        starter,
        Optional.empty(),
        Optional.empty());
  }

  /** DERIVED from the shares of the enum: 0.8, 3 % a year, half a hundredth a degree. */
  @Test
  void lithium_gives_four_fifths_and_loses_by_age_and_cold_too() {
    Battery lithium =
        new Battery(
            "battery",
            12,
            100 * 3600,
            Optional.of(Chemistry.LIFEPO4),
            Optional.of(20 * 3600.0),
            Optional.of(1.0),
            Optional.of(TODAY.minusDays(731)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    double aged = 1 - 0.03 * 731 / 365.25;
    assertThat(hours(lithium, 25, 10)).isCloseTo(10 * 0.8 * aged, within(1e-9));
    assertThat(hours(lithium, 5, 10)).isCloseTo(10 * 0.8 * aged * 0.9, within(1e-9));
  }

  /** DERIVED: what lasts so long at that current is drawn at that current in that time. */
  @Test
  void the_current_for_a_time_lasts_that_time() {
    UsableCharge usable = UsableCharge.of(NEW, TODAY, Optional.of(10.0));
    for (double hours : new double[] {0.2, 1, 4, 30}) {
      double current = usable.currentFor(hours * 3600);
      assertThat(usable.time(current) / 3600).isCloseTo(hours, within(1e-9));
    }
  }
}
