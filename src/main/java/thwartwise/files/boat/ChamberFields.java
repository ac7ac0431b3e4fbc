package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.Filling;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PlainNumber;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** A chamber: the part of the inside between the limits of a box, and what fills it. */
final class ChamberFields {
  static final String[] KEYS = {
    "name",
    "box",
    "filling",
    "seal",
    "test",
    "litres",
    "kind",
    "fastened",
    "mirrored",
    "limberHole",
    "twin"
  };
  private static final String[] TWIN_KEYS = {
    "filling", "seal", "test", "litres", "kind", "fastened"
  };
  private static final String NAME = "Name the chamber, as in fore locker.";
  private static final String BOX =
      "Write its limits in metres, as in { \"x\": [2.75, 3.60], \"z\": [0, 0.36] }.";
  private static final String LITRES = "Fill it with a jug, count the litres, and write the sum.";

  private static final String NOT_MIRRORED =
      "only a chamber that stands on both sides has a twin. Take it out, or write \"mirrored\":"
          + " true.";

  private ChamberFields() {}

  static Chamber read(ObjectReader fields) {
    Filling filling = FillingFields.read(fields);
    boolean mirrored = fields.flag("mirrored", false);
    if (!mirrored) {
      fields.refuse("twin", NOT_MIRRORED);
    }
    return new Chamber(
        fields.text("name", NAME),
        box(fields.object("box", BOX, "x", "y", "z")),
        filling,
        litres(fields),
        mirrored,
        fields.flag("limberHole", false),
        fields
            .optionalObject("twin", TWIN_KEYS)
            .map(twin -> new Twin(FillingFields.readTwin(twin, filling), litres(twin)))
            .orElse(Twin.LIKE_THE_DRAWN));
  }

  private static Optional<Double> litres(ObjectReader fields) {
    return fields
        .optionalNumber("litres", BoatQuantity.CHAMBER_LITRES, LITRES)
        .map(litres -> PlainNumber.scaled(litres, -3));
  }

  private static Box box(ObjectReader box) {
    Optional<Span> x = Spans.read(box, "x", BoatQuantity.ALONG);
    Optional<Span> y = Spans.read(box, "y", BoatQuantity.ATHWART);
    Optional<Span> z = Spans.read(box, "z", BoatQuantity.HEIGHT);
    if (x.isEmpty() && y.isEmpty() && z.isEmpty()) {
      throw box.spot().fault("a box without limits would be the whole boat. " + BOX);
    }
    return new Box(x.orElse(Span.ALL), y.orElse(Span.ALL), z.orElse(Span.ALL));
  }

  static ObjectNode write(Chamber chamber) {
    ObjectNode node = JsonText.object().put("name", chamber.name());
    ObjectNode box = node.putObject("box");
    Spans.write(box, "x", chamber.box().x());
    Spans.write(box, "y", chamber.box().y());
    Spans.write(box, "z", chamber.box().z());
    writeFilling(node, chamber.filling());
    chamber.measuredVolume().ifPresent(v -> node.put("litres", PlainNumber.scaled(v, 3)));
    if (chamber.mirrored()) {
      node.put("mirrored", true);
    }
    if (chamber.limberHole()) {
      node.put("limberHole", true);
    }
    if (!chamber.twin().equals(Twin.LIKE_THE_DRAWN)) {
      ObjectNode twin = node.putObject("twin");
      chamber.twin().filling().ifPresent(filling -> writeFilling(twin, filling));
      chamber.twin().measuredVolume().ifPresent(v -> twin.put("litres", PlainNumber.scaled(v, 3)));
    }
    return node;
  }

  private static void writeFilling(ObjectNode node, Filling filling) {
    if (filling instanceof Filling.Air air) {
      FillingFields.write(node, air);
    } else if (filling instanceof Filling.Foam foam) {
      FillingFields.write(node, foam);
    }
  }
}
