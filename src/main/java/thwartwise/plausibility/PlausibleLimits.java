package thwartwise.plausibility;

import java.util.Optional;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Span;
import thwartwise.hull.Material;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * The limits of a measured boat by our own rule set, in SI. All of it is judgement.
 *
 * @param rules our own set, for the sources of the limits
 */
public record PlausibleLimits(RuleSet rules) {
  /**
   * The lightest usual skin: 6 mm of soaked plywood, kg/m² (4 mm of GRP 6.4, 2 mm of metal 5.4).
   */
  private static final double LIGHTEST_SKIN = 4.5;

  /** The limit of the breadth falls between these lengths, m. */
  private static final double SHORT = 2.5;

  private static final double LONG = 6.0;

  /** The masses that a bare hull can have, by the area of its skin and its material, kg. */
  public Span hullMass(double area, double thickness, double density, Optional<Material> material) {
    double skin = thickness * density;
    return new Span(
        value(hullMassLeast(material)) * area * lightest(thickness, density, material),
        value("hull-mass-most") * area * skin);
  }

  // An unmeasured shell is taken as thick; the hull may still be light.
  private static double lightest(double thickness, double density, Optional<Material> material) {
    double skin = thickness * density;
    return material.filter(m -> !m.isUnmeasured(thickness)).isPresent()
        ? skin
        : Math.min(skin, LIGHTEST_SKIN);
  }

  /** The limit of the least mass of a hull of this material. */
  static String hullMassLeast(Optional<Material> material) {
    return switch (material.orElse(Material.SOFTWOOD)) {
      case PLYWOOD -> "hull-mass-least-plywood";
      case GRP -> "hull-mass-least-grp";
      case ALUMINIUM -> "hull-mass-least-aluminium";
      case SOFTWOOD -> "hull-mass-least";
    };
  }

  /** The masses that a piece of kit can have, by its name and, for a motor, by its power, kg. */
  public Span kitMass(String name, Propulsion driven) {
    Span usual = UsualKit.mass(name).orElse(new Span(0, value("kit-mass-most")));
    return isMotor(name) && driven instanceof Propulsion.Outboard motor
        ? new Span(usual.from(), motorMass(motor.power()))
        : usual;
  }

  private double motorMass(double power) {
    return value("motor-mass-base") + value("motor-mass-per-watt") * power;
  }

  String kitMassSource(String name, Propulsion driven) {
    if (isMotor(name) && driven instanceof Propulsion.Outboard) {
      return source("motor-mass-per-watt");
    }
    return UsualKit.mass(name).isPresent() ? UsualKit.SOURCE : source("kit-mass-most");
  }

  private static boolean isMotor(String name) {
    return Kit.named(name).isMotor();
  }

  public Span density() {
    return new Span(value("density-least"), value("density-most"));
  }

  /**
   * The limit for the whole hull, both sides: a short boat may be broader for its length, so the
   * limit falls evenly from one length to another.
   */
  public double breadthOverLength(double length) {
    double longer = Math.max(0, Math.min(1, (length - SHORT) / (LONG - SHORT)));
    double most = value("breadth-over-length-most");
    return most + longer * (value("breadth-over-length-most-long") - most);
  }

  public StationFairness stations() {
    return new StationFairness(value("station-off-ratio"), value("station-off"));
  }

  /** The greatest distance of the middle of kit beyond the hull, m. */
  public double kitOutside() {
    return value("kit-outside");
  }

  /** The greatest height of its middle above the highest rail, m. */
  public double kitAboveRail() {
    return value("kit-above-rail") + kitOutside();
  }

  /** The greatest height of a seat, by the rail abreast and the floor, m. */
  public double seatMost(double rail, double floor) {
    return Math.min(rail + value("seat-above-rail"), floor + value("seat-above-floor-most"));
  }

  /** The greatest distance of a seat below the top of its box, m. */
  public double seatInBox() {
    return value("seat-in-box");
  }

  /** Whether a hole that is closed under way is too low in a hull of this height for its width. */
  public boolean isLidTooLow(double height, double width, double depth) {
    return height < value("low-opening-share") * depth && width > value("low-opening-width");
  }

  public double lidMost() {
    return value("low-opening-width");
  }

  double value(String name) {
    return rules.value(name);
  }

  /** Limit and source, as they stand after a finding. */
  String source(String name) {
    Limit limit = rules.limit(name);
    return limit.cited();
  }
}
