package thwartwise.spread;

import static thwartwise.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

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

  @Property(tries = 2000, seed = "29")
  void the_greatest_sure_mass_is_found(
      @ForAll @IntRange(min = 9, max = 190) int screened,
      @ForAll @DoubleRange(min = 0, max = 220) double middle,
      @ForAll @DoubleRange(min = 0.01, max = 40) double width) {
    DoubleUnaryOperator share = falling(middle, width);
    double least = oneByOne(8, screened, share);
    SureMass mass = SureMass.from(8, screened);
    roundsTo(mass, share);
    if (least < 8) {
      assertThat(mass.carried()).isNaN();
    } else {
      assertThat(mass.carried()).isBetween(Math.max(8, least - 1), least);
    }
  }

  @Property(tries = 2000, seed = "30")
  void nothing_is_found_below_what_is_known(
      @ForAll @IntRange(min = 50, max = 190) int screened,
      @ForAll @DoubleRange(min = 0, max = 220) double middle,
      @ForAll @DoubleRange(min = 0.01, max = 40) double width) {
    DoubleUnaryOperator share = falling(middle, width);
    SureMass mass = SureMass.above(95, screened);
    roundsTo(mass, share);
    double least = Math.min(95, screened);
    double exact = Math.max(least, oneByOne(least, screened, share));
    assertThat(mass.carried()).isBetween(Math.max(least, exact - 1), exact);
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
}
