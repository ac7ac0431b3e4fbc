package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Box;

/**
 * An enclosed space or foam block that may hold the swamped boat up: the part of the hull's inside
 * within a box. A mirrored one is drawn once and occurs twice.
 *
 * @param measuredVolume volume poured in, m³, of the drawn one when mirrored
 * @param mirrored whether it has a twin on the other side
 * @param limberHole whether water in the bilge can run past under it
 * @param twin what is known of the twin alone; nothing when not mirrored
 */
public record Chamber(
    String name,
    Box box,
    Filling filling,
    Optional<Double> measuredVolume,
    boolean mirrored,
    boolean limberHole,
    Twin twin) {

  /** Twins of which the same is known, or a single chamber. */
  public Chamber(
      String name,
      Box box,
      Filling filling,
      Optional<Double> measuredVolume,
      boolean mirrored,
      boolean limberHole) {
    this(name, box, filling, measuredVolume, mirrored, limberHole, Twin.LIKE_THE_DRAWN);
  }

  /** A chamber that water in the bilge cannot pass. */
  public Chamber(
      String name, Box box, Filling filling, Optional<Double> measuredVolume, boolean mirrored) {
    this(name, box, filling, measuredVolume, mirrored, false);
  }

  /** The chambers in the boat: this one, or the drawn one and then its twin. */
  public List<ChamberPart> parts() {
    if (!mirrored) {
      return List.of(
          new ChamberPart(this, Optional.empty(), name, box, filling, measuredVolume, false));
    }
    boolean shared = twin.filling().isEmpty();
    Side drawn = Side.of(box);
    return List.of(
        part(drawn, box, filling, measuredVolume.or(twin::measuredVolume), shared),
        part(
            drawn.other(),
            box.mirrored(),
            twin.filling().orElse(filling),
            twin.measuredVolume().or(() -> measuredVolume),
            shared));
  }

  private ChamberPart part(
      Side side, Box limits, Filling fills, Optional<Double> litres, boolean shared) {
    return new ChamberPart(
        this, Optional.of(side), name + ", " + side.word(), limits, fills, litres, shared);
  }

  /** The same space, or both of two twins, with another filling. */
  public Chamber filledWith(Filling other) {
    return new Chamber(
        name,
        box,
        other,
        measuredVolume,
        mirrored,
        limberHole,
        new Twin(Optional.empty(), twin.measuredVolume()));
  }

  /**
   * A copy with another filling or seal in one of its parts; the other of two twins stays as it is.
   */
  public Chamber filledWith(ChamberPart part, Filling other) {
    if (!mirrored) {
      return filledWith(other);
    }
    boolean drawn = part.side().equals(Optional.of(Side.of(box)));
    Filling twinned = twin.filling().orElse(filling);
    return new Chamber(
        name,
        box,
        drawn ? other : filling,
        measuredVolume,
        true,
        limberHole,
        new Twin(Optional.of(drawn ? twinned : other), twin.measuredVolume()));
  }

  /**
   * What is known of the twin of a drawn chamber alone. What is left out is as for the drawn one.
   *
   * @param filling air behind its own seal, with its own leak test, or foam
   * @param measuredVolume volume poured into the twin, m³
   */
  public record Twin(Optional<Filling> filling, Optional<Double> measuredVolume) {
    public static final Twin LIKE_THE_DRAWN = new Twin(Optional.empty(), Optional.empty());
  }
}
