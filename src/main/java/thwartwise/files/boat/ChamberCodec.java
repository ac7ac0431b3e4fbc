package thwartwise.files.boat;

import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.NumberText;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.PartProperties;
import tools.jackson.databind.node.ObjectNode;

/** A chamber: the part of the inside within the limits of a box, and its filling. */
final class ChamberCodec {
  static final String[] KEYS = {
    "name",
    "box",
    "filling",
    "seal",
    "test",
    "repaired",
    "litres",
    "kind",
    "fastened",
    "mirrored",
    "limberHole",
    "twin"
  };
  private static final String[] TWIN_KEYS = {
    "filling", "seal", "test", "repaired", "litres", "kind", "fastened"
  };
  private static final String NAME = "Name the chamber, as in fore locker.";
  private static final String BOX =
      "Write its limits in metres, as in { \"x\": [2.75, 3.60], \"z\": [0, 0.36] }.";
  private static final String NOT_MIRRORED =
      "only a chamber that stands on both sides has a twin. Take it out, or write \"mirrored\":"
          + " true.";

  private ChamberCodec() {}

  static Chamber read(ObjectReader fields) {
    Filling filling = FillingFields.read(fields);
    boolean mirrored = fields.optional(PartProperties.MIRRORED).orElse(false);
    if (!mirrored) {
      fields.refuse("twin", NOT_MIRRORED);
    }
    return new Chamber(
        fields.text("name", NAME),
        box(fields.object("box", BOX, "x", "y", "z")),
        filling,
        fields.optional(PartProperties.CHAMBER_LITRES),
        mirrored,
        fields.optional(PartProperties.LIMBER_HOLE).orElse(false),
        fields
            .optionalObject("twin", TWIN_KEYS)
            .map(
                twin ->
                    new Twin(
                        FillingFields.readTwin(twin, filling),
                        twin.optional(PartProperties.CHAMBER_LITRES)))
            .orElse(Twin.LIKE_THE_DRAWN));
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
    JsonText.put(node, PartProperties.CHAMBER_LITRES, chamber);
    JsonText.put(node, PartProperties.MIRRORED, chamber);
    JsonText.put(node, PartProperties.LIMBER_HOLE, chamber);
    if (!chamber.twin().equals(Twin.LIKE_THE_DRAWN)) {
      ObjectNode twin = node.putObject("twin");
      chamber.twin().filling().ifPresent(filling -> writeFilling(twin, filling));
      chamber.twin().measuredVolume().ifPresent(v -> twin.put("litres", NumberText.scaled(v, 3)));
    }
    return node;
  }

  private static void writeFilling(ObjectNode node, Filling filling) {
    JsonText.put(node, PartProperties.FILLING, filling);
    if (filling instanceof Filling.Air air) {
      JsonText.put(node, PartProperties.SEAL, air);
      air.test().ifPresent(test -> node.set("test", SealTestCodec.write(test)));
      air.repaired().ifPresent(day -> node.put("repaired", day.toString()));
    } else if (filling instanceof Filling.Foam foam) {
      JsonText.put(node, PartProperties.FOAM_KIND, foam);
      JsonText.put(node, PartProperties.FOAM_FASTENED, foam);
    }
  }

  /** The filling of a chamber: air behind a seal, with its leak test if there was one, or foam. */
  private static final class FillingFields {
    private static final String NOT_FOR_FOAM = "foam needs no seal. Take it out.";
    private static final String NOT_FOR_AIR =
        "the chamber is filled with air. Take it out, or write \"filling\": \"foam\".";

    private FillingFields() {}

    static Filling read(ObjectReader chamber) {
      return chamber.required(PartProperties.FILLING) == Filling.Kind.AIR
          ? air(chamber)
          : foam(chamber);
    }

    /**
     * The filling of a chamber's twin; empty if the file does not mention it, and then the
     * chamber's values hold for both.
     */
    static Optional<Filling> readTwin(ObjectReader twin, Filling drawn) {
      if (twin.has("filling")) {
        return Optional.of(read(twin));
      }
      if (Stream.of("seal", "test", "repaired", "kind", "fastened").noneMatch(twin::has)) {
        return Optional.empty();
      }
      return Optional.of(drawn instanceof Filling.Foam ? foam(twin) : air(twin));
    }

    private static Filling air(ObjectReader chamber) {
      chamber.refuse("kind", NOT_FOR_AIR);
      chamber.refuse("fastened", NOT_FOR_AIR);
      Seal seal = chamber.required(PartProperties.SEAL);
      Optional<SealTest> test =
          chamber.optionalObject("test", SealTestCodec.KEYS).map(SealTestCodec::read);
      return new Filling.Air(
          seal,
          test,
          chamber.has("repaired")
              ? Optional.of(SealTestCodec.day(chamber, "repaired"))
              : Optional.empty());
    }

    private static Filling foam(ObjectReader chamber) {
      chamber.refuse("seal", NOT_FOR_FOAM);
      chamber.refuse("test", NOT_FOR_FOAM);
      chamber.refuse("repaired", NOT_FOR_FOAM);
      return new Filling.Foam(
          chamber.required(PartProperties.FOAM_KIND),
          chamber.optional(PartProperties.FOAM_FASTENED).orElse(false));
    }
  }
}
