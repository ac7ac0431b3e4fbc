package thwartwise.files;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Opening;
import thwartwise.boat.Station;
import thwartwise.geometry.Vector3;
import tools.jackson.databind.node.ObjectNode;

/**
 * A place other than the rail where water comes in. Which way its lowest edge runs is taken from
 * where it is: across the boat at either end and near the middle line, along the boat elsewhere.
 */
final class OpeningFields {
  static final String[] KEYS = {"name", "x", "y", "z", "width", "along"};
  private static final Choice<Boolean> RUNS =
      Choice.of(athwart -> athwart ? "athwart" : "fore-and-aft", true, false);
  private static final double END_SHARE = 0.05;
  private static final double NEAR_MIDDLE = 0.1;
  private static final String NAME = "Name the opening, as in transom cut-out or drain.";
  private static final String WIDTH = "Measure the length of its lowest edge in metres.";
  private static final String ALONG = "Write which way its lowest edge runs, or leave it out.";

  private OpeningFields() {}

  static Opening read(Fields fields, List<Station> stations) {
    Vector3 middle = Points.read(fields);
    return new Opening(
        fields.text("name", NAME),
        middle,
        fields.number("width", Quantity.OPENING_WIDTH, WIDTH),
        fields
            .optional("along")
            .map(value -> value.oneOf(RUNS, ALONG))
            .orElseGet(() -> usuallyAthwart(middle, stations)));
  }

  static boolean usuallyAthwart(Vector3 middle, List<Station> stations) {
    double aft = alongs(stations).min(Double::compare).orElseThrow();
    double fore = alongs(stations).max(Double::compare).orElseThrow();
    double near = END_SHARE * (fore - aft);
    boolean atAnEnd = middle.x() <= aft + near || middle.x() >= fore - near;
    return atAnEnd || Math.abs(middle.y()) < NEAR_MIDDLE;
  }

  private static Stream<Double> alongs(List<Station> stations) {
    return stations.stream().flatMap(station -> station.port().stream()).map(Vector3::x);
  }

  static ObjectNode write(Opening opening, List<Station> stations) {
    ObjectNode node = JsonText.object().put("name", opening.name());
    node.setAll(Points.write(opening.middle()));
    node.put("width", opening.width());
    if (opening.athwart() != usuallyAthwart(opening.middle(), stations)) {
      node.put("along", opening.athwart() ? "athwart" : "fore-and-aft");
    }
    return node;
  }
}
