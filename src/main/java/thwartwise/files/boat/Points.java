package thwartwise.files.boat;

import thwartwise.geometry.Vector3;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.PartProperties;
import tools.jackson.databind.node.ObjectNode;

/** A point in the boat: x from the aft end, y to port, z up, metres. */
public final class Points {
  private Points() {}

  /** The point from its three keys. */
  static Vector3 read(ObjectReader fields) {
    return Vector3.of(x(fields), y(fields), z(fields));
  }

  static Vector3 read(ObjectReader parent, String key, String remedy) {
    return read(parent.object(key, remedy, "x", "y", "z"));
  }

  static double x(ObjectReader fields) {
    return fields.required(PartProperties.X);
  }

  static double y(ObjectReader fields) {
    return fields.required(PartProperties.Y);
  }

  static double optionalY(ObjectReader fields) {
    return fields.optional(PartProperties.Y).orElse(0.0);
  }

  static double z(ObjectReader fields) {
    return fields.required(PartProperties.Z);
  }

  static ObjectNode write(Vector3 point) {
    ObjectNode node = JsonText.object();
    PartProperties.OF_POINT.forEach(each -> JsonText.put(node, each, point));
    return node;
  }

  /** A mirrored zero is written as zero without a sign. */
  public static double unsigned(double value) {
    return value + 0.0;
  }
}
