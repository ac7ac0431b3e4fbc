package thwartwise.files.boat;

import thwartwise.boat.Cleat;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import tools.jackson.databind.node.ObjectNode;

/** Where a line can be made fast. */
final class CleatFields {
  static final String[] KEYS = {"name", "x", "y", "z"};
  private static final String NAME = "Name the cleat or ring, as in stern cleat.";

  private CleatFields() {}

  static Cleat read(ObjectReader cleat) {
    return new Cleat(cleat.text("name", NAME), Points.read(cleat));
  }

  static ObjectNode write(Cleat cleat) {
    ObjectNode node = JsonText.object().put("name", cleat.name());
    node.setAll(Points.write(cleat.at()));
    return node;
  }
}
