package thwartwise.files.boat;

import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Filling;
import thwartwise.boat.Seal;
import thwartwise.boat.SealTest;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import tools.jackson.databind.node.ObjectNode;

/** What fills a chamber: air behind a seal, with its leak test if there was one, or foam. */
final class FillingFields {
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
    return chamber.oneOf("filling", FILLINGS, FILLING).equals("air") ? air(chamber) : foam(chamber);
  }

  /**
   * What fills the twin of a chamber; empty when nothing is said of it, and then all that is known
   * of the chamber stands for both.
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
        chamber.optionalObject("test", SealTestFields.KEYS).map(SealTestFields::read);
    return new Filling.Air(seal, test);
  }

  private static Filling foam(ObjectReader chamber) {
    chamber.refuse("seal", NOT_FOR_FOAM);
    chamber.refuse("test", NOT_FOR_FOAM);
    return new Filling.Foam(chamber.oneOf("kind", KINDS, KIND), chamber.flag("fastened", false));
  }

  static void write(ObjectNode node, Filling.Air air) {
    node.put("filling", "air").put("seal", air.seal().word());
    air.test().ifPresent(test -> node.set("test", SealTestFields.write(test)));
  }

  static void write(ObjectNode node, Filling.Foam foam) {
    node.put("filling", "foam")
        .put("kind", foam.closedCell() ? "closed-cell" : "open-cell")
        .put("fastened", foam.fastened());
  }
}
