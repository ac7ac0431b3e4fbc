package thwartwise.remedy;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.files.boat.BoatFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.report.DeedWords;

/** Each kind of change, made to the boat that comes with the program. */
class ChangesTest {
  private static final Boat DEMO = BoatFile.parse(json(), "the demo boat");
  private static final BoatModel CRAFT = BoatModel.of(DEMO, BoxBoat.TODAY);

  private static String json() {
    try (InputStream in = ChangesTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Change> about(String topic) {
    List<Change> found =
        Changes.toTheBoat(CRAFT, BoxBoat.TODAY).stream()
            .filter(c -> c.topic().startsWith(topic))
            .toList();
    assertThat(found).as(topic).isNotEmpty();
    return found;
  }

  private static Kit item(Boat boat, String name) {
    return boat.kit().stream().filter(k -> k.name().equals(name)).findFirst().orElseThrow();
  }

  private static double counted(Boat boat) {
    return BoatModel.of(boat, BoxBoat.TODAY).spaces().stream()
        .mapToDouble(s -> s.solid().volume() * s.counting().share())
        .sum();
  }

  @Test
  void every_change_can_be_made_to_the_boat_and_has_words() {
    for (Change change : Changes.toTheBoat(CRAFT, BoxBoat.TODAY)) {
      assertThat(BoatModel.of(change.boat(), BoxBoat.TODAY)).as("%s", change.deed()).isNotNull();
      assertThat(DeedWords.of(change.deed()).deed()).isNotBlank();
      assertThat(DeedWords.of(change.deed()).how()).isNotBlank();
      assertThat(change.boat()).as("%s", change.deed()).isNotEqualTo(DEMO);
    }
  }

  @Test
  void the_battery_moves_to_other_spots_and_weighs_the_same() {
    for (Change change : about("move the battery")) {
      Kit moved = item(change.boat(), "battery");
      assertThat(moved.mass()).isEqualTo(item(DEMO, "battery").mass());
      assertThat(moved.at()).isNotEqualTo(item(DEMO, "battery").at());
      assertThat(CRAFT.spaces()).noneMatch(s -> s.box().contains(moved.at()));
      assertThat(DeedWords.of(change.deed()).cautions())
          .anyMatch(c -> c.contains("vented high up"));
    }
  }

  @Test
  void a_claimed_chamber_counts_once_it_is_proven() {
    assertThat(about("prove [ProvenChamber[name=middle thwart box,"))
        .allMatch(c -> counted(c.boat()) > counted(DEMO) + 0.01);
  }

  /** 0.9 of the drawn litres, and 40 kg a cubic metre of weight at their centre. */
  private static double volume(Space space) {
    return space.solid().volume();
  }

  // No more counts than straight lines between the stations hold.
  @Test
  void foam_counts_nine_tenths_and_brings_its_weight() {
    for (Change change : about("foam")) {
      List<Space> added =
          BoatModel.of(change.boat(), BoxBoat.TODAY).spaces().stream()
              .filter(s -> s.name().startsWith("foam "))
              .toList();
      double drawn = added.stream().mapToDouble(ChangesTest::volume).sum();
      Kit weight = change.boat().kit().get(DEMO.kit().size());
      double sure = added.stream().mapToDouble(s -> Math.min(s.straight(), volume(s))).sum();
      assertThat(counted(change.boat()) - counted(DEMO)).isCloseTo(0.9 * sure, within(1e-9));
      assertThat(sure).isPositive().isLessThanOrEqualTo(drawn);
      assertThat(weight.mass()).isCloseTo(40 * drawn, within(1e-9));
      assertThat(DeedWords.of(change.deed()).cautions())
          .anyMatch(c -> c.contains("Fasten it so that it cannot float off"));
    }
  }

  /** What is told in litres, rounded down, is what is there; no chamber or thing is in its way. */
  @Test
  void foam_lies_clear_of_everything_else() {
    for (Change change : about("foam")) {
      List<Chamber> added =
          change.boat().chambers().stream().filter(c -> c.name().startsWith("foam ")).toList();
      assertThat(added).isNotEmpty();
      for (Chamber block : added) {
        assertThat(CRAFT.spaces()).noneMatch(s -> s.box().overlaps(block.box()));
        assertThat(DEMO.kit()).noneMatch(k -> block.box().contains(k.at()));
      }
    }
  }

  @Test
  void the_notch_in_the_transom_is_raised_to_the_rail() {
    for (Change change : about("raise the motor notch")) {
      Opening raised = change.boat().openings().get(0);
      double rail = CRAFT.form().railAt(raised.middle().x(), true).z();
      assertThat(raised.middle().z()).isCloseTo(rail, within(1e-9));
      assertThat(DeedWords.of(change.deed()).deed()).contains("board").contains("well");
    }
  }

  @Test
  void a_lowered_seat_takes_the_box_under_it_down_with_it() {
    for (Change change : about("lower the middle thwart")) {
      Place seat = place(change.boat(), "middle thwart");
      double step = place(DEMO, "middle thwart").z() - seat.z();
      assertThat(step).isBetween(0.049, 0.101);
      assertThat(chamber(change.boat()).box().z().to())
          .isCloseTo(chamber(DEMO).box().z().to() - step, within(1e-9));
    }
  }

  private static Place place(Boat boat, String name) {
    return boat.places().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private static Chamber chamber(Boat boat) {
    return boat.chambers().stream()
        .filter(c -> c.name().equals("middle thwart box"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void the_anchor_and_the_oars_are_never_left_ashore() {
    assertThat(about("leave"))
        .noneMatch(c -> c.topic().contains("anchor") || c.topic().contains("oars"))
        .allMatch(c -> c.boat().kit().size() == DEMO.kit().size() - 1);
  }

  @Test
  void people_who_shift_stay_as_many_and_as_heavy_unless_one_stays_ashore() {
    for (Change change : Changes.toToday(DEMO)) {
      double left = mass(change.boat());
      boolean fewer = DeedWords.of(change.deed()).deed().endsWith("ashore");
      assertThat(change.onlyToday()).isTrue();
      assertThat(left < mass(DEMO)).as("%s", change.deed()).isEqualTo(fewer);
      for (Place place : DEMO.places()) {
        assertThat(change.boat().aboard().stream().filter(p -> p.place().equals(place.name())))
            .as("%s", change.deed())
            .hasSizeLessThanOrEqualTo(place.people());
      }
    }
    assertThat(Changes.toToday(DEMO)).hasSizeGreaterThan(3);
  }

  private static double mass(Boat boat) {
    return boat.aboard().stream().mapToDouble(Person::mass).sum();
  }

  // Seats along both sides, and an open box across under the middle: nothing counts of that box.
  @Test
  void kit_is_moved_into_no_chamber_and_the_words_say_where_it_lies() {
    BoatModel model =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(80, 0.2)
            .proven("port seat", new Span(0.3, 2.7), new Span(0.25, 0.6), new Span(0, 0.3))
            .proven("starboard seat", new Span(0.3, 2.7), new Span(-0.6, -0.25), new Span(0, 0.3))
            .chamber(
                new Chamber(
                    "middle box",
                    new Box(new Span(1.2, 1.8), new Span(-0.25, 0.25), new Span(0, 0.3)),
                    new Filling.Air(Seal.OPEN, Optional.empty()),
                    Optional.empty(),
                    false))
            .place("middle thwart", 1.5, 0.32, 0.2, 1)
            .place("aft thwart", 0.8, 0.32, 0.2, 1)
            .kit("battery", 20, Vector3.of(2.6, 0, 0.12), 0.008)
            .model();
    List<Change> moves =
        Changes.toTheBoat(model, BoxBoat.TODAY).stream()
            .filter(c -> c.topic().equals("move the battery"))
            .toList();
    assertThat(moves).isNotEmpty();
    for (Change move : moves) {
      Kit moved = item(move.boat(), "battery");
      assertThat(moved.at().y()).isZero();
      assertThat(model.spaces()).noneMatch(s -> s.box().overlaps(moved.box()));
      assertThat(DeedWords.of(move.deed()).deed())
          .startsWith("Move the battery to the floor on the middle line, ");
    }
    assertThat(moves)
        .noneMatch(m -> DeedWords.of(m.deed()).deed().endsWith("under the middle thwart"));
    assertThat(moves).anyMatch(m -> DeedWords.of(m.deed()).deed().endsWith("under the aft thwart"));
  }

  private static List<Change> left(BoxBoat boat) {
    return Changes.toTheBoat(boat.place("thwart", 1.5, 0.25, 0.3, 1).model(), BoxBoat.TODAY)
        .stream()
        .filter(c -> c.topic().startsWith("leave"))
        .toList();
  }

  private static BoxBoat withBattery() {
    return BoxBoat.of(3, 1.2, 0.5).kit("battery", 20, Vector3.of(0.6, 0, 0.12), 0.008);
  }

  private static final Vector3 TRANSOM = Vector3.of(-0.05, 0, 0.4);
  private static final Vector3 MIDDLE = Vector3.of(1.5, 0, 0.4);

  @Test
  void what_a_battery_drives_is_looked_at_before_it_is_said_to_stay_still() {
    assertThat(left(withBattery()))
        .extracting(c -> DeedWords.of(c.deed()).cautions())
        .containsExactly(List.of("What it feeds stays off: lights, a pump, a radio"));
    assertThat(left(withBattery().weight("outboard", 4, TRANSOM).weight("oars", 4, MIDDLE)))
        .extracting(c -> DeedWords.of(c.deed()).cautions())
        .containsExactly(List.of("The outboard does not run: row or paddle"));
    assertThat(
            left(
                withBattery()
                    .weight("electric motor", 4, TRANSOM)
                    .kit("second battery", 15, Vector3.of(2.4, 0, 0.12), 0.008)))
        .extracting(c -> DeedWords.of(c.deed()).cautions())
        .containsOnly(List.of("The electric motor runs for less time on what is left"));
  }

  @Test
  void what_drives_the_boat_stays_where_there_is_nothing_to_row_or_paddle_with() {
    assertThat(left(withBattery().weight("electric motor", 8, TRANSOM))).isEmpty();
    assertThat(left(withBattery().weight("electric motor", 8, TRANSOM).weight("paddle", 1, MIDDLE)))
        .extracting(c -> DeedWords.of(c.deed()).deed())
        .containsExactly("Leave the battery ashore", "Leave the electric motor ashore");
  }

  @Test
  void it_is_said_when_nobody_is_left_by_the_motor() {
    List<String> told =
        Changes.toToday(DEMO).stream()
            .map(c -> DeedWords.of(c.deed()))
            .filter(w -> w.cautions().stream().anyMatch(c -> c.startsWith("Nobody reaches")))
            .map(w -> w.deed() + ": " + w.cautions())
            .toList();
    String row =
        ": [Nobody reaches the motor while the stern bench is empty: somebody on the middle thwart"
            + " rows and steers]";
    assertThat(told)
        .containsExactly(
            "Seat helm on the middle thwart instead" + row,
            "Seat helm on the bow seat instead" + row,
            "Leave helm ashore" + row);
  }
}
