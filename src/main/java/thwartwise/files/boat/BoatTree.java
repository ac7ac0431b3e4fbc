package thwartwise.files.boat;

import java.util.List;
import java.util.function.Function;
import thwartwise.boat.Boat;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.measured.BoatProperties;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The whole boat as a tree, in the order in which people read it. */
public final class BoatTree {
  private BoatTree() {}

  public static ObjectNode of(Boat boat) {
    ObjectNode node =
        JsonText.object()
            .put("format", Format.BOAT.text())
            .put("name", boat.name())
            .put("water", boat.water().word());
    if (!boat.waters().nothingStated()) {
      node.set("waters", WatersFields.write(boat.waters()));
    }
    boat.measuredBy().ifPresent(by -> node.put("measuredBy", by));
    node.set("hull", HullFields.write(boat.hull(), boat.assumptions()));
    list(node, "openings", boat.openings(), o -> OpeningFields.write(o, boat.hull().stations()));
    list(node, "chambers", boat.chambers(), ChamberFields::write);
    list(node, "places", boat.places(), PlaceFields::write);
    list(node, "kit", boat.kit(), KitFields::write);
    if (!boat.cleats().isEmpty()) {
      list(node, "cleats", boat.cleats(), CleatFields::write);
    }
    BoatProperties.OF_BOAT.forEach(p -> JsonText.put(node, p.property(), boat));
    list(node, "aboard", boat.aboard(), PersonFields::write);
    PropulsionFields.write(boat.propulsion()).ifPresent(p -> node.set("propulsion", p));
    if (!boat.electrics().isEmpty()) {
      node.set(ElectricsFields.KEY, ElectricsFields.write(boat.electrics()));
    }
    List<String> assumed = DefaultValues.notLeftOut(boat.assumptions(), boat.hull());
    if (!assumed.isEmpty()) {
      node.set("assumed", JsonText.texts(assumed));
    }
    if (!boat.kept().isEmpty()) {
      list(node, "kept", boat.kept(), ConfirmedMeasurementFields::write);
    }
    boat.trialSeen()
        .ifPresent(seen -> node.set(TrialSeenFields.KEY, TrialSeenFields.write(seen, boat)));
    return node;
  }

  private static <T> void list(
      ObjectNode node, String key, List<T> items, Function<T, ObjectNode> write) {
    ArrayNode list = node.putArray(key);
    items.forEach(item -> list.add(write.apply(item)));
  }
}
