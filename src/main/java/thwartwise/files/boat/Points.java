package thwartwise.files.boat;

import thwartwise.geometry.Vector3;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** A place in the boat: x from the aft end, y to port, z up, metres. */
public final class Points {
  private static final String ALONG = "Measure x forward from the aft end of the hull, in metres.";
  private static final String ATHWART =
      "Measure y from the middle line, to port positive, in metres.";
  private static final String UP = "Measure z up from the lowest point of the bottom, in metres.";

  private Points() {}

  /** The three distances among the keys of an object. */
  static Vector3 read(ObjectReader fields) {
    return Vector3.of(x(fields), y(fields), z(fields));
  }

  static Vector3 read(ObjectReader parent, String key, String remedy) {
    return read(parent.object(key, remedy, "x", "y", "z"));
  }

  static double x(ObjectReader fields) {
    return fields.number("x", BoatQuantity.ALONG, ALONG);
  }

  static double y(ObjectReader fields) {
    return fields.number("y", BoatQuantity.ATHWART, ATHWART);
  }

  static double optionalY(ObjectReader fields) {
    return fields.optionalNumber("y", BoatQuantity.ATHWART, ATHWART).orElse(0.0);
  }

  static double z(ObjectReader fields) {
    return fields.number("z", BoatQuantity.HEIGHT, UP);
  }

  static ObjectNode write(Vector3 point) {
    return JsonText.object()
        .put("x", unsigned(point.x()))
        .put("y", unsigned(point.y()))
        .put("z", unsigned(point.z()));
  }

  /** A mirrored zero is written as a plain one. */
  public static double unsigned(double value) {
    return value + 0.0;
  }
}
