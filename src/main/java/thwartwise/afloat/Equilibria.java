package thwartwise.afloat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every pose that a boat reaches when it is released upright and nudged, or why there is none.
 *
 * @param reached stable and unstable equilibria that the search reached, each once
 * @param ending how the search ended
 */
public record Equilibria(List<Pose> reached, Ending ending) {

  /** How a search for an equilibrium ended. */
  public enum Ending {
    RESTS,
    SINKS,
    OVERPOWERED,
    NOT_FOUND
  }

  public Equilibria {
    reached = List.copyOf(reached);
  }

  static Equilibria none(Ending ending) {
    return new Equilibria(List.of(), ending);
  }

  /**
   * The poses of several searches; one that ended without an equilibrium decides for all of them.
   */
  public static Equilibria of(List<Equilibria> searches) {
    return searches.stream()
        .filter(e -> e.ending != Ending.RESTS)
        .findFirst()
        .orElseGet(
            () ->
                new Equilibria(
                    searches.stream().flatMap(e -> e.reached.stream()).toList(), Ending.RESTS));
  }

  /** The poses of the same boat with everything on the other side. */
  Equilibria mirrored() {
    return new Equilibria(reached.stream().map(Pose::mirrored).toList(), ending);
  }

  /** False when the question stays open, because no answer was found either way. */
  public boolean assessed() {
    return ending != Ending.NOT_FOUND;
  }

  public boolean exist() {
    return !reached.isEmpty();
  }

  /** The pose that counts: the one farthest from upright. */
  public Optional<Pose> worst() {
    return reached.stream().max(Comparator.comparingDouble(Pose::tilt));
  }

  /** True when every pose reached returns after a nudge and is upright. */
  public boolean allUpright() {
    return allStable() && reached.stream().allMatch(Pose::isUpright);
  }

  /** True when every pose reached returns after a nudge. */
  public boolean allStable() {
    return exist() && reached.stream().allMatch(Pose::stable);
  }
}
