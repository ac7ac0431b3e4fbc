package thwartwise.files.boat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.files.boat.NameRules.CountRules;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatProperties;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The whole boat, read and written key by key. */
public final class BoatCodec {
  private static final String[] KEYS = {
    "format",
    "name",
    "water",
    "waters",
    "hull",
    "openings",
    "chambers",
    "places",
    "kit",
    "cleats",
    OutfitCodec.ROWLOCKS,
    OutfitCodec.LEAKS,
    "aboard",
    "propulsion",
    ElectricsCodec.KEY,
    Heights.KEY,
    "measuredBy",
    AssumptionCodec.KEY,
    "kept",
    ObservedTrialCodec.KEY,
    ProofCodec.KEY,
    MeasuringMethodCodec.KEY,
    PointAnswerCodec.KEY
  };
  private static final WordChoice<Water> WATERS = WordChoice.of(Water::word, Water.values());
  private static final String NAME = "Write the name of the boat.";
  private static final String WATER = "Write which water the boat floats in.";
  private static final String HULL =
      "Measure the hull with tape and scales: mass, material and at least three stations.";
  private static final String MEASURED_BY = "Write who held the tape, or leave it out.";

  private BoatCodec() {}

  public static Boat read(JsonNode tree, Location spot) {
    return Heights.read(Format.BOAT.checked(tree, spot), spot, BoatCodec::readUp);
  }

  /** All keys at the top level. */
  static List<String> known() {
    return Stream.concat(
            Arrays.stream(KEYS), BoatProperties.OF_BOAT.stream().map(p -> p.property().key()))
        .toList();
  }

  private static Boat readUp(JsonNode tree, Location spot) {
    ObjectReader fields = ObjectReader.free(tree, spot).allow(known());
    String name = fields.text("name", NAME);
    Water water = fields.oneOf("water", WATERS, WATER);
    ObjectReader hullFields = fields.object("hull", HULL, HullCodec.KEYS);
    HullMeasurements hull = HullCodec.read(hullFields);
    List<Station> stations = hull.stations();
    List<Place> places =
        fields.optionalItems("places", "place", PlaceCodec.KEYS).stream()
            .map(PlaceCodec::read)
            .toList();
    Boat measured =
        new Boat(
            name,
            water,
            hull,
            fields.optionalItems("openings", "opening", OpeningCodec.KEYS).stream()
                .map(opening -> OpeningCodec.read(opening, stations))
                .toList(),
            fields.optionalItems("chambers", "chamber", ChamberCodec.KEYS).stream()
                .map(ChamberCodec::read)
                .toList(),
            places,
            fields.optionalItems("kit", "kit", KitCodec.KEYS).stream().map(KitCodec::read).toList(),
            fields.optionalItems("aboard", "person", PersonCodec.KEYS).stream()
                .map(person -> PersonCodec.read(person, places))
                .toList(),
            fields
                .optionalObject("propulsion", PropulsionCodec.KEYS)
                .map(PropulsionCodec::read)
                .orElse(new Propulsion.NotStated()),
            fields.optionalItems("cleats", "cleat", CleatCodec.KEYS).stream()
                .map(CleatCodec::read)
                .toList(),
            Optional.empty(),
            fields
                .optionalObject("waters", WatersCodec.KEYS)
                .map(WatersCodec::read)
                .orElse(Waters.NOT_STATED),
            fields.optional("measuredBy").map(value -> value.words(MEASURED_BY)),
            assumed(fields, hullFields, hull));
    List<ConfirmedMeasurement> kept =
        fields.optionalItems("kept", "kept", ConfirmedMeasurementCodec.KEYS).stream()
            .map(ConfirmedMeasurementCodec::read)
            .toList();
    ElectricalSystem electrics =
        fields
            .optionalObject(ElectricsCodec.KEY, ElectricsCodec.KEYS)
            .map(ElectricsCodec::read)
            .orElse(ElectricalSystem.NONE);
    Boat known =
        fields.into(
            OutfitCodec.read(
                fields, measured.withConfirmedMeasurements(kept).withElectrics(electrics)),
            BoatProperties.OF_BOAT);
    Boat tried =
        fields
            .optionalObject(ObservedTrialCodec.KEY, ObservedTrialCodec.KEYS)
            .map(trial -> ObservedTrialCodec.read(trial, known))
            .orElse(known);
    Boat boat =
        tried.withPointAnswers(
            fields.optionalItems(PointAnswerCodec.KEY, "point", PointAnswerCodec.KEYS).stream()
                .map(PointAnswerCodec::read)
                .toList());
    CountRules.check(spot, boat);
    NameRules.check(spot, boat);
    Boat measuredSo =
        boat.withMethods(
            fields
                .optionalItems(
                    MeasuringMethodCodec.KEY, "way of measuring", MeasuringMethodCodec.KEYS)
                .stream()
                .map(method -> MeasuringMethodCodec.read(method, boat))
                .toList());
    return BoatMark.withProofs(
        measuredSo,
        fields.optionalItems(ProofCodec.KEY, "proof", ProofCodec.KEYS).stream()
            .map(proof -> ProofCodec.read(proof, places))
            .toList());
  }

