package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import thwartwise.boat.Body;
import thwartwise.boat.Craft;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Shared;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;

/**
 * What still lifts a boat whose inside is open to the sea: the union of its thin shell, the
 * chambers that count, fastened kit by its own volume up to its own weight, and the part of each
 * body under water.
 *
 * <p>Nothing counts twice. Kit and bodies are boxes along the axes: each is cut free of those
 * before it, then what it shares with a chamber or with the shell is taken away again. A body gets
 * no lift where any chamber stands, full or not: legs are not inside a locker. The share by which a
 * chamber counts is a factor on its unmoved shape.
 */
public final class Swamping {
  private final Craft craft;
  private final double volumeFactor;
  private final Optional<Space> lost;
  private final double density;
  private final List<Lift> lifts = new ArrayList<>();
  private final List<Box> taken = new ArrayList<>();

  private Swamping(Craft craft, double volumeFactor, Optional<Space> lost) {
    this.craft = craft;
    this.volumeFactor = volumeFactor;
    this.lost = lost;
    this.density = craft.waterDensity();
  }

  /**
   * The swamped boat as a floating body.
   *
   * @param volumeFactor what counted volumes are multiplied by (the allowance for tape and jug);
   *     the shell and the bodies follow from masses and are not touched
   * @param lost a chamber that has filled
   */
  public static Floating of(Loading loading, double volumeFactor, Optional<Space> lost) {
    Swamping swamping = new Swamping(loading.craft(), volumeFactor, lost);
    swamping.addHull();
    swamping.addKit();
    for (Body body : loading.people()) {
      swamping.addBody(body.withMass(body.mass() * loading.massFactor()));
    }
    return new Floating(
        loading.mass(), loading.centre(), swamping.lifts, loading.craft().waterDensity());
  }

  private void addHull() {
    double shell = craft.form().shellFactor();
    lifts.add(new Lift(craft.form().shellOutside(), shell));
    lifts.add(new Lift(craft.form().shellInside(), -shell));
    for (Space space : craft.spaces()) {
      if (counts(space)) {
        lifts.add(new Lift(space.solid(), space.counting().share() * volumeFactor));
      }
    }
  }

  private boolean counts(Space space) {
    return space.counting().share() > 0 && lost.map(l -> l != space).orElse(true);
  }

  private void addKit() {
    for (Kit kit : craft.boat().kit()) {
      if (kit.fastened() && kit.volume().isPresent()) {
        double volume = kit.volume().get();
        double share = Math.min(volumeFactor, kit.mass() / (density * volume));
        add(Box.cube(kit.at(), volume), share, this::counts);
      }
    }
  }

  private void addBody(Body body) {
    for (Box box : body.boxes()) {
      add(box, 1, space -> true);
    }
  }

  private void add(Box box, double share, Predicate<Space> standing) {
    List<Box> free = List.of(box);
    for (Box other : taken) {
      free = free.stream().flatMap(b -> b.without(other).stream()).toList();
    }
    taken.add(box);
    for (Box piece : free) {
      lifts.add(new Lift(Solid.block(piece), share));
      Shared shared = craft.shared(piece);
      shared
          .withSpaces()
          .forEach(
              (space, solid) -> {
                if (standing.test(space)) {
                  lifts.add(new Lift(solid, -share));
                }
              });
      lifts.add(new Lift(shared.shellOutside(), -share));
      lifts.add(new Lift(shared.shellInside(), share));
    }
  }
}
