package thwartwise.electrics;

import java.util.Optional;

/**
 * The two wires from the battery to the place where the circuits part, with the main fuse and the
 * main switch in the positive one; they carry the whole current.
 *
 * @param fuse A; zero for none
 * @param fuseDistance along the wire from the battery, m
 * @param length to where the circuits part, m
 * @param area of the copper, m²
 * @param gauge the same by its American number, where it was given so
 * @param insulation the temperature it stands, °C
 * @param alone whether it lies by itself in the open air
 * @param sheathed whether it is in a pipe or sheath all the way to its fuse
 */
public record MainWire(
    Optional<Double> fuse,
    Optional<Double> fuseDistance,
    Optional<Double> length,
    Optional<Double> area,
    Optional<Integer> gauge,
    Optional<Double> insulation,
    Optional<Boolean> alone,
    Optional<Boolean> sheathed) {

  /** A main wire that nobody described. */
  static final MainWire NOT_STATED =
      new MainWire(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** A main wire of which only the fuse is known, A; zero for none. */
  public static MainWire of(double fuse) {
    return new MainWire(
        Optional.of(fuse),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The copper of one wire, m², whichever way it was given. */
  Optional<Double> copper() {
    return area.or(() -> gauge.map(WireSize::ofGauge));
  }

  /**
   * The main wire as a circuit with that current. The lengths of the other circuits are from the
   * battery and include it, so its drop is counted with each of them.
   */
  Circuit carrying(double current, Optional<String> mainSwitch) {
    return new Circuit(
        "main wire",
        Circuit.Use.OTHER,
        current,
        0,
        area,
        gauge,
        insulation,
        alone,
        fuse,
        fuseDistance,
        sheathed,
        mainSwitch,
        Optional.empty());
  }
}
