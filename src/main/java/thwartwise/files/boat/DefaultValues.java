package thwartwise.files.boat;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.AssumptionTexts;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;

/**
 * What is taken for granted when a boat file leaves it out. A value taken for granted is left out
 * again on writing, so that the next reader also hears that nobody measured it.
 */
public final class DefaultValues {
  private DefaultValues() {}

  /** The shell as thick as is usual for the stuff. */
  public static String usualThickness(Material material) {
    return AssumptionTexts.usualThickness(material);
  }

  /** People stand on the shell itself. */
  public static String floorOnTheShell(double thickness) {
    return AssumptionTexts.floorOnTheShell(thickness);
  }

  static List<String> of(boolean thicknessLeftOut, boolean floorLeftOut, HullMeasurements hull) {
    List<String> texts = new ArrayList<>();
    if (thicknessLeftOut) {
      hull.material().map(DefaultValues::usualThickness).ifPresent(texts::add);
    }
    if (floorLeftOut) {
      texts.add(floorOnTheShell(hull.thickness()));
    }
    return texts;
  }

  /** Those that no key left out tells by itself. */
  static List<String> notLeftOut(List<String> texts, HullMeasurements hull) {
    List<String> derived = of(true, true, hull);
    return texts.stream().filter(text -> !derived.contains(text)).toList();
  }

  static boolean coverThickness(List<String> texts, HullMeasurements hull) {
    return hull.material().map(DefaultValues::usualThickness).filter(texts::contains).isPresent();
  }

  static boolean coverFloor(List<String> texts, HullMeasurements hull) {
    return texts.contains(floorOnTheShell(hull.thickness()));
  }
}
