package thwartwise.boat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A proof afloat that is kept with the boat.
 *
 * @param outcome of the boat as it was measured then
 * @param mark of the boat as it was measured then
 * @param current whether the boat is still measured like that; otherwise nothing is corrected by it
 */
public record KeptProof(AfloatProof readings, ProofOutcome outcome, String mark, boolean current) {

  public LocalDate day() {
    return readings.date();
  }

  /** The same, next to a boat with a mark. */
  public KeptProof heldAgainst(String markOfBoat) {
    return new KeptProof(readings, outcome, mark, mark.equals(markOfBoat));
  }

  /**
   * The proof by which the boat stays ashore: the last one where the boat did not float as it was
   * measured. A later proof that agrees lifts it where it reads as much; so does the same proof
   * once it agrees with what was measured again. What was not read again agrees with nothing.
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

  /** By its day; of one day the one that was kept last. */
  static Optional<KeptProof> last(List<KeptProof> proofs, Predicate<KeptProof> counting) {
    return inOrder(proofs).stream().filter(counting).reduce((one, next) -> next);
  }

  /** By their days; of one day as they were kept. */
  private static List<KeptProof> inOrder(List<KeptProof> proofs) {
    return proofs.stream().sorted(Comparator.comparing(KeptProof::day)).toList();
  }
}
