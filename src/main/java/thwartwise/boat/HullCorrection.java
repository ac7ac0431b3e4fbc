package thwartwise.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import thwartwise.boat.ProofOutcome.CorrectedHull;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;

/**
 * The effect on the bare hull of proofs afloat that agree. One proof may take from the boat at
 * once: its mass and the height of its centre count as measured or as afloat, whichever is more.
 * Only a second proof of another day may give: then the heavier and the higher of the two count
 * instead of the measured values.
 *
 * @param measured the boat as it was measured
 * @param proofs that count: the last one, and with it the last one of another day
 */
public record HullCorrection(Boat measured, List<KeptProof> proofs) {

  public HullCorrection {
    proofs = List.copyOf(proofs);
  }

  /**
   * The correction, for a boat with the hull weight that its proofs were compared with; empty where
   * no proof counts.
   */
  public static Optional<HullCorrection> of(Boat boat) {
    if (KeptProof.holding(boat.proofs()).isPresent()) {
      return Optional.empty();
    }
    List<KeptProof> counting = new ArrayList<>();
    KeptProof.last(boat.proofs(), counts(boat)).ifPresent(counting::add);
    counting.stream()
        .findFirst()
        .flatMap(
            last ->
                KeptProof.last(boat.proofs(), counts(boat).and(p -> !p.day().equals(last.day()))))
        .ifPresent(counting::add);
    return counting.isEmpty() ? Optional.empty() : Optional.of(new HullCorrection(boat, counting));
  }

  /** A supposed weight of the hull was never afloat. */
  private static Predicate<KeptProof> counts(Boat boat) {
    return proof ->
        proof.current()
            && proof.outcome().agrees()
            && proof.outcome().corrected().isPresent()
            && proof.outcome().measured().mass() == boat.hull().mass();
  }

  /** Whether the proofs replace the measured values. */
  public boolean isConfirmed() {
    return proofs.size() > 1;
  }

  /** The boat to compute. */
  public Boat inForce() {
    HullWeight stated = proofs.get(0).outcome().measured();
    HullWeight afloat = afloat();
    return isConfirmed()
        ? weighing(afloat)
        : weighing(
            new HullWeight(
                Math.max(stated.mass(), afloat.mass()),
                stated.along(),
                Math.max(stated.height(), afloat.height())));
  }

  /** The boats whose answers nothing recommended may exceed. */
  public List<Boat> bounds() {
    HullWeight inForce = weight(inForce());
    HullWeight there = new HullWeight(inForce.mass(), afloat().along(), inForce.height());
    return isConfirmed() ? List.of() : List.of(measured, weighing(there));
  }

  /**
   * The best fit; of two proofs the heavier and the higher, and the middle of both along the boat.
   */
  private HullWeight afloat() {
    List<HullWeight> fitted = corrected().map(CorrectedHull::hull).toList();
    return new HullWeight(
        fitted.stream().mapToDouble(HullWeight::mass).max().orElseThrow(),
        fitted.stream().mapToDouble(HullWeight::along).average().orElseThrow(),
        fitted.stream().mapToDouble(HullWeight::height).max().orElseThrow());
  }

  /**
   * One standard deviation of the values in force, where they are confirmed: the greater of the
   * two.
   */
  public Optional<HullWeight> mayBeOff() {
    return corrected()
        .map(CorrectedHull::mayBeOff)
        .reduce(HullCorrection::greater)
        .filter(spread -> isConfirmed());
  }

  private static HullWeight greater(HullWeight one, HullWeight other) {
    return new HullWeight(
        Math.max(one.mass(), other.mass()),
        Math.max(one.along(), other.along()),
        Math.max(one.height(), other.height()));
  }

  private Stream<CorrectedHull> corrected() {
    return proofs.stream().flatMap(proof -> proof.outcome().corrected().stream());
  }

  private static HullWeight weight(Boat boat) {
    Vector3 centre = boat.hull().centre().orElseThrow();
    return new HullWeight(boat.hull().mass(), centre.x(), centre.z());
  }

  private Boat weighing(HullWeight weight) {
    HullMeasurements hull = measured.hull();
    double across = hull.centre().map(Vector3::y).orElse(0.0);
    return measured.withHull(
        hull.weighing(weight.mass())
            .centredAt(Vector3.of(weight.along(), across, weight.height())));
  }
}
