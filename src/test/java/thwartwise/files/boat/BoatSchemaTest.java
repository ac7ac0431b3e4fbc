package thwartwise.files.boat;

import static java.util.Map.entry;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.measured.BoatProperties.PropertyGroup;
import thwartwise.measured.Property;
import thwartwise.sampleboats.ElectricBoat;
import thwartwise.sampleboats.OrdinaryBoats;
import thwartwise.sampleboats.PublishedBoats;
import tools.jackson.databind.JsonNode;

/** The printed JSON Schema takes every boat file there is, and refuses what the reader refuses. */
class BoatSchemaTest {
  private static final Pattern SINGLE =
      Pattern.compile("is not known here|is missing\\.|outside the believable|, wanted");

  private static final Path DEMO = Path.of("src/main/resources/thwartwise/demo-boat.json");

  /** As it is printed: numbers and all are read back from the text. */
  private static final JsonNode SCHEMA = parsed(Layout.of(CanonicalNumbers.in(BoatSchema.tree())));

  private static final SchemaCheck CHECK = new SchemaCheck(SCHEMA);

  private static JsonNode parsed(String json) {
    return JsonText.parse(json, Location.whole("boat.json"));
  }

  @Test
  void kept_boat_files_fit() throws IOException {
    for (String file : List.of("soup-ladle.json", "butter-dish.json")) {
      assertThat(CHECK.faults(parsed(WrongBoats.text(file)))).as(file).isEmpty();
    }
    for (String record :
        List.of(
            "record-before-chains.json",
            "record-before-papers.json",
            "record-with-report-1.json",
            "record-with-report-2.json")) {
      assertThat(CHECK.faults(parsed(WrongBoats.text(record)).path("boat"))).as(record).isEmpty();
    }
    for (Path file :
        List.of(
            DEMO, Path.of("src/bench/five-benches.json"), Path.of("src/bench/eight-places.json"))) {
      assertThat(CHECK.faults(parsed(text(file)))).as(file.toString()).isEmpty();
    }
    assertThat(CHECK.faults(parsed(ElectricBoat.JSON))).isEmpty();
  }

  @Test
  void sample_boats_fit_as_they_are_written() {
    List<Boat> boats =
        Stream.of(OrdinaryBoats.forty().stream(), PublishedBoats.all()).flatMap(s -> s).toList();
    assertThat(boats).hasSizeGreaterThan(46);
    for (Boat boat : boats) {
      JsonNode written = parsed(Layout.of(CanonicalNumbers.in(BoatCodec.write(boat))));
      assertThat(CHECK.faults(written)).as(boat.name()).isEmpty();
    }
  }

  @Test
  void a_wrong_file_fails_where_it_is_wrong() throws IOException {
    String demo = text(DEMO);
    assertThat(faults(demo.replaceFirst("\"mass\"", "\"mas\"")))
        .containsExactly("/hull lacks mass", "/hull may not have mas");
    assertThat(faults(demo.replaceFirst("\"z\": 0", "\"z\": 30")))
        .hasSize(1)
        .first()
        .asString()
        .contains("/z > 3");
  }

  private static List<String> faults(String json) {
    return CHECK.faults(parsed(json));
  }

  /** What needs two values at once, and names of doubts, are left to the reader. */
  private static final String[] LEFT_TO_THE_READER = {
    "a_hull_in_feet", "a_hull_without_breadth", "a_kept_doubt_nobody_has", "a_point_too_few"
  };

  @Test
  void what_the_reader_refuses_of_a_single_value_fails() {
    List<WrongBoats> single =
        WrongBoats.all().stream().filter(wrong -> SINGLE.matcher(wrong.says()).find()).toList();
    assertThat(single).hasSizeGreaterThan(50);
    assertThat(single.stream().filter(wrong -> faults(wrong.json()).isEmpty()))
        .extracting(WrongBoats::name)
        .containsExactlyInAnyOrder(LEFT_TO_THE_READER);
  }

