package thwartwise.supposition;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.Place;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.Reading;
import thwartwise.record.SampleBoats;
import thwartwise.remedy.NamedChanges.FoamSpot;

class SuppositionTextTest {
  private static final PlannedMasses PLANNED = PlannedMasses.of(RuleSetFile.cautiousDefault());
  private static final Boat DEMO = BoatFile.parse(json(), "the demo boat");
  private static final SuppositionText READER = new SuppositionText(DEMO, PLANNED);

  private static String json() {
    try (InputStream in =
        SuppositionTextTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Supposition> read(String typed) {
    Reading<List<Supposition>> read = READER.read(typed);
    assertThat(read.refusal()).isEmpty();
    return ((Reading.Understood<List<Supposition>>) read).value();
  }

  private static Place place(String name) {
    return DEMO.places().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "battery at 1.2 m | battery | 1.2",
        "The Battery at 120 cm | battery | 1.2",
        "motor at -0.1 | electric motor | -0.1",
        "battery at the stern bench | battery | 0.45",
        "battery at bow | battery | 2.85",
        "oars, pair at 1,5 m | oars, pair | 1.5",
        "anchor and line at 2.5 m | anchor and line | 2.5"
      })
  void kit_is_moved_to_a_length_or_a_place(String typed, String kit, double x) {
    assertThat(read(typed)).containsExactly(new Supposition.KitAt(kit, x));
  }

  @Test
  void kit_is_left_ashore() {
    assertThat(read("without the solar panel"))
        .containsExactly(new Supposition.KitLeft("solar panel"));
    assertThat(read("without the anchor and line and the battery"))
        .containsExactly(
            new Supposition.KitLeft("anchor and line"), new Supposition.KitLeft("battery"));
  }

  @Test
  void foam_goes_under_a_place_or_into_an_end() {
    assertThat(read("30 litres of foam under the stern bench"))
        .containsExactly(new Supposition.FoamAdded(0.03, new FoamSpot.Under(place("stern bench"))));
    assertThat(read("12 l foam in the bow, 5 litres of closed-cell foam in stern"))
        .containsExactly(
            new Supposition.FoamAdded(0.012, FoamSpot.End.BOW),
            new Supposition.FoamAdded(0.005, FoamSpot.End.STERN));
  }

  @Test
  void people_are_counted_out_and_come_last_and_together() {
    assertThat(read("two adults and a girl of 10, without the battery, Iris 62 kg"))
        .containsExactly(
            new Supposition.KitLeft("battery"),
            new Supposition.PeopleAboard(
                List.of(
                    NamedPerson.adult("adult", PLANNED),
                    NamedPerson.adult("adult, number 2", PLANNED),
                    NamedPerson.youth("girl of 10", Sex.GIRL, 10),
                    NamedPerson.weighed("Iris", 62))));
  }

  /** What is typed, and the whole line it is answered with. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "batery at 1.2 m | This boat has no kit \"batery\". Did you mean \"battery\"?",
        "without sails | This boat has no kit \"sails\". Type one of: battery; electric motor; oars,"
            + " pair; anchor and line; solar panel.",
        "without the an | \"the an\" can be any of these: anchor and line, solar panel. Type more of"
            + " its name.",
        "battery at the strn bench | This boat has no place \"the strn bench\". Did you mean \"stern"
            + " bench\"?",
        "battery at 3 apples | In \"battery at 3 apples\": \"3 apples\" is not a length this can use."
            + " Type a length such as 1.02 (metres), 102 cm or 3' 4 1/2\".",
        "some foam in the bow | In \"some foam in the bow\": \"some\" is not a volume this can use."
            + " Type a volume such as 12 (litres), 12.5 l or 3 us gal.",
        "0 litres of foam in the bow | \"0 litres of foam in the bow\" adds no foam. Type litres"
            + " above 0.",
        "30 litres of foam | \"30 litres of foam\" does not say where the foam goes. Type under and a"
            + " place, in the bow or in the stern, such as \"30 litres of foam in the bow\".",
        "paint it red | \"paint it red\" is nothing that can be tried. Type \"battery at 1.2 m\","
            + " \"without the battery\", \"30 litres of foam under the middle thwart\" or \"two"
            + " adults and a girl of 10\"; commas part several.",
        "batery 30 kg | \"batery 30 kg\" is kit of this boat and nobody aboard. Say where it goes,"
            + " such as \"batery at 1.2 m\", or leave it out with without.",
        "a girl of 4 | \"girl of 4\": weights by age are known from 6 to 19 years. Weigh them and"
            + " type the kilograms, such as \"girl 31 kg\".",
        "a child of 10 | \"a child of 10\" may be years or kilograms. Type boy or girl before an"
            + " age, or kg behind a weight, such as \"Iris 62 kg, boy 12, girl 10, adult\"."
      })
  void what_is_not_understood_gets_one_line(String typed, String line) {
    assertThat(READER.read(typed).refusal()).contains(line);
  }

  @Test
  void nothing_typed_is_nothing_that_can_be_tried() {
    assertThat(READER.read(" , ").refusal().orElseThrow())
        .startsWith("\" , \" is nothing that can be tried.");
  }

  @Test
  void a_boat_without_kit_has_none_to_move() {
    Boat bare = SampleBoats.plain().withKit(List.of());
    assertThat(new SuppositionText(bare, PLANNED).read("without the battery").refusal())
        .contains("This boat has no kit \"the battery\". It has none.");
  }
}
