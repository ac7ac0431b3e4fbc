package thwartwise.checks;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.Floating;
import thwartwise.afloat.Swamping;
import thwartwise.boat.Body;
import thwartwise.boat.Craft;
import thwartwise.boat.Loading;
import thwartwise.boat.Space;

/**
 * Immutable loading put to the checks, with the allowance under which it is judged. What lifts it
 * when swamped is worked out once and remembered, because several checks ask for it.
 */
public final class Trial {
  private final Craft craft;
  private final List<Body> people;
  private final List<Loading.Weight> extra;
  private final Allowance allowance;
  private final String condition;
  private Swamping swamping;

  private Trial(
      Craft craft,
      List<Body> people,
      List<Loading.Weight> extra,
      Allowance allowance,
      String condition) {
    this.craft = craft;
    this.people = List.copyOf(people);
    this.extra = List.copyOf(extra);
    this.allowance = allowance;
    this.condition = condition;
  }

  /**
   * As measured, without allowance.
   *
   * @param condition the loading in words
   */
  public static Trial of(Craft craft, List<Body> people, String condition) {
    return new Trial(craft, people, List.of(), Allowance.NONE, condition);
  }

  public Trial under(Allowance newAllowance) {
    return new Trial(craft, people, extra, newAllowance, condition);
  }

  public Trial with(Loading.Weight weight) {
    return new Trial(craft, people, List.of(weight), allowance, condition);
  }

  Trial moved(List<Body> moved, String how) {
    String words = condition.isEmpty() ? how : condition + "; " + how;
    return new Trial(craft, moved, extra, allowance, words);
  }

  public Craft craft() {
    return craft;
  }

  public List<Body> people() {
    return people;
  }

  public Allowance allowance() {
    return allowance;
  }

  public String condition() {
    return condition;
  }

  /** Whether everything but the people is the same on both sides. */
  boolean isSymmetric() {
    return craft.isSymmetric() && extra.stream().allMatch(w -> w.at().y() == 0);
  }

  public Loading loading() {
    return new Loading(craft, people, extra, allowance.massFactor());
  }

  /** The boat dry inside. */
  public Floating afloat() {
    return Floating.dry(loading());
  }

  public Equilibria atRest() {
    return Equilibrium.from(afloat());
  }

  /** The boat open to the sea, everyone seated. */
  public Floating swamped(Optional<Space> lost) {
    if (swamping == null) {
      swamping = Swamping.of(loading(), allowance.volumeFactor());
    }
    return swamping.floating(lost);
  }

  /** Water density times all that lifts fully under, less all mass aboard, kg. */
  public double spareBuoyancy(Optional<Space> lost) {
    Floating floating = swamped(lost);
    return floating.density() * floating.liftVolume() - floating.mass();
  }
}
