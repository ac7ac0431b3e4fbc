package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Opening;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.PrintableText;
import thwartwise.measure.YesOrNo;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ObjectNode;

/**
 * An opening other than the rail that lets water in. The direction of its lowest edge follows from
 * its position: across the boat at either end and near the middle line, along the boat elsewhere.
 */
final class OpeningCodec {
  static final String[] KEYS = Property.keys(PartProperties.OF_OPENING, "name", "x", "y", "z");
  private static final double END_SHARE = 0.05;
  private static final double NEAR_MIDDLE = 0.1;
  private static final String NAME = "Name the opening, as in transom cut-out or drain.";

  private OpeningCodec() {}

  static Opening read(ObjectReader fields, List<Station> stations) {
    Vector3 middle = Points.read(fields);
    Optional<Double> diameter = fields.optional(PartProperties.OPENING_DIAMETER);
    return new Opening(
        fields.text("name", NAME),
        middle,
        width(fields, diameter),
        fields
            .optional(PartProperties.OPENING_ATHWART)
            .orElseGet(() -> usuallyAthwart(middle, stations)),
        closedBy(fields),
        fields.optional(PartProperties.OPENING_INTO),
        diameter);
  }

  /** The width; a round hole is as wide as its diameter, even if nobody says so. */
  private static double width(ObjectReader fields, Optional<Double> diameter) {
    return diameter.isPresent() && !fields.has("width")
        ? diameter.get()
        : fields.required(PartProperties.OPENING_WIDTH);
  }

  /**
   * What closes it. An opening that is assumed closed does not flood, so only a thing counts, and
   * never the word "none".
   */
  private static Optional<String> closedBy(ObjectReader fields) {
    Optional<String> closedBy = fields.optional(PartProperties.OPENING_CLOSED_BY);
    closedBy
        .filter(words -> NegativeAnswer.matches(words) || YesOrNo.read(words).refusal().isEmpty())
        .ifPresent(
            words -> {
              throw fields
                  .spot()
                  .fault(
                      "\"closedBy\" is %s, which names nothing that shuts it. %s",
                      PrintableText.quoted(words), PartProperties.OPENING_CLOSED_BY.remedy());
            });
    return closedBy;
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
    for (Property<Opening, ?> each : PartProperties.OF_OPENING) {
      if (each != PartProperties.OPENING_ATHWART || !runsAsUsual(opening, stations)) {
        JsonText.put(node, each, opening);
      }
    }
    return node;
  }

  private static boolean runsAsUsual(Opening opening, List<Station> stations) {
    return opening.athwart() == usuallyAthwart(opening.middle(), stations);
  }
}