  /** Where an object stands in the schema, and the keys that its reader takes. */
  private static final Map<String, String[]> OBJECTS =
      Map.ofEntries(
          entry("/properties/hull", HullCodec.KEYS),
          entry("/properties/waters", WatersCodec.KEYS),
          entry("/properties/openings/items", OpeningCodec.KEYS),
          entry("/properties/chambers/items", ChamberCodec.KEYS),
          entry("/properties/places/items", PlaceCodec.KEYS),
          entry("/properties/kit/items", KitCodec.KEYS),
          entry("/properties/cleats/items", BoatCodec.CleatCodec.KEYS),
          entry("/properties/aboard/items", PersonCodec.KEYS),
          entry("/properties/propulsion", PropulsionCodec.KEYS),
          entry("/properties/electrics", ElectricsCodec.KEYS),
          entry("/properties/electrics/properties/circuits/items", ElectricsCodec.CIRCUIT_KEYS),
          entry("/properties/electrics/properties/mainWire", ElectricsCodec.MAIN_KEYS),
          entry("/properties/kept/items", ConfirmedMeasurementCodec.KEYS),
          entry("/properties/trialSeen", ObservedTrialCodec.KEYS),
          entry("/properties/proofs/items", ProofCodec.KEYS),
          entry("/properties/proofs/items/properties/empty", ProofCodec.RAILS),
          entry("/properties/proofs/items/properties/moved", ProofCodec.MOVED),
          entry("/properties/proofs/items/properties/moved/properties/toPort", ProofCodec.TO_SIDE),
          entry("/properties/proofs/items/properties/roll", ProofCodec.ROLL),
          entry("/properties/lookedAt/items", PointAnswerCodec.KEYS),
          entry("/$defs/test", SealTestCodec.KEYS));

  @Test
  void every_object_has_the_keys_that_its_reader_takes() {
    OBJECTS.forEach(
        (at, keys) ->
            assertThat(SCHEMA.at(at).path("properties").propertyNames())
                .as(at)
                .containsExactlyInAnyOrder(keys));
    assertThat(SCHEMA.path("properties").propertyNames())
        .containsExactlyInAnyOrderElementsOf(BoatCodec.known());
  }

  private static String text(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  /** The printed schema and the printed table of keys are both those of the properties. */
  @Test
  void every_single_value_stands_in_the_schema_with_its_range_and_unit() {
    for (PropertyGroup group : PropertyGroup.ALL) {
      JsonNode keys = object(group.place()).path("properties");
      for (Property<?, ?> property : group.properties()) {
        JsonNode one = keys.path(property.key());
        String where = group.place() + " " + property.key();
        assertThat(one.path("description").asString("")).as(where).contains(property.remedy());
        property
            .type()
            .quantity()
            .ifPresent(
                quantity -> {
                  assertThat(one.path("unit").asString("")).as(where).isEqualTo(quantity.unit());
                  assertThat(one.path("minimum").asDouble())
                      .as(where)
                      .isEqualTo(quantity.inFile(quantity.least()));
                  assertThat(one.path("maximum").asDouble())
                      .as(where)
                      .isEqualTo(quantity.inFile(quantity.most()));
                });
      }
    }
  }

  /** An object of the file by its keys from the top, through lists and references. */
  private static JsonNode object(String place) {
    JsonNode at = SCHEMA;
    for (String key : place.isEmpty() ? new String[0] : place.split(" ")) {
      JsonNode there = at.path("properties").path(key);
      JsonNode item = there.has("items") ? there.path("items") : there;
      at = item.has("$ref") ? SCHEMA.at(item.path("$ref").stringValue().substring(1)) : item;
    }
    return at;
  }

  private static final Pattern KEY = Pattern.compile("\"(\\w+)\":");

  @Test
  void every_key_that_the_help_page_names_is_one_of_the_file() throws IOException {
    String page = text(Path.of("src/main/resources/thwartwise/help/boat-file.txt"));
    Set<String> known = new TreeSet<>();
    keys(SCHEMA, known);
    List<String> named = KEY.matcher(page).results().map(found -> found.group(1)).toList();
    assertThat(named).hasSizeGreaterThan(40);
    assertThat(known).containsAll(named);
  }

  private static void keys(JsonNode schema, Set<String> known) {
    known.addAll(schema.path("properties").propertyNames());
    schema.forEach(part -> keys(part, known));
  }
}
