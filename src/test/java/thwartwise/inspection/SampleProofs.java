package thwartwise.inspection;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.AfloatProof.RailHeights;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ProofOutcome;

/** Proofs of a boat afloat that Bea read in June 2026. */
final class SampleProofs {
  private static final RailHeights RAILS = new RailHeights(0.39, 0.4, 0.36, 0.36);

  private SampleProofs() {}

  /** One with the rails read, nobody and no kit aboard. */
  static KeptProof of(int day, ProofOutcome outcome, boolean current) {
    LocalDate date = LocalDate.of(2026, 6, day);
    return new KeptProof(read(date, Optional.of(RAILS), false), outcome, "mark", current);
  }

  /** The same proof with other readings. */
  static KeptProof reading(KeptProof proof, Optional<RailHeights> empty, boolean withKit) {
    return new KeptProof(
        read(proof.day(), empty, withKit), proof.outcome(), proof.mark(), proof.current());
  }

  private static AfloatProof read(LocalDate day, Optional<RailHeights> empty, boolean withKit) {
    return new AfloatProof(
        day,
        "Bea",
        withKit,
        empty,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
