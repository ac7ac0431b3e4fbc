package thwartwise.afloat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every pose a boat comes to when it is let go upright and nudged, or why there is none.
 *
 * @param reached stable and unstable balances in which the settling came to rest, each once
 * @param noneBecause in words, when {@code reached} is empty
 */
public record Equilibria(List<Pose> reached, String noneBecause) {

  public Equilibria {
    reached = List.copyOf(reached);
  }

  static Equilibria none(String because) {
    return new Equilibria(List.of(), because);
  }

  public boolean exist() {
    return !reached.isEmpty();
  }

  /** The pose that counts: the one furthest from upright. */
  public Optional<Pose> worst() {
    return reached.stream().max(Comparator.comparingDouble(Pose::tilt));
  }

  /** True when every pose reached returns after a nudge. */
  public boolean allStable() {
    return exist() && reached.stream().allMatch(Pose::stable);
  }
}
