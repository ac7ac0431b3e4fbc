package thwartwise.afloat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;

/**
 * A part of the boat's inside that loose water cannot leave: the whole of it, or the part between
 * two thwart boxes that reach from side to side and from the floor up and have no limber hole.
 *
 * @param name for a person
 * @param box its limits; up to the lower of its dams
 */
public record Bay(String name, Box box) {

  /** A dam that stands this much above the bottom, m, still holds water back. */
  private static final double GAP = 0.02;

  /** A smaller volume than this is no bay, m³. */
  private static final double LEAST = 0.01;

  /** The whole inside. */
  public static final Bay WHOLE = new Bay("the whole boat", new Box(Span.ALL, Span.ALL, Span.ALL));

  /** Every bay of the boat; none where nothing dams it. */
  public static List<Bay> each(BoatModel model) {
    List<Space> dams =
        model.spaces().stream()
            .filter(s -> dams(s, model.form(), model.boat().hull().floor()))
            .sorted(Comparator.comparingDouble(s -> s.solid().extent(AHEAD).from()))
            .toList();
    if (dams.isEmpty()) {
      return List.of();
    }
    Span inside = model.form().inside().extent(AHEAD);
    List<Bay> bays = new ArrayList<>();
    for (int i = 0; i <= dams.size(); i++) {
      double from = i == 0 ? inside.from() : dams.get(i - 1).solid().extent(AHEAD).to();
      double to = i == dams.size() ? inside.to() : dams.get(i).solid().extent(AHEAD).from();
      if (to > from) {
        bays.add(bay(dams, i, new Span(from, to)));
      }
    }
    return bays.stream()
        .filter(b -> model.form().inside().within(b.box()).volume() > LEAST)
        .toList();
  }

  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);

  private static Bay bay(List<Space> dams, int i, Span x) {
    double top =
        Math.min(
            i == 0 ? Double.POSITIVE_INFINITY : dams.get(i - 1).box().z().to(),
            i == dams.size() ? Double.POSITIVE_INFINITY : dams.get(i).box().z().to());
    return new Bay(name(dams, i), new Box(x, Span.ALL, new Span(Double.NEGATIVE_INFINITY, top)));
  }

  private static String name(List<Space> dams, int i) {
    if (i == 0) {
      return "the bay aft of the " + dams.get(0).name();
    }
    if (i == dams.size()) {
      return "the bay forward of the " + dams.get(i - 1).name();
    }
    return "the bay between the " + dams.get(i - 1).name() + " and the " + dams.get(i).name();
  }

  private static boolean dams(Space space, HullForm form, double floor) {
    Vector3 across = Vector3.of(0, 1, 0);
    Span whole =
        form.inside().within(new Box(space.box().x(), Span.ALL, space.box().z())).extent(across);
    boolean sideToSide =
        space.box().y().from() <= whole.from() && space.box().y().to() >= whole.to();
    return !space.chamber().limberHole()
        && space.box().z().from() <= floor + GAP
        && sideToSide
        && CountedBuoyancy.holdsWaterBack(space.part());
  }
}
