package thwartwise.afloat;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Overlap;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;

/**
 * What still lifts a boat whose inside is open to the sea: the union of its thin shell, the
 * chambers that count, fastened kit by its own volume up to its own weight, and the part of each
 * body under water.
 *
 * <p>Nothing counts twice. Kit and bodies are boxes along the axes: each is cut free of those
 * before it, then what it shares with a chamber or with the shell is taken away again. A body gets
 * no lift where any chamber stands, full or not: legs are not inside a locker. So which chamber is
 * lost changes nothing for the bodies, and they are worked out once. The share by which a chamber
 * counts is a factor on its unmoved shape.
 */
public final class Swamping {
  private final Loading loading;
  private final BoatModel model;
  private final double volumeFactor;
  private final double density;
  private final List<Piece> kit = new ArrayList<>();
  private final List<Lift> bodies = new ArrayList<>();
  private final DisjointBoxes boxes = new DisjointBoxes();

  /** A box of kit free of the kit before it, counted by a share. */
  private record Piece(Box box, double share) {}

  private Swamping(Loading loading, double volumeFactor) {
    this.loading = loading;
    this.model = loading.model();
    this.volumeFactor = volumeFactor;
    this.density = model.waterDensity();
  }

  /**
   * @param volumeFactor factor on counted volumes (the allowance for tape and jug); the shell and
   *     the bodies follow from masses and are not changed
   */
  public static Swamping of(Loading loading, double volumeFactor) {
    Swamping swamping = new Swamping(loading, volumeFactor);
    swamping.placeKit();
    boxes(loading).forEach(swamping::placeBody);
    return swamping;
  }

  /** The people as boxes, with their overlaps. */
  static Stream<Box> boxes(Loading loading) {
    return loading.people().stream()
        .map(body -> body.withMass(body.mass() * loading.massFactor()))
        .flatMap(body -> loading.model().boxes(body).stream());
  }

  /** The swamped boat as a floating body, without the chambers that have filled too. */
  public FloatingBody floating(Collection<Space> lost) {
    Predicate<Space> counts = s -> s.counting().share() > 0 && !lost.contains(s);
    List<Lift> lifts = new ArrayList<>(bodies);
    double shell = model.form().shellFactor();
    lifts.add(new Lift(model.form().shellOutside(), shell));
    lifts.add(new Lift(model.form().shellInside(), -shell));
    for (Space space : model.spaces()) {
      if (counts.test(space)) {
        lifts.add(new Lift(space.solid(), space.counting().share() * volumeFactor));
      }
    }
    kit.forEach(piece -> lift(piece.box(), piece.share(), counts, lifts));
    return new FloatingBody(loading.mass(), loading.centre(), lifts, density);
  }

  private void placeKit() {
    for (Kit item : model.boat().kit()) {
      if (item.fastened() && item.volume().isPresent()) {
        double volume = item.volume().get();
        double share = Math.min(volumeFactor, item.mass() / (density * volume));
        boxes.place(Box.cube(item.at(), volume)).forEach(box -> kit.add(new Piece(box, share)));
      }
    }
  }

  private void placeBody(Box box) {
    boxes.place(box).forEach(piece -> lift(piece, 1, space -> true, bodies));
  }

  private void lift(Box piece, double share, Predicate<Space> standing, List<Lift> lifts) {
    Overlap shared = model.shared(piece);
    lifts.add(new Lift(shared.whole(), share));
    shared
        .withSpaces()
        .forEach(
            (space, solid) -> {
              if (standing.test(space)) {
                lifts.add(new Lift(solid, -share));
              }
            });
    if (shared.touchesShell()) {
      lifts.add(new Lift(shared.shellOutside(), -share));
      lifts.add(new Lift(shared.shellInside(), share));
    }
  }
}
