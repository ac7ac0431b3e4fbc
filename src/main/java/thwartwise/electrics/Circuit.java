package thwartwise.electrics;

import java.util.Optional;

/**
 * Two wires from the battery to a consumer or a charger.
 *
 * @param current A, with everything on it switched on
 * @param length one way, m
 * @param area of the copper, m²
 * @param gauge the same by its American number, where it was given so
 * @param insulation the temperature it stands, °C
 * @param alone whether the wires lie by themselves in the open air, not in a pipe or with others
 * @param fuse A; zero for none
 * @param fuseDistance along the wire from the battery, m
 * @param sheathed whether the wire is in a pipe or sheath all the way to its fuse
 * @param switched what switches it off
 * @param timeADay s
 */
public record Circuit(
    String name,
    Use use,
    double current,
    double length,
    Optional<Double> area,
    Optional<Integer> gauge,
    Optional<Double> insulation,
    Optional<Boolean> alone,
    Optional<Double> fuse,
    Optional<Double> fuseDistance,
    Optional<Boolean> sheathed,
    Optional<String> switched,
    Optional<Double> timeADay) {

  /** The use of a circuit, and its permitted share of voltage drop (READ, 3 % and 10 %). */
  public enum Use {
    MOTOR("motor", 0.03),
    LIGHTS("navigation lights", 0.03),
    CHARGE("charging", 0.03),
    LAMP("lamp", 0.10),
    SOCKET("socket", 0.10),
    OTHER("other", 0.10);

    private final String word;
    private final double mostDrop;

    Use(String word, double mostDrop) {
      this.word = word;
      this.mostDrop = mostDrop;
    }

    public String word() {
      return word;
    }

    public double mostDrop() {
      return mostDrop;
    }

    /** Whether it is a consumer other than the motor. */
    public boolean isOtherDraw() {
      return this != MOTOR && this != CHARGE;
    }
  }

  /** The copper of one wire, m², whichever way it was given. */
  public Optional<Double> copper() {
    return area.or(() -> gauge.map(WireSize::ofGauge));
  }
}
