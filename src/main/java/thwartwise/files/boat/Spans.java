package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.geometry.Span;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A stretch along one axis, {@code [from, to]}; without it, the stretch reaches to the hull. */
final class Spans {
  private static final String REMEDY = "Write two distances in metres, as in [0.6, 1.4].";

  private Spans() {}

  static Optional<Span> read(ObjectReader fields, String axis, BoatQuantity quantity) {
    return fields
        .optional(axis)
        .map(value -> value.ends(quantity, REMEDY))
        .map(ends -> new Span(ends[0], ends[1]));
  }

  static void write(ObjectNode node, String axis, Span span) {
    if (!span.equals(Span.ALL)) {
      ArrayNode ends = JsonText.list().add(span.from()).add(span.to());
      node.set(axis, ends);
    }
  }
}
