package thwartwise.spread;

import static thwartwise.Assertions.assertThat;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import thwartwise.RandomCases;

/** Against the last kilogram found by going down one by one; one less than that may be found. */
class SureMassTest {
  private static final double SURE = 0.96;

  /** A share that falls with the mass: half of the boats carry the middle one. */
  private static DoubleUnaryOperator falling(double middle, double width) {
    return mass -> 1 / (1 + Math.exp((mass - middle) / width));
  }

  private static int roundsTo(SureMass mass, DoubleUnaryOperator share) {
    int rounds = 0;
    while (!mass.isFound()) {
      mass.judged(share.applyAsDouble(mass.asked()));
      rounds++;
      assertThat(rounds).isLessThan(40);
    }
    return rounds;
  }

  private static double oneByOne(double from, double screened, DoubleUnaryOperator share) {
    double mass = screened;
    while (mass >= from && !(share.applyAsDouble(mass) >= SURE)) {
      mass--;
    }
    return mass;
  }

  /** A share that falls over some width, at last a cliff, and the mass found without the spread. */
  private record Falling(int screened, double middle, double width) {
    static Falling any(int least, Random random) {
      int screened = least + random.nextInt(191 - least);
      double width = 40 * Math.pow(4_000, -random.nextDouble());
      return new Falling(screened, 220 * random.nextDouble(), width);
    }

    DoubleUnaryOperator share() {
      return falling(middle, width);
    }
  }

  @Test
  void the_greatest_sure_mass_is_found() {
    RandomCases.each(
        RandomCases.of(2_000, random -> Falling.any(9, random)),
        one -> {
          double least = oneByOne(8, one.screened, one.share());
          SureMass mass = SureMass.from(8, one.screened);
          roundsTo(mass, one.share());
          if (least < 8) {
            assertThat(mass.carried()).isNaN();
          } else {
            assertThat(mass.carried()).isBetween(Math.max(8, least - 1), least);
          }
        });
  }

  @Test
  void nothing_is_found_below_what_is_known() {
    RandomCases.each(
        RandomCases.of(2_000, random -> Falling.any(50, random)),
        one -> {
          SureMass mass = SureMass.above(95, one.screened);
          roundsTo(mass, one.share());
          double least = Math.min(95, one.screened);
          double exact = Math.max(least, oneByOne(least, one.screened, one.share()));
          assertThat(mass.carried()).isBetween(Math.max(least, exact - 1), exact);
        });
  }

  @Test
  void what_is_known_needs_no_judgement() {
    assertThat(SureMass.above(95, 90).isFound()).isTrue();
    assertThat(SureMass.above(95, 90).carried()).isEqualTo(90);
  }

  @Test
  void shares_as_boats_have_them_take_few_rounds() {
    assertThat(roundsTo(SureMass.above(0, 131), falling(140, 12))).isLessThanOrEqualTo(4);
    assertThat(roundsTo(SureMass.from(8, 71), falling(75, 6))).isLessThanOrEqualTo(4);
  }

  @Test
  void a_share_that_falls_off_a_cliff_is_found_too() {
    SureMass mass = SureMass.from(8, 120);
    roundsTo(mass, kilograms -> kilograms <= 57 ? 1 : 0);
    assertThat(mass.carried()).isEqualTo(57);
  }

  // Where another limit than one on the mass is met too seldom; it took up to 300 rounds.
  @Test
  void a_share_that_is_the_same_for_every_mass_takes_few_rounds() {
    for (double share : new double[] {0.959, 0.955, 0.9, 0.5, 0, Double.NaN}) {
      SureMass uncertain = SureMass.from(25, 150);
      assertThat(roundsTo(uncertain, mass -> share)).isLessThanOrEqualTo(10);
      assertThat(uncertain.carried()).isNaN();
      SureMass known = SureMass.above(0, 300);
      assertThat(roundsTo(known, mass -> share)).isLessThanOrEqualTo(10);
      assertThat(known.carried()).isEqualTo(0);
    }
  }
}
