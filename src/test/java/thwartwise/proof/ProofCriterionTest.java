package thwartwise.proof;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;

/** Proofs of one small boat whose every measurement scatters; the table is of the main. */
class ProofCriterionTest {
  private static final int PROOFS = 150;
  private static final Boat SPOON = ProofCriterion.demo("proof-demo-boat.json");
  private static final ProofCriterion CRITERION = ProofCriterion.of(SPOON);

  private static long withdrawn(double heavier) {
    List<ProofComparison> proofs = CRITERION.proofs(heavier, PROOFS);
    return proofs.stream().filter(p -> !p.agrees()).count();
  }

  /** Of 150, 5 % are 7.5; in 999 of 1000 runs a binomial number of that chance is below 17. */
  @Test
  void a_boat_as_it_was_measured_is_seldom_withdrawn() {
    assertThat(withdrawn(0)).isLessThan(17);
  }

  /** 50 kg sink it by 37 mm: seven times what its edges may be off. */
  @Test
  void a_hull_of_fifty_kilograms_more_is_withdrawn_nearly_always() {
    assertThat(withdrawn(50)).isGreaterThan(PROOFS * 95 / 100);
  }
}
