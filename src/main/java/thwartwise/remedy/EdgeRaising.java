package thwartwise.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Opening;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.remedy.Change.Effort;

/** Raising a low edge to the rail, or a bung for a hole that nothing closes. */
final class EdgeRaising {
  /** An edge this little below the rail is as high as the rail, m. */
  private static final double LOWER = 0.01;

  private EdgeRaising() {}

  static List<Change> of(BoatModel model) {
    List<Change> changes = new ArrayList<>();
    for (Opening opening : model.boat().openings()) {
      double rail = rail(model.form(), opening.middle().x());
      if (opening.floodsTheBoat() && opening.diameter().isPresent()) {
        changes.add(shut(model.boat(), opening));
      } else if (opening.floodsTheBoat() && opening.middle().z() < rail - LOWER) {
        changes.add(raised(model.boat(), opening, rail));
      }
    }
    return changes;
  }

  /** The height of the lower side of the rail at a place. */
  private static double rail(HullForm form, double x) {
    return Math.min(form.railAt(x, true).z(), form.railAt(x, false).z());
  }

  private static Change raised(Boat boat, Opening opening, double rail) {
    Vector3 old = opening.middle();
    Opening higher =
        new Opening(
            opening.name(),
            Vector3.of(old.x(), old.y(), rail),
            opening.width(),
            opening.athwart(),
            opening.closedBy(),
            opening.into(),
            opening.diameter());
    return Change.of(
        "raise the " + opening.name(),
        new Deed.RaiseEdge(
            opening.name(), old.z(), rail, boat.propulsion() instanceof Propulsion.Outboard),
        Effort.AN_AFTERNOON,
        replaced(boat, opening, higher));
  }

  private static Change shut(Boat boat, Opening o) {
    Opening closed =
        new Opening(
            o.name(),
            o.middle(),
            o.width(),
            o.athwart(),
            Optional.of("bung"),
            o.into(),
            o.diameter());
    return Change.of(
        "shut the " + o.name(),
        new Deed.ShutHole(o.name()),
        Effort.AN_HOUR,
        replaced(boat, o, closed));
  }

  private static Boat replaced(Boat boat, Opening old, Opening other) {
    return boat.withOpenings(boat.openings().stream().map(o -> o == old ? other : o).toList());
  }
}
