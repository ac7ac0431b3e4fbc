package thwartwise.shell;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.boat.KeptProof;
import thwartwise.files.boat.BoatMark;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.proof.ProofAssessment;
import thwartwise.rules.RuleSet;
import thwartwise.spread.InputKind;

/**
 * A proof that holds the launch, compared with the boat as measured now. The readings stay as they
 * were. A proof that agrees now lifts the hold but corrects nothing, because nobody knows whether
 * the boat was measured again or changed.
 *
 * @param boat with the new outcome, and every proof with the present mark
 * @param assessed the proof without a fit of the hull; empty where none holds, or nothing can be
 *     compared
 */
record ProofReassessment(Boat boat, Optional<ProofAssessment> assessed) {

  /**
   * @param better kinds of measurement that were taken with more care
   * @throws thwartwise.hull.UnusableBoat when the measurements contradict each other
   */
  static ProofReassessment of(Boat boat, RuleSet rules, Set<InputKind> better, LocalDate today) {
    Boat marked = BoatMark.withProofs(boat, boat.proofs());
    Optional<KeptProof> holding = KeptProof.holding(marked.proofs());
    Optional<ProofAssessment> assessed =
        holding.flatMap(
            proof ->
                ProofAssessment.of(
                        marked,
                        proof.readings(),
                        rules,
                        RuleSetFile.measuringSpreads(),
                        joined(better, proof.outcome().careful()),
                        today)
                    .map(ProofAssessment::withoutFit));
    return new ProofReassessment(
        assessed.map(a -> with(marked, holding.orElseThrow(), a)).orElse(marked), assessed);
  }

  /** A measurement taken with care does not become doubtful by measuring again. */
  private static Set<InputKind> joined(Set<InputKind> better, List<String> careful) {
    Set<InputKind> all = EnumSet.noneOf(InputKind.class);
    all.addAll(better);
    Arrays.stream(InputKind.values())
        .filter(kind -> careful.contains(kind.name()))
        .forEach(all::add);
    return all;
  }

  /** The same after changes; a boat with the same measurements is not assessed again. */
  static Boat afterChanges(Boat boat, RuleSet rules, LocalDate today) {
    Boat marked = BoatMark.withProofs(boat, boat.proofs());
    return KeptProof.holding(marked.proofs()).filter(proof -> !proof.current()).isPresent()
        ? of(boat, rules, Set.of(), today).boat()
        : marked;
  }

  private static Boat with(Boat boat, KeptProof old, ProofAssessment assessed) {
    KeptProof now =
        new KeptProof(
            old.readings(), assessed.outcome(), BoatMark.ofProof(boat, old.readings()), true);
    List<KeptProof> all =
        boat.proofs().stream().map(proof -> proof.equals(old) ? now : proof).toList();
    return boat.withProofs(all);
  }
}