  /** Assumptions for keys that the file leaves out, then those that the file itself states. */
  private static List<Assumption> assumed(
      ObjectReader fields, ObjectReader hullFields, HullMeasurements hull) {
    List<Assumption> all =
        DefaultValues.of(!hullFields.has("thickness"), !hullFields.has("floor"), hull);
    fields.optional(AssumptionCodec.KEY).map(AssumptionCodec::read).ifPresent(all::addAll);
    return all;
  }

  /** A fitting where a line can be made fast. */
  static final class CleatCodec {
    static final String[] KEYS = {"name", "x", "y", "z"};
    private static final String NAME = "Name the cleat or ring, as in stern cleat.";

    private CleatCodec() {}

    static Cleat read(ObjectReader cleat) {
      return new Cleat(cleat.text("name", NAME), Points.read(cleat));
    }

    static ObjectNode write(Cleat cleat) {
      ObjectNode node = JsonText.object().put("name", cleat.name());
      node.setAll(Points.write(cleat.at()));
      return node;
    }
  }

  // The whole boat as a tree, its keys in the order in which people read it.

  public static ObjectNode write(Boat boat) {
    ObjectNode node =
        JsonText.object()
            .put("format", Format.BOAT.text())
            .put("name", boat.name())
            .put("water", boat.water().word());
    if (!boat.waters().isUnstated()) {
      node.set("waters", WatersCodec.write(boat.waters()));
    }
    boat.measuredBy().ifPresent(by -> node.put("measuredBy", by));
    node.set("hull", HullCodec.write(boat.hull(), boat.assumptions()));
    list(node, "openings", boat.openings(), o -> OpeningCodec.write(o, boat.hull().stations()));
    list(node, "chambers", boat.chambers(), ChamberCodec::write);
    list(node, "places", boat.places(), PlaceCodec::write);
    list(node, "kit", boat.kit(), KitCodec::write);
    if (!boat.cleats().isEmpty()) {
      list(node, "cleats", boat.cleats(), CleatCodec::write);
    }
    OutfitCodec.write(boat, node);
    BoatProperties.OF_BOAT.forEach(p -> JsonText.put(node, p.property(), boat));
    list(node, "aboard", boat.aboard(), PersonCodec::write);
    PropulsionCodec.write(boat.propulsion()).ifPresent(p -> node.set("propulsion", p));
    if (!boat.electrics().isEmpty()) {
      node.set(ElectricsCodec.KEY, ElectricsCodec.write(boat.electrics()));
    }
    List<Assumption> assumed = DefaultValues.notLeftOut(boat.assumptions(), boat.hull());
    if (!assumed.isEmpty()) {
      node.set(AssumptionCodec.KEY, AssumptionCodec.write(assumed));
    }
    if (!boat.confirmedMeasurements().isEmpty()) {
      list(node, "kept", boat.confirmedMeasurements(), ConfirmedMeasurementCodec::write);
    }
    boat.observedTrial()
        .ifPresent(seen -> node.set(ObservedTrialCodec.KEY, ObservedTrialCodec.write(seen, boat)));
    if (!boat.proofs().isEmpty()) {
      list(node, ProofCodec.KEY, boat.proofs(), ProofCodec::write);
    }
    List<MeasuringMethod> methods = MeasuringMethodCodec.stillThere(boat);
    if (!methods.isEmpty()) {
      list(node, MeasuringMethodCodec.KEY, methods, MeasuringMethodCodec::write);
    }
    if (!boat.pointAnswers().isEmpty()) {
      list(node, PointAnswerCodec.KEY, boat.pointAnswers(), PointAnswerCodec::write);
    }
    return node;
  }

  private static <T> void list(
      ObjectNode node, String key, List<T> items, Function<T, ObjectNode> write) {
    ArrayNode list = node.putArray(key);
    items.forEach(item -> list.add(write.apply(item)));
  }
}
