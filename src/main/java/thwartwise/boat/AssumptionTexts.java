package thwartwise.boat;

import thwartwise.hull.Material;
import thwartwise.measure.Rounding;

/**
 * The words in which a boat says what nobody measured. One place for them: whoever leaves a value
 * out and whoever reads the boat back must mean the same.
 */
public final class AssumptionTexts {
  private AssumptionTexts() {}

  /** The shell as thick as is usual for the stuff. */
  public static String usualThickness(Material material) {
    return "Shell thickness %s mm: usual for %s, not measured."
        .formatted(millimetres(material.usualThickness()), material.word());
  }

  /** A shell that nobody measured is taken as thick, so that chambers are small; metres. */
  public static String thickShell(Material material, double thickness) {
    return "Shell thickness %s mm: thick for %s, not measured (judgement)."
        .formatted(millimetres(thickness), material.word());
  }

  /** People stand on the shell itself; its thickness in metres. */
  public static String floorOnTheShell(double thickness) {
    return "Floor at %s mm above the lowest point of the bottom: the shell itself, not measured."
        .formatted(millimetres(thickness));
  }

  private static String millimetres(double metres) {
    return Rounding.nearest(metres * 1000, 3);
  }
}
