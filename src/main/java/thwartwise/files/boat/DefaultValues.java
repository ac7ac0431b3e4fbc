package thwartwise.files.boat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.hull.HullMeasurements;

/**
 * Defaults for what a boat file leaves out. A default is left out again on writing, so that the
 * next reader also learns that nobody measured it.
 */
final class DefaultValues {
  private DefaultValues() {}

  static List<Assumption> of(
      boolean thicknessLeftOut, boolean floorLeftOut, HullMeasurements hull) {
    List<Assumption> all = new ArrayList<>();
    if (thicknessLeftOut) {
      usualShell(hull).ifPresent(all::add);
    }
    if (floorLeftOut) {
      all.add(floorOnShell(hull));
    }
    return all;
  }

  /** Those assumptions for which there is no key. */
  static List<Assumption> notLeftOut(List<Assumption> assumptions, HullMeasurements hull) {
    List<Assumption> derived = of(true, true, hull);
    return assumptions.stream().filter(each -> !derived.contains(each)).toList();
  }

  static boolean coverThickness(List<Assumption> assumptions, HullMeasurements hull) {
    return usualShell(hull).filter(assumptions::contains).isPresent();
  }

  static boolean coverFloor(List<Assumption> assumptions, HullMeasurements hull) {
    return assumptions.contains(floorOnShell(hull));
  }

  private static Optional<Assumption> usualShell(HullMeasurements hull) {
    return hull.material().map(m -> new Assumption.UsualShell(m, m.usualThickness()));
  }

  private static Assumption floorOnShell(HullMeasurements hull) {
    return new Assumption.FloorOnShell(hull.thickness());
  }
}
