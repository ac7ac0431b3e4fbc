package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.Filling;
import thwartwise.boat.Seal;
import thwartwise.boat.SealTest;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.PlainNumber;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** A chamber: the part of the inside between the limits of a box, and what fills it. */
final class ChamberCodec {
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

  private ChamberCodec() {}

  /** What a file may say fills a chamber. */
  static List<String> fillings() {
    return FillingFields.FILLINGS.words();
  }

  /** What a file may say of a foam. */
  static List<String> kinds() {
    return FillingFields.KINDS.words();
  }

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

  /** What fills a chamber: air behind a seal, with its leak test if there was one, or foam. */
  private static final class FillingFields {
    private static final WordChoice<String> FILLINGS = WordChoice.of(word -> word, "air", "foam");
    private static final WordChoice<Seal> SEALS = WordChoice.of(Seal::word, Seal.values());
    private static final WordChoice<Boolean> KINDS =
        WordChoice.of(closed -> closed ? "closed-cell" : "open-cell", true, false);
    private static final String FILLING = "Write what fills the chamber.";
    private static final String SEAL =
        "Write proven only when a leak test was made, claimed when somebody says so, else open.";
    private static final String KIND =
        "Press a wet corner: foam that drinks water is open-cell. If you do not know, write"
            + " open-cell.";
    private static final String NOT_FOR_FOAM = "foam needs no seal. Take it out.";
    private static final String NOT_FOR_AIR =
        "the chamber is filled with air. Take it out, or write \"filling\": \"foam\".";

    private FillingFields() {}

    static Filling read(ObjectReader chamber) {
      return chamber.oneOf("filling", FILLINGS, FILLING).equals("air")
          ? air(chamber)
          : foam(chamber);
    }

    /**
     * What fills the twin of a chamber; empty when nothing is said of it, and then all that is
     * known of the chamber stands for both.
     */
    static Optional<Filling> readTwin(ObjectReader twin, Filling drawn) {
      if (twin.has("filling")) {
        return Optional.of(read(twin));
      }
      if (Stream.of("seal", "test", "kind", "fastened").noneMatch(twin::has)) {
        return Optional.empty();
      }
      return Optional.of(drawn instanceof Filling.Foam ? foam(twin) : air(twin));
    }

    private static Filling air(ObjectReader chamber) {
      chamber.refuse("kind", NOT_FOR_AIR);
      chamber.refuse("fastened", NOT_FOR_AIR);
      Seal seal = chamber.oneOf("seal", SEALS, SEAL);
      Optional<SealTest> test =
          chamber.optionalObject("test", SealTestCodec.KEYS).map(SealTestCodec::read);
      return new Filling.Air(seal, test);
    }

    private static Filling foam(ObjectReader chamber) {
      chamber.refuse("seal", NOT_FOR_FOAM);
      chamber.refuse("test", NOT_FOR_FOAM);
      return new Filling.Foam(chamber.oneOf("kind", KINDS, KIND), chamber.flag("fastened", false));
    }

    static void write(ObjectNode node, Filling.Air air) {
      node.put("filling", "air").put("seal", air.seal().word());
      air.test().ifPresent(test -> node.set("test", SealTestCodec.write(test)));
    }

    static void write(ObjectNode node, Filling.Foam foam) {
      node.put("filling", "foam")
          .put("kind", foam.closedCell() ? "closed-cell" : "open-cell")
          .put("fastened", foam.fastened());
    }
  }
}
