package thwartwise.checks;

import java.util.List;
import java.util.Optional;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.Floating;
import thwartwise.afloat.Lift;
import thwartwise.afloat.Swamping;
import thwartwise.boat.Body;
import thwartwise.boat.Craft;
import thwartwise.boat.Loading;
import thwartwise.boat.Space;

/**
 * One loading put to the checks, with the allowance under which it is judged.
 *
 * @param condition the loading in words
 */
public record Trial(
    Craft craft,
    List<Body> people,
    List<Loading.Weight> extra,
    Allowance allowance,
    String condition) {

  public Trial {
    people = List.copyOf(people);
    extra = List.copyOf(extra);
  }

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

  public Loading loading() {
    return new Loading(craft, people, extra, allowance.massFactor());
  }

  /** The boat dry inside. */
  public Floating afloat() {
    Loading loading = loading();
    return new Floating(
        loading.mass(),
        loading.centre(),
        List.of(new Lift(craft.form().outside(), 1)),
        craft.waterDensity());
  }

  public Equilibria atRest() {
    return Equilibrium.from(afloat());
  }

  /** The boat open to the sea, everyone seated. */
  public Floating swamped(Optional<Space> lost) {
    return Swamping.of(loading(), allowance.volumeFactor(), lost);
  }

  /** Water density times all that lifts fully under, less all mass aboard, kg. */
  public double spareBuoyancy(Optional<Space> lost) {
    Floating floating = swamped(lost);
    return floating.density() * floating.liftVolume() - floating.mass();
  }
}
