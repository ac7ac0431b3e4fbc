package thwartwise.files.report;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Assumption.TrialFault;
import thwartwise.boat.Assumption.UnmeasuredThing;
import thwartwise.boat.Boat;
import thwartwise.boat.MethodAssumption;
import thwartwise.boat.MethodAssumption.WaterProperty;
import thwartwise.files.boat.BoatCodec;
import thwartwise.files.boat.BoatFile;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.report.AssumptionWords;
import tools.jackson.databind.JsonNode;

/**
 * A boat file with every assumption, as it was written when they were first told apart. The names
 * are in files that nobody will write again: whoever renames a kind or one of its parts fails here.
 */
class KeptAssumptionsTest {
  private static final String TEXT = text();
  private static final Boat BOAT = BoatFile.parse(TEXT, "boat.json");

  @Test
  void every_kind_is_in_the_kept_file() {
    assertThat(BOAT.assumptions())
        .<Class<?>>extracting(Object::getClass)
        .containsAll(Arrays.<Class<?>>asList(Assumption.class.getPermittedSubclasses()));
    assertThat(BOAT.assumptions())
        .containsAll(Stream.of(Simplification.values()).map(Assumption.Simplified::new).toList())
        .containsAll(Stream.of(UnmeasuredThing.values()).map(Assumption.Unmeasured::new).toList())
        .containsAll(
            Stream.of(TrialFault.values())
                .map(fault -> new Assumption.TrialNotCounted("2026-05-09", fault))
                .toList());
  }

  @Test
  void every_assumption_of_the_method_is_in_the_kept_file() {
    List<MethodAssumption> all =
        BOAT.assumptions().stream()
            .filter(Assumption.OfMethod.class::isInstance)
            .map(assumption -> ((Assumption.OfMethod) assumption).assumption())
            .toList();
    assertThat(all)
        .<Class<?>>extracting(Object::getClass)
        .containsAll(Arrays.<Class<?>>asList(MethodAssumption.class.getPermittedSubclasses()));
    assertThat(all)
        .filteredOn(MethodAssumption.UnstatedWaters.class::isInstance)
        .flatMap(waters -> ((MethodAssumption.UnstatedWaters) waters).taken())
        .extracting(MethodAssumption.ShelteredWater::property)
        .contains(WaterProperty.values());
  }

  @Test
  void what_is_assumed_is_written_as_it_was_read() {
    JsonNode anew = parsed(Layout.of(CanonicalNumbers.in(BoatCodec.write(BOAT))));
    assertThat(anew.path("assumed"))
        .isEqualTo(parsed(Layout.of(CanonicalNumbers.in(parsed(TEXT)))).path("assumed"));
  }

  // 12 mm are 0.472 in, said to the sixteenth of the tape; 22 kg/m2 are 4.506 lb/ft2; 0.25 m are
  // 9.84 in (foot 0.3048 m, pound 0.45359237 kg, exact by definition).
  @Test
  void what_is_assumed_is_said_in_the_units_of_the_reader() {
    assertThat(AssumptionWords.of(BOAT.in(UnitSystem.FEET_INCHES_POUNDS)))
        .contains(
            "Shell thickness 1/2 in: thick for plywood, not measured (judgement).",
            "Mass of the hull: not weighed, taken as 4.5 lb for each square foot of length times"
                + " beam (judgement, on the heavy side).",
            "Kit: taken as one weight, loose, 6 in up on the middle line; not measured.",
            "Who goes: Iris (137 lb said).")
        .noneMatch(words -> words.matches(".*\\d mm\\b.*"));
    assertThat(AssumptionWords.of(BOAT))
        .contains(
            "Somebody else's tape was used.",
            "Shell thickness 12 mm: thick for plywood, not measured (judgement).",
            "Mass of the hull: not weighed, taken as 22 kg for each square metre of length times"
                + " beam (judgement, on the heavy side).",
            "Who goes: Iris (62 kg said).",
            "Kit \"cool box\" is not fastened: it gives no lift when swamped.",
            "More people sit at \"stern seat\" than it is said to take.",
            "One more station between \"middle\" and \"bow\" is worth up to 30 litres of chambers:"
                + " no chamber counts for more than straight lines between the stations hold, and"
                + " with it less is taken off every volume and height.",
            "Before anything meets a limit, 5 % is added to every mass, 20 % taken off every counted"
                + " volume and 0.04 m off every height above the water (judgement): only 3 stations"
                + " were measured, and much of the shape between them is guessed. With 5 it would"
                + " be 10 % of volumes and 0.02 m.",
            "Pulls are reckoned from a current of 1.5 m/s (judgement), a line leading 45 degrees"
                + " down (judgement), more where the stated anchor line must.",
            "Water in the boat that lays it over by more than 3 degrees counts as no return"
                + " (judgement).");
  }

  /** Files of earlier versions say all of it in words, and these stay as they are. */
  @Test
  void words_of_older_files_are_kept_as_words() {
    String old = "Shell thickness 12 mm: thick for plywood, not measured (judgement).";
    Boat boat =
        BoatFile.parse(
            TEXT.replaceFirst("(?s)\"assumed\": \\[.*\\]", "\"assumed\": [\"" + old + "\"]"),
            "boat.json");
    assertThat(boat.assumptions()).isEqualTo(List.of(new Assumption.Stated(old)));
    assertThat(BoatFile.write(boat)).contains("\"assumed\": [\"" + old + "\"]");
  }

  @Test
  void an_assumption_nobody_knows_is_refused() {
    String wrong = TEXT.replace("\"UsualShell\"", "\"UsualMast\"");
    assertThatThrownBy(() -> BoatFile.parse(wrong, "boat.json"))
        .hasMessage(
            "boat.json: assumption 2: \"is\" names no assumption that is known. Write what nobody"
                + " measured in words instead.");
  }

  /** A report names what it assumes next to the words, and is the same when it is read back. */
  @Test
  void a_report_names_what_it_assumes() {
    var node = JsonText.object();
    WordedListCodec.putAssumptions(node, "assumptions", BOAT.assumptions(), UnitFormat.METRIC);
    var read = thwartwise.json.ObjectReader.free(node, Location.whole("report.json"));
    assertThat(WordedListCodec.readAssumptions(read, "assumptions")).isEqualTo(BOAT.assumptions());
  }

  private static JsonNode parsed(String json) {
    return JsonText.parse(json, Location.whole("boat.json"));
  }

  private static String text() {
    try (var in =
        KeptAssumptionsTest.class.getResourceAsStream(
            "/thwartwise/files/boat-with-assumptions.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
