package thwartwise.files.boat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.json.Format;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatProperties;
import tools.jackson.databind.JsonNode;

/** The whole boat, read key by key. */
public final class BoatFields {
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
    "aboard",
    "propulsion",
    ElectricsFields.KEY,
    Heights.KEY,
    "measuredBy",
    "assumed",
    "kept",
    TrialSeenFields.KEY
  };
  private static final WordChoice<Water> WATERS = WordChoice.of(Water::word, Water.values());
  private static final String NAME = "Write the name of the boat.";
  private static final String WATER = "Write which water the boat floats in.";
  private static final String HULL =
      "Measure the hull with tape and scales: mass, material and at least three stations.";
  private static final String MEASURED_BY = "Write who held the tape, or leave it out.";

  private BoatFields() {}

  public static Boat read(JsonNode tree, Location spot) {
    return Heights.read(Format.BOAT.checked(tree, spot), spot, BoatFields::readUp);
  }

  private static List<String> known() {
    return Stream.concat(
            Arrays.stream(KEYS), BoatProperties.OF_BOAT.stream().map(p -> p.property().key()))
        .toList();
  }

  private static Boat readUp(JsonNode tree, Location spot) {
    ObjectReader fields = ObjectReader.free(tree, spot).allow(known());
    String name = fields.text("name", NAME);
    Water water = fields.oneOf("water", WATERS, WATER);
    ObjectReader hullFields = fields.object("hull", HULL, HullFields.KEYS);
    HullMeasurements hull = HullFields.read(hullFields);
    List<Station> stations = hull.stations();
    List<Place> places =
        fields.optionalItems("places", "place", PlaceFields.KEYS).stream()
            .map(PlaceFields::read)
            .toList();
    Boat measured =
        new Boat(
            name,
            water,
            hull,
            fields.optionalItems("openings", "opening", OpeningFields.KEYS).stream()
                .map(opening -> OpeningFields.read(opening, stations))
                .toList(),
            fields.optionalItems("chambers", "chamber", ChamberFields.KEYS).stream()
                .map(ChamberFields::read)
                .toList(),
            places,
            fields.optionalItems("kit", "kit", KitFields.KEYS).stream()
                .map(KitFields::read)
                .toList(),
            fields.optionalItems("aboard", "person", PersonFields.KEYS).stream()
                .map(person -> PersonFields.read(person, places))
                .toList(),
            fields
                .optionalObject("propulsion", PropulsionFields.KEYS)
                .map(PropulsionFields::read)
                .orElse(new Propulsion.NotStated()),
            fields.optionalItems("cleats", "cleat", CleatFields.KEYS).stream()
                .map(CleatFields::read)
                .toList(),
            Optional.empty(),
            fields
                .optionalObject("waters", WatersFields.KEYS)
                .map(WatersFields::read)
                .orElse(Waters.NOT_STATED),
            fields.optional("measuredBy").map(value -> value.words(MEASURED_BY)),
            assumed(fields, hullFields, hull));
    List<ConfirmedMeasurement> kept =
        fields.optionalItems("kept", "kept", ConfirmedMeasurementFields.KEYS).stream()
            .map(ConfirmedMeasurementFields::read)
            .toList();
    ElectricalSystem electrics =
        fields
            .optionalObject(ElectricsFields.KEY, ElectricsFields.KEYS)
            .map(ElectricsFields::read)
            .orElse(ElectricalSystem.NONE);
    Boat known =
        fields.into(measured.keeping(kept).withElectrics(electrics), BoatProperties.OF_BOAT);
    Boat boat =
        fields
            .optionalObject(TrialSeenFields.KEY, TrialSeenFields.KEYS)
            .map(trial -> TrialSeenFields.read(trial, known))
            .orElse(known);
    CountRules.check(spot, boat);
    NameRules.check(spot, boat);
    return boat;
  }

  /** What was left out of the file, then what it says itself that nobody measured. */
  private static List<String> assumed(
      ObjectReader fields, ObjectReader hullFields, HullMeasurements hull) {
    List<String> texts =
        DefaultValues.of(!hullFields.has("thickness"), !hullFields.has("floor"), hull);
    fields.optional("assumed").map(ValueReader::texts).ifPresent(texts::addAll);
    return texts;
  }
}
