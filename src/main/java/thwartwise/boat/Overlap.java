package thwartwise.boat;

import java.util.LinkedHashMap;
import java.util.Map;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.hull.HullForm;

/**
 * The overlap of a box with the spaces and with the shell of a boat, so that nothing lifts twice.
 *
 * @param whole the box itself
 * @param withSpaces only the spaces it meets
 * @param shellOutside its part inside the hull's outside; empty when it does not touch the shell
 * @param shellInside its part inside the shell; the two differ by what lies in the shell itself
 */
public record Overlap(
    Solid whole, Map<Space, Solid> withSpaces, Solid shellOutside, Solid shellInside) {
  /** m³. */
  static final double NEGLIGIBLE = 1e-7;

  static Overlap of(BoatModel model, Box box) {
    HullForm form = model.form();
    Map<Space, Solid> withSpaces = new LinkedHashMap<>();
    for (Space space : model.spaces()) {
      if (space.solid().volumeWithin(box) > NEGLIGIBLE) {
        withSpaces.put(space, form.chamber(space.box(), box));
      }
    }
    double shell = form.shellOutside().volumeWithin(box) - form.shellInside().volumeWithin(box);
    return shell > NEGLIGIBLE
        ? new Overlap(Solid.block(box), withSpaces, form.shellOutside(box), form.shellInside(box))
        : new Overlap(Solid.block(box), withSpaces, Solid.EMPTY, Solid.EMPTY);
  }

  public boolean touchesShell() {
    return shellOutside.triangleCount() > 0;
  }
}
