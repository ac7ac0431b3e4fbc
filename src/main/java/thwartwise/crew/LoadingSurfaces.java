package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * Where something can be set down low on the middle line of a boat: at a spot along it the highest
 * of floor, seat and box. Higher is never easier to carry: raising a weight only takes from what
 * turns the boat back. A chamber is a thing to set weights on, whether its air counts or not, so
 * that one that counts for nothing takes no spot away; one as high as a deck is none, and the floor
 * under it stays, because a space that does not count may be opened and filled.
 */
public final class LoadingSurfaces {
  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);
  private static final Vector3 UP = Vector3.of(0, 0, 1);

  /** From the ends of the boat to its middle, as shares of the length. */
  private static final List<Double> SHARES = List.of(0.08, 0.29, 0.5, 0.71, 0.92);

  /** Above the floor; what is higher than any seat is a deck (judgement), m. */
  private static final double LOW = 0.45;

  /** Half of what is looked at of the hull about a spot, m. */
  private static final double HALF = 0.01;

  private final BoatModel model;

  private LoadingSurfaces(BoatModel model) {
    this.model = model;
  }

  /** Spots along the whole boat, at every place and on every box. */
  static List<Vector3> of(BoatModel model) {
    return new LoadingSurfaces(model).spots();
  }

  private List<Vector3> spots() {
    Span hull = model.form().outside().extent(AHEAD);
    List<Double> along = new ArrayList<>();
    SHARES.forEach(share -> along.add(hull.from() + share * hull.length()));
    model.boat().places().stream().map(Place::x).forEach(along::add);
    model.spaces().stream().map(s -> s.solid().extent(AHEAD).middle()).forEach(along::add);
    return along.stream().map(this::highest).distinct().toList();
  }

  private Vector3 highest(double x) {
    Box about = new Box(new Span(x - HALF, x + HALF), new Span(-HALF, HALF), Span.ALL);
    double floor =
        heights(model.form().inside(), about)
            .mapToDouble(Span::from)
            .reduce(model.boat().hull().floor(), Math::max);
    Stream<Double> boxes =
        model.spaces().stream().flatMap(s -> heights(s.solid(), about)).map(Span::to);
    Stream<Double> seats =
        model.boat().places().stream()
            .filter(p -> p.along().contains(x) && p.across().contains(0))
            .map(Place::z);
    double height =
        Stream.concat(boxes, seats).filter(z -> z <= floor + LOW).reduce(floor, Math::max);
    return Vector3.of(x, 0, height);
  }

  /** From the lowest to the highest point of a solid there; none where it is not. */
  private static Stream<Span> heights(Solid solid, Box about) {
    Solid part = solid.within(about);
    return part.volume() > 0 ? Stream.of(part.extent(UP)) : Stream.empty();
  }
}
