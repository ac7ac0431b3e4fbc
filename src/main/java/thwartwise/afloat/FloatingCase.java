package thwartwise.afloat;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * A key of everything that decides where a boat comes to rest: cases with equal keys float alike.
 * Loose water and forces are added by {@link #with}.
 *
 * @param boat what lifts it apart from its people
 * @param alike whether that is the same on both sides
 * @param people the bodies that lift; none where the boat is dry
 * @param mass in units of a ten millionth of a kilogram, and the centre in those of a nanometre,
 *     because sums in another order differ by less
 */
public record FloatingCase(
    LiftKey boat, boolean alike, List<Box> people, long mass, long x, long y, long z) {
  private static final double MASS = 1e-7;
  private static final double LENGTH = 1e-9;

  private static final Comparator<Box> FROM_AFT =
      Comparator.comparingDouble((Box b) -> b.x().from())
          .thenComparingDouble(b -> b.y().from())
          .thenComparingDouble(b -> b.z().from())
          .thenComparingDouble(b -> b.x().to())
          .thenComparingDouble(b -> b.y().to())
          .thenComparingDouble(b -> b.z().to());

  /** The same people float alike, whoever is named first. */
  public FloatingCase {
    people = people.size() < 2 ? List.copyOf(people) : people.stream().sorted(FROM_AFT).toList();
  }

  // Mass and centre distinguish cases well enough; hashing the people's boxes would cost more than
  // a cached answer is worth.
  @Override
  public int hashCode() {
    return Objects.hash(boat, mass, x, y, z);
  }

  /** The boat dry inside. */
  public static FloatingCase dry(BoatModel model, Loading loading) {
    return of(LiftKey.dry(model.dryKey()), model.isAlikeAfloat(), Stream.empty(), loading);
  }

  /** The boat open to the sea, where every body lifts. */
  public static FloatingCase swamped(LiftKey boat, boolean alike, Loading loading) {
    return of(boat, alike, Swamping.boxes(loading), loading);
  }

  private static FloatingCase of(LiftKey boat, boolean alike, Stream<Box> people, Loading loading) {
    Vector3 centre = loading.centre();
    return new FloatingCase(
        boat,
        alike,
        people.map(FloatingCase::plain).toList(),
        Math.round(loading.mass() / MASS),
        Math.round(centre.x() / LENGTH),
        Math.round(centre.y() / LENGTH),
        Math.round(centre.z() / LENGTH));
  }

  /** The same with more that decides; nothing is known of its mirror image then. */
  public FloatingCase with(List<?> more) {
    return more.isEmpty() ? this : new FloatingCase(boat.with(more), false, people, mass, x, y, z);
  }

  /** The boat with everything on the other side; none where that is another boat. */
  Optional<FloatingCase> mirrored() {
    return alike
        ? Optional.of(
            new FloatingCase(
                boat,
                true,
                people.stream().map(Box::mirrored).map(FloatingCase::plain).toList(),
                mass,
                x,
                -y,
                z))
        : Optional.empty();
  }

  /** Removes the sign of a mirrored zero, because hashing distinguishes it. */
  private static Box plain(Box box) {
    Span y = box.y();
    return new Box(box.x(), new Span(y.from() + 0.0, y.to() + 0.0), box.z());
  }
}
