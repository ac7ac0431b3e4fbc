package thwartwise.files;

import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import tools.jackson.databind.node.ObjectNode;

/** A chamber: the part of the inside between the limits of a box, and what fills it. */
final class ChamberFields {
  static final String[] KEYS = {
    "name", "box", "filling", "seal", "test", "litres", "kind", "fastened", "mirrored", "limberHole"
  };
  private static final String NAME = "Name the chamber, as in fore locker.";
  private static final String BOX =
      "Write its limits in metres, as in { \"x\": [2.75, 3.60], \"z\": [0, 0.36] }.";
  private static final String LITRES = "Fill it with a jug, count the litres, and write the sum.";

  private ChamberFields() {}

  static Chamber read(Fields fields) {
    return new Chamber(
        fields.text("name", NAME),
        box(fields.object("box", BOX, "x", "y", "z")),
        FillingFields.read(fields),
        fields
            .optionalNumber("litres", Quantity.CHAMBER_LITRES, LITRES)
            .map(litres -> Typed.scaled(litres, -3)),
        fields.flag("mirrored", false),
        fields.flag("limberHole", false));
  }

  private static Box box(Fields box) {
    Optional<Span> x = Spans.read(box, "x", Quantity.ALONG);
    Optional<Span> y = Spans.read(box, "y", Quantity.ATHWART);
    Optional<Span> z = Spans.read(box, "z", Quantity.HEIGHT);
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
    chamber.measuredVolume().ifPresent(v -> node.put("litres", Typed.scaled(v, 3)));
    if (chamber.mirrored()) {
      node.put("mirrored", true);
    }
    if (chamber.limberHole()) {
      node.put("limberHole", true);
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
