package thwartwise.supposition;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.boat.Space;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.measure.Reading;
import thwartwise.record.SampleBoats;
import thwartwise.report.DeedWords;
import thwartwise.rules.RuleBook;

/** What is done to the boat of the sample file, whose numbers stand in it. */
class SupposedBoatTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final RuleBook BOOK = RuleBook.of(RuleSetFile.cautiousDefault());
  private static final Boat BOAT = SampleBoats.plain();

  private static Reading<SupposedBoat> read(String typed) {
    return new SuppositionText(BOAT, PlannedMasses.of(BOOK.base()))
        .read(typed)
        .then(all -> SupposedBoat.of(BOAT, all, SupposedBoatTest::seats, TODAY));
  }

  private static CrewAnswer seats(BoatModel boat, List<NamedPerson> people) {
    return CrewSeating.of(boat, BOOK, people);
  }

  private static SupposedBoat tried(String typed) {
    Reading<SupposedBoat> read = read(typed);
    assertThat(read.refusal()).isEmpty();
    return ((Reading.Understood<SupposedBoat>) read).value();
  }

  private static Vector3 battery(Boat boat) {
    return boat.kit().stream()
        .filter(k -> k.name().equals("battery"))
        .findFirst()
        .map(Kit::at)
        .orElseThrow();
  }

  @Test
  void kit_goes_along_the_boat_and_nowhere_else() {
    SupposedBoat tried = tried("battery at 1.2 m, without the motor");

    assertThat(battery(tried.boat())).isEqualTo(Vector3.of(1.2, 0, 0.12));
    assertThat(tried.boat().kit()).extracting(Kit::name).containsExactly("battery");
    assertThat(DeedWords.of(tried.deeds().get(0).deed()).deed())
        .isEqualTo("Move the battery to 1.20 m forward of the aft end, 0.12 m up");
    assertThat(tried.boat().aboard()).isEqualTo(BOAT.aboard());
    assertThat(tried.crew()).isEmpty();
  }

  /** Forward the bottom rises to 0.19 m at the stem: the battery cannot stay 0.12 m up. */
  @Test
  void where_the_bottom_rises_kit_rises_with_it() {
    assertThat(battery(tried("battery at 2.9 m").boat()).z()).isBetween(0.13, 0.27);
  }

  @Test
  void where_there_is_no_room_kit_does_not_go() {
    assertThat(read("battery at 3.5 m").refusal())
        .contains(
            "There is no room in the boat for \"battery\" at 3.50 m, as far from the middle line"
                + " as it is. Try another length.");
  }

  /**
   * Forty kilograms a cubic metre; nine tenths count of what straight lines between the stations
   * hold, as of any foam.
   */
  @Test
  void foam_has_the_litres_wanted_and_weighs_what_foam_weighs() {
    SupposedBoat tried = tried("20 litres of foam under the stern seat");

    List<Space> foam =
        BoatModel.of(tried.boat(), TODAY).spaces().stream()
            .filter(s -> s.name().equals("foam under the stern seat"))
            .toList();
    assertThat(foam).hasSize(1);
    assertThat(foam.get(0).solid().volume()).isCloseTo(0.020, within(1e-6));
    assertThat(foam.get(0).counting().share())
        .isCloseTo(0.9 * Math.min(1, foam.get(0).straight() / 0.020), within(1e-6));
    assertThat(tried.boat().kitMass() - BOAT.kitMass()).isCloseTo(0.8, within(1e-4));
    assertThat(DeedWords.of(tried.deeds().get(0).deed()).deed())
        .isEqualTo("Add 20 litres of closed-cell foam under the stern seat, from the floor up");
  }

  @Test
  void more_foam_than_there_is_room_for_is_refused_with_the_room_there_is() {
    assertThat(read("500 litres of foam under the stern seat").refusal().orElseThrow())
        .matches(
            "There is room for \\d+ litres of foam under the stern seat, clear of what is there,"
                + " and not for 500 litres\\. Try less, or another place\\.");
    assertThat(read("9 litres of foam under the midships thwart").refusal())
        .contains(
            "There is room for 0 litres of foam under the midships thwart, clear of what is there,"
                + " and not for 9 litres. Try less, or another place.");
  }

  @Test
  void kit_that_was_left_ashore_cannot_be_moved_afterwards() {
    assertThat(read("without the battery, battery at 1.2 m").refusal())
        .contains(
            "\"battery\" is named twice, and no longer aboard the second time. Name it once.");
  }

  /** The boat holds up nobody of 95 kg when swamped (its own page says so), and a girl of ten. */
  @Test
  void those_who_may_go_are_aboard_and_nobody_else() {
    SupposedBoat tried = tried("an adult and a girl of 10");

    assertThat(tried.crew().orElseThrow().allMayGo()).isFalse();
    assertThat(tried.boat().aboard()).extracting(Person::name).containsExactly("girl of 10");
  }
}
