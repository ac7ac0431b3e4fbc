package thwartwise.rules;

import java.util.List;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.rules.Parameters.Parameter;

/**
 * Loads by the boat's three sizes, as in France's Division 227, art. 227-2.03 (law text of about
 * 2008, READ): largest load M = 0.1 L B C tonnes with C from the bottom to the gunwale amidships;
 * litres of buoyancy for hull, gear and motor and a quarter of M, a wooden hull's own counted half.
 */
final class LengthBeamDepth {
  static final Parameter PER_CUBIC_METRE =
      Parameter.number(
          "kg-per-cubic-metre",
          1,
          1000,
          "kilograms for each cubic metre of length by beam by depth");

  private static final double WATER = 1000;
  private static final double WOOD_SHARE = 0.5;
  private static final double SLICE = 0.005;

  private LengthBeamDepth() {}

  static List<FormulaResult> load(RatedBoat boat, Parameters values) {
    return List.of(
        FormulaResult.of(
            "length x beam x depth, largest load", CapKind.LOAD, loadOf(boat, values)));
  }

  static List<FormulaResult> buoyancy(RatedBoat boat, Parameters values) {
    double needed = buoyancy(boat.hullMass() + boat.kitMass(), loadOf(boat, values));
    return List.of(
        FormulaResult.of("buoyancy for a quarter of the load", CapKind.FLOTATION, needed)
            .comparedWith(counted(boat) + WOOD_SHARE * wood(boat))
            .withNote(new FormulaNote.KitAsGear()));
  }

  private static double loadOf(RatedBoat boat, Parameters values) {
    return load(boat.length(), boat.beam(), depth(boat), values.number(PER_CUBIC_METRE.name()));
  }

  /** kg. */
  static double load(double length, double beam, double depth, double perCubicMetre) {
    return perCubicMetre * length * beam * depth;
  }

  /** m³ that hold up all that is built in or carried and a quarter of the load. */
  static double buoyancy(double hullGearMotor, double load) {
    return (hullGearMotor + load / 4) / WATER;
  }

  /** From the bottom to the lower of the two gunwales amidships, m. */
  static double depth(RatedBoat boat) {
    double middle = boat.aftEnd() + boat.length() / 2;
    Box slice = new Box(new Span(middle - SLICE, middle + SLICE), Span.ALL, Span.ALL);
    double bottom = boat.model().form().outside().within(slice).extent(Vector3.of(0, 0, 1)).from();
    double rail =
        Math.min(
            boat.model().form().railAt(middle, true).z(),
            boat.model().form().railAt(middle, false).z());
    return rail - bottom;
  }

  private static double counted(RatedBoat boat) {
    return boat.model().spaces().stream()
        .mapToDouble(s -> s.solid().volume() * s.counting().share())
        .sum();
  }

  private static double wood(RatedBoat boat) {
    double density = boat.model().boat().hull().density();
    return density < WATER ? boat.hullMass() / density : 0;
  }
}
