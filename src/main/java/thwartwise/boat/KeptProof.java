package thwartwise.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A proof afloat that is saved with the boat.
 *
 * @param outcome compared with the boat as it was measured then
 * @param mark of the boat as it was measured then
 * @param current whether the boat still has these measurements; otherwise the proof corrects
 *     nothing
 */
public record KeptProof(AfloatProof readings, ProofOutcome outcome, String mark, boolean current) {

  public LocalDate day() {
    return readings.date();
  }

  /** A copy that is current if the boat still has the proof's mark. */
  public KeptProof heldAgainst(String markOfBoat) {
    return new KeptProof(readings, outcome, mark, mark.equals(markOfBoat));
  }

  /**
   * The proof that holds the launch: the last one in which the boat did not float as it was
   * measured. A later proof that agrees lifts the hold if it reads as much; so does the same proof
   * once it agrees with new measurements. A proof without the disputed readings lifts nothing.
   */
  public static Optional<KeptProof> holding(List<KeptProof> proofs) {
    List<KeptProof> open = new ArrayList<>();
    for (KeptProof proof : inOrder(proofs)) {
      if (proof.outcome().agrees()) {
        open.removeIf(failed -> proof.readings().readsAsMuchAs(failed.readings()));
      } else {
        open.add(proof);
      }
    }
    return open.stream().reduce((one, next) -> next);
  }

  /** The last proof by day; of one day the one saved last. */
  static Optional<KeptProof> last(List<KeptProof> proofs, Predicate<KeptProof> counting) {
    return inOrder(proofs).stream().filter(counting).reduce((one, next) -> next);
  }

  /** The proofs by day; of one day in the order saved. */
  private static List<KeptProof> inOrder(List<KeptProof> proofs) {
    return proofs.stream().sorted(Comparator.comparing(KeptProof::day)).toList();
  }
}
