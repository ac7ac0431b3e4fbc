package thwartwise.files.boat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.zip.CRC32;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.KeptProof;
import thwartwise.boat.Person;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A mark of a boat and its measurements, equal for equal boats, so that what was observed on
 * another boat does not count.
 */
public final class BoatMark {
  private BoatMark() {}

  /** The mark for a trial: equal for the same water, hull, openings, chambers, places and kit. */
  static String ofTrial(Boat boat) {
    ObjectNode node = hull(boat);
    list(node, "openings", boat.openings(), o -> OpeningCodec.write(o, boat.hull().stations()));
    list(node, "chambers", boat.chambers(), ChamberCodec::write);
    list(node, "places", boat.places(), PlaceCodec::write);
    list(node, "kit", boat.kit(), KitCodec::write);
    return sum(node);
  }

  /**
   * The mark for a proof: equal for the same water and hull with the same measuring methods, and
   * the same things aboard.
   */
  public static String ofProof(Boat boat, AfloatProof proof) {
    ObjectNode node = hull(boat);
    list(node, MeasuringMethodCodec.KEY, boat.methods(), MeasuringMethodCodec::write);
    List<String> taken = proof.people().stream().map(Person::place).toList();
    list(
        node,
        "places",
        boat.places().stream().filter(place -> taken.contains(place.name())).toList(),
        PlaceCodec::write);
    if (proof.withKit()) {
      list(node, "kit", boat.kit(), KitCodec::write);
    }
    return sum(node);
  }

  /** The boat with its proofs, each with the boat's present mark. */
  public static Boat withProofs(Boat boat, List<KeptProof> proofs) {
    return boat.withProofs(
        proofs.stream().map(proof -> proof.heldAgainst(ofProof(boat, proof.readings()))).toList());
  }

  private static ObjectNode hull(Boat boat) {
    ObjectNode node = JsonText.object();
    node.put("water", boat.water().word());
    node.set("hull", HullCodec.write(boat.hull(), List.of()));
    return node;
  }

  private static String sum(ObjectNode node) {
    CRC32 sum = new CRC32();
    sum.update(Layout.of(node).getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(sum.getValue());
  }

  private static <T> void list(
      ObjectNode node, String key, List<T> items, Function<T, ObjectNode> write) {
    ArrayNode list = node.putArray(key);
    items.forEach(item -> list.add(write.apply(item)));
  }
}
