package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.measure.UnitFormat;
import thwartwise.rules.LifeJacket;

class HandlingSectionTest {
  private static String hands(double mass) {
    return HandlingSection.hands(mass).replace(UnitFormat.TIED, " ");
  }

  // Division by 25 kg, rounded up to whole people.
  @Test
  void so_many_people_carry_it_at_25_kg_each() {
    assertThat(hands(12)).isEqualTo("1 person");
    assertThat(hands(75)).isEqualTo("3 people");
    assertThat(hands(75.1)).isEqualTo("4 people");
  }

  // EN ISO 12402-5 by body mass: 25 to 40 kg 35 N, to 60 40 N, to 70 45 N, over 70 50 N (FROM
  // MEMORY); 100 N under 25 kg.
  @Test
  void the_life_jacket_goes_by_the_mass_of_whoever_wears_it() {
    assertThat(LifeJacket.newtons(24.9)).isEqualTo(100);
    assertThat(LifeJacket.newtons(25)).isEqualTo(35);
    assertThat(LifeJacket.newtons(40)).isEqualTo(40);
    assertThat(LifeJacket.newtons(60)).isEqualTo(45);
    assertThat(LifeJacket.newtons(70)).isEqualTo(45);
    assertThat(LifeJacket.newtons(70.1)).isEqualTo(50);
    assertThat(LifeJacket.newtons(Double.NaN)).isEqualTo(100);
  }
}
