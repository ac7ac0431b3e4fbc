package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Opening;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.PrintableText;
import thwartwise.measure.YesOrNo;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/**
 * A place other than the rail where water comes in. Which way its lowest edge runs is taken from
 * where it is: across the boat at either end and near the middle line, along the boat elsewhere.
 */
final class OpeningCodec {
  static final String[] KEYS = {
    "name", "x", "y", "z", "width", "along", "diameter", "closedBy", "into"
  };
  private static final WordChoice<Boolean> RUNS =
      WordChoice.of(athwart -> athwart ? "athwart" : "fore-and-aft", true, false);
  private static final double END_SHARE = 0.05;
  private static final double NEAR_MIDDLE = 0.1;
  private static final String NAME = "Name the opening, as in transom cut-out or drain.";
  private static final String WIDTH = "Measure the length of its lowest edge in metres.";
  private static final String ALONG = "Write which way its lowest edge runs, or leave it out.";
  private static final String DIAMETER =
      "Measure across the hole in metres, or leave it out and give the width.";
  private static final String CLOSED_BY =
      "Write what shuts it under way, as in bung, or leave it out.";
  private static final String INTO = "Name the chamber it leads into, or leave it out.";

  private OpeningCodec() {}

  /** What a file may say of the way an edge runs. */
  static List<String> directions() {
    return RUNS.words();
  }

  static Opening read(ObjectReader fields, List<Station> stations) {
    Vector3 middle = Points.read(fields);
    Optional<Double> diameter = fields.optionalNumber("diameter", BoatQuantity.DIAMETER, DIAMETER);
    return new Opening(
        fields.text("name", NAME),
        middle,
        width(fields, diameter),
        fields
            .optional("along")
            .map(value -> value.oneOf(RUNS, ALONG))
            .orElseGet(() -> usuallyAthwart(middle, stations)),
        fields.optional("closedBy").map(value -> closedBy(value, fields.spot())),
        fields.optional("into").map(value -> value.words(INTO)),
        diameter);
  }

  /** A round hole is as wide as its diameter, whether or not somebody says so. */
  private static double width(ObjectReader fields, Optional<Double> diameter) {
    return diameter.isPresent() && !fields.has("width")
        ? diameter.get()
        : fields.number("width", BoatQuantity.OPENING_WIDTH, WIDTH);
  }

  /** What is taken for shut is left out of the floods: only a thing shuts an opening, no "none". */
  private static String closedBy(ValueReader value, Location spot) {
    String words = value.words(CLOSED_BY);
    if (NegativeAnswer.by(words) || YesOrNo.read(words).refusal().isEmpty()) {
      throw spot.fault(
          "\"closedBy\" is %s, which names nothing that shuts it. %s",
          PrintableText.quoted(words), CLOSED_BY);
    }
    return words;
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
    if (!opening.diameter().equals(Optional.of(opening.width()))) {
      node.put("width", opening.width());
    }
    opening.diameter().ifPresent(diameter -> node.put("diameter", diameter));
    if (opening.athwart() != usuallyAthwart(opening.middle(), stations)) {
      node.put("along", opening.athwart() ? "athwart" : "fore-and-aft");
    }
    opening.closedBy().ifPresent(closedBy -> node.put("closedBy", closedBy));
    opening.into().ifPresent(into -> node.put("into", into));
    return node;
  }
}
