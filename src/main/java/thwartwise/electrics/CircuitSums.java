package thwartwise.electrics;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The computed figures of one circuit.
 *
 * @param main the part of it in the main wire
 * @param drop of voltage there and back, V; empty where nobody measured the wire
 * @param share of the permitted current in open air that remains where it lies
 * @param start of its own wire: distance from the battery along the wires, m
 * @param carries the permitted current where it lies, A
 * @param wanted the least copper for drop and fuse, m²; NaN when none of the table is enough
 * @param fuse the least standard fuse of 1.25 times the current, A; NaN when none is enough
 * @param faults in the order of their gravity
 */
public record CircuitSums(
    Circuit circuit,
    double volts,
    double share,
    double start,
    MainDrop main,
    Optional<Double> drop,
    Optional<Double> carries,
    double wanted,
    double fuse,
    Set<Fault> faults) {

  /** The faults of a circuit; an unknown counts as the fault that it may hide. */
  public enum Fault {
    NO_FUSE,
    FUSE_NOT_STATED,
    FUSE_OVER_WIRE,
    FUSE_UNDER_DRAW,
    WIRE_UNDER_DRAW,
    FUSE_TOO_FAR,
    FUSE_PLACE_NOT_STATED,
    WIRE_NOT_STATED,
    WIRE_TOO_THIN,
    DROP_TOO_GREAT,
    NO_SWITCH
  }

  /**
   * Ω·m: 10.75 Ω for a circular mil and foot, the trade's figure for warm copper (READ). That is
   * 1.787e-8; pure copper at 20 °C has 1.724e-8.
   */
  public static final double RESISTIVITY = 10.75 * Math.PI / 4 * 0.0254e-3 * 0.0254e-3 / 0.3048;

  /** The greatest distance from the battery along the wire, m: 7 in (33 CFR 183.455, READ). */
  public static final double FUSE_WITHIN = 7 * 0.0254;

  /** The same for a wire in a sheath all the way: 40 in (33 CFR 183.455, READ). */
  public static final double FUSE_WITHIN_SHEATHED = 40 * 0.0254;

  /** The ratio of a fuse to the current it carries (common practice, no source). */
  public static final double OVER_DRAW = 1.25;

  /** The faults with which a main fuse still guards its wire. */
  private static final Set<Fault> HARMLESS = Set.of(Fault.FUSE_UNDER_DRAW);

  /**
   * The part of a circuit in the main wire, where the whole current causes its drop.
   *
   * @param length m, one way
   * @param volts lost there and back; both zero where its length or copper is not known
   */
  public record MainDrop(double length, double volts) {
    static final MainDrop NONE = new MainDrop(0, 0);

    static MainDrop of(Circuit circuit, ElectricalSystem electrics) {
      if (circuit.use() == Circuit.Use.CHARGE) {
        return NONE;
      }
      return electrics
          .mainWire()
          .flatMap(wire -> wire.length().flatMap(m -> of(circuit, electrics.drawn(), m, wire)))
          .orElse(NONE);
    }

    private static Optional<MainDrop> of(
        Circuit circuit, double drawn, double length, MainWire wire) {
      double shared = Math.min(length, circuit.length());
      return wire.copper().map(area -> new MainDrop(shared, CircuitSums.drop(drawn, shared, area)));
    }
  }

  private static final double HAIR = 1 + 1e-9;

  /** A; blade and strip fuses as they are sold. */
  private static final List<Double> FUSES =
      List.of(
          1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0,
          100.0, 125.0, 150.0, 175.0, 200.0);

  public CircuitSums {
    Set<Fault> ordered = EnumSet.noneOf(Fault.class);
    ordered.addAll(faults);
    faults = Collections.unmodifiableSet(ordered);
  }

  /** The figures of a circuit alone, or in a bundle with one other. */
  static CircuitSums of(Circuit circuit, double volts) {
    return of(circuit, volts, share(circuit, List.of(circuit)), 0, MainDrop.NONE);
  }

  /**
   * The figures of all circuits of a boat. Wires in a pipe count as in one pipe and wires with
   * others as in one bundle, because nobody says which lie together. Behind a main fuse that guards
   * its wire, a circuit begins where it leaves that wire.
   */
  public static List<CircuitSums> of(ElectricalSystem electrics) {
    double guarded = guarded(electrics);
    return electrics.circuits().stream()
        .map(
            c ->
                of(
                    c,
                    electrics.volts(),
                    share(c, electrics.circuits()),
                    c.use() == Circuit.Use.CHARGE ? 0 : guarded,
                    MainDrop.of(c, electrics)))
        .toList();
  }

  /**
   * The figures of the main wire with everything on, stated or not; empty without a consumer. A
   * main switch that nobody named is no fault of this wire.
   */
  public static Optional<CircuitSums> ofMain(ElectricalSystem electrics) {
    if (electrics.circuits().stream().allMatch(c -> c.use() == Circuit.Use.CHARGE)) {
      return Optional.empty();
    }
    Circuit main =
        electrics
            .mainWire()
            .orElse(MainWire.NOT_STATED)
            .carrying(electrics.drawn(), electrics.mainSwitch());
    CircuitSums sums = of(main, electrics.volts());
    Set<Fault> faults = EnumSet.noneOf(Fault.class);
    faults.addAll(sums.faults);
    faults.remove(Fault.NO_SWITCH);
    return Optional.of(sums.with(faults));
  }

  private static double guarded(ElectricalSystem electrics) {
    boolean guarded =
        ofMain(electrics).filter(main -> HARMLESS.containsAll(main.faults)).isPresent();
    return guarded ? electrics.mainWire().flatMap(MainWire::length).orElse(0.0) : 0;
  }

  private static CircuitSums of(
      Circuit circuit, double volts, double share, double start, MainDrop main) {
    double fuse = fuse(circuit.current());
    Optional<Double> copper = circuit.copper();
    CircuitSums sums =
        new CircuitSums(
            circuit,
            volts,
            share,
            start,
            main,
            copper.map(area -> main.volts() + drop(circuit.current(), own(circuit, main), area)),
            copper.map(area -> carries(circuit, share, area)).filter(c -> !Double.isNaN(c)),
            wanted(circuit, volts, share, fuse, main),
            fuse,
            Set.of());
    return sums.with(sums.found());
  }

  private CircuitSums with(Set<Fault> others) {
    return new CircuitSums(circuit, volts, share, start, main, drop, carries, wanted, fuse, others);
  }

  /** The length of its own wire, m. */
  private static double own(Circuit circuit, MainDrop main) {
    return circuit.length() - main.length();
  }

  /** The voltage drop along a wire there and back, V: {@code ρ 2 L I / A}. */
  public static double drop(double current, double length, double area) {
    return RESISTIVITY * 2 * length * current / area;
  }

  /** The copper for a drop, m². */
  public static double areaFor(double current, double length, double drop) {
    return RESISTIVITY * 2 * length * current / drop;
  }

  /** The least standard fuse of 1.25 times that current, A; NaN when none is large enough. */
  public static double fuse(double current) {
    return FUSES.stream()
        .filter(sold -> sold * HAIR >= OVER_DRAW * current)
        .findFirst()
        .orElse(Double.NaN);
  }

  /**
   * The least copper of its own wire for a drop of that share of the voltage, m²; NaN where the
   * main wire alone loses as much.
   */
  public double areaFor(double share) {
    return areaFor(circuit, main, share * volts);
  }

  private static double areaFor(Circuit circuit, MainDrop main, double drop) {
    double left = drop - main.volts();
    return left > 0 ? areaFor(circuit.current(), own(circuit, main), left) : Double.NaN;
  }

  /** Whether the main wire alone loses more than the circuit may. */
  public boolean isMainTooThin() {
    return !(circuit.use().mostDrop() * volts > main.volts());
  }

  /** The greatest distance of the fuse from the battery along the wires, m. */
  public double fuseWithin() {
    return start + (circuit.sheathed().orElse(false) ? FUSE_WITHIN_SHEATHED : FUSE_WITHIN);
  }

  private static double carries(Circuit circuit, double share, double area) {
    OptionalDouble open = Ampacity.ofArea(area, insulation(circuit));
    return open.isPresent() ? share * open.getAsDouble() : Double.NaN;
  }

  private static double insulation(Circuit circuit) {
    return circuit.insulation().orElse(Ampacity.UNSTATED_INSULATION);
  }

  private static double share(Circuit circuit, List<Circuit> all) {
    if (isAlone(circuit)) {
      return 1;
    }
    boolean piped = circuit.sheathed().orElse(false);
    long alike =
        all.stream().filter(c -> !isAlone(c) && c.sheathed().orElse(false) == piped).count();
    return Ampacity.together(Ampacity.wires((int) alike, piped));
  }

  /** A wire in a sheath is not in the open air, whatever else is stated of it. */
  private static boolean isAlone(Circuit circuit) {
    return circuit.alone().orElse(false) && !circuit.sheathed().orElse(false);
  }

  private static double wanted(
      Circuit circuit, double volts, double share, double fuse, MainDrop main) {
    double forFuse = Ampacity.areaFor(fuse / share, insulation(circuit));
    double forDrop = areaFor(circuit, main, circuit.use().mostDrop() * volts);
    // NaN where no wire carries the fuse, or where the main wire loses too much.
    return Math.max(forFuse, forDrop);
  }

  private Set<Fault> found() {
    Set<Fault> found = EnumSet.noneOf(Fault.class);
    fuseFaults(found);
    if (circuit.copper().isEmpty()) {
      found.add(Fault.WIRE_NOT_STATED);
    } else if (carries.isEmpty()) {
      found.add(Fault.WIRE_TOO_THIN);
    } else if (carries.get() * HAIR < circuit.current()) {
      found.add(Fault.WIRE_UNDER_DRAW);
    }
    if (drop.isPresent() && drop.get() > circuit.use().mostDrop() * volts * HAIR) {
      found.add(Fault.DROP_TOO_GREAT);
    }
    if (circuit.switched().isEmpty() && circuit.use() != Circuit.Use.CHARGE) {
      found.add(Fault.NO_SWITCH);
    }
    return found;
  }

  private void fuseFaults(Set<Fault> found) {
    if (circuit.fuse().isEmpty()) {
      found.add(Fault.FUSE_NOT_STATED);
      return;
    }
    double amperes = circuit.fuse().get();
    if (!(amperes > 0)) {
      found.add(Fault.NO_FUSE);
      return;
    }
    if (carries.isPresent() && amperes > carries.get() * HAIR) {
      found.add(Fault.FUSE_OVER_WIRE);
    }
    if (amperes * HAIR < OVER_DRAW * circuit.current()) {
      found.add(Fault.FUSE_UNDER_DRAW);
    }
    if (circuit.fuseDistance().isEmpty()) {
      found.add(Fault.FUSE_PLACE_NOT_STATED);
    } else if (circuit.fuseDistance().get() > fuseWithin() * HAIR) {
      found.add(Fault.FUSE_TOO_FAR);
    }
  }
}
