package thwartwise.files.boat;

import java.util.List;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Skeg;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PlainNumber;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The skeg: its lower edge on the middle line from aft to forward, and its thickness. Whether the
 * edge lies under the keel shows only once the keel line is faired, so that is not asked here.
 */
final class SkegFields {
  static final String[] KEYS = {"edge", "thickness"};
  private static final int FEWEST_POINTS = 2;
  private static final String EDGE =
      "Measure along its lower edge from aft to forward, as in"
          + " [ { \"x\": 0, \"z\": -0.10 }, { \"x\": 1.2, \"z\": -0.02 } ].";
  private static final String UP =
      "Measure z from the lowest point of the hull's bottom, in metres; below it z is negative.";
  private static final String THICKNESS =
      "Measure across its lower edge with callipers and write metres.";

  private SkegFields() {}

  static Skeg read(ObjectReader skeg) {
    List<Vector3> edge =
        skeg.items("edge", "edge point", EDGE, "x", "z").stream().map(SkegFields::point).toList();
    check(skeg.spot(), edge);
    return new Skeg(edge, skeg.number("thickness", BoatQuantity.SKEG_THICKNESS, THICKNESS));
  }

  private static Vector3 point(ObjectReader point) {
    return Vector3.of(Points.x(point), 0, point.number("z", BoatQuantity.HEIGHT, UP));
  }

  private static void check(Location spot, List<Vector3> edge) {
    if (edge.size() < FEWEST_POINTS) {
      throw spot.fault(
          "its edge needs at least two points and there %s. %s",
          edge.isEmpty() ? "is none" : "is one", EDGE);
    }
    for (int i = 1; i < edge.size(); i++) {
      if (!(edge.get(i).x() > edge.get(i - 1).x())) {
        throw spot.fault(
            "edge point %d is at x %s m, not forward of x %s m in edge point %d."
                + " List them from aft to forward.",
            i + 1, PlainNumber.number(edge.get(i).x()), PlainNumber.number(edge.get(i - 1).x()), i);
      }
    }
  }

  static ObjectNode write(Skeg skeg) {
    ObjectNode node = JsonText.object();
    ArrayNode edge = node.putArray("edge");
    skeg.edge()
        .forEach(
            p ->
                edge.addObject().put("x", Points.unsigned(p.x())).put("z", Points.unsigned(p.z())));
    return node.put("thickness", skeg.thickness());
  }
}
