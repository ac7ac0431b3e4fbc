package thwartwise.remedy;

import static org.assertj.core.api.Assertions.assertThatCode;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.report.DeedWords;

/** Changes to a boat with benches along its sides. */
class SideSeatChangesTest {
  private static final Place PORT = bench("port bench", new Span(0.30, 0.45));
  private static final Place STARBOARD = bench("starboard bench", new Span(-0.45, -0.30));

  private static Place bench(String name, Span across) {
    return new Place(name, new Span(1, 2), across, 0.3, 2, Posture.SITTING);
  }

  private static BoxBoat boat() {
    return BoxBoat.of(3, 1.2, 0.5).place(PORT).place(STARBOARD);
  }

  @Test
  void foam_under_a_bench_leaves_the_floor_between_the_benches_free() {
    FoamRoom room = new FoamRoom(boat().model());
    assertThat(room.under(PORT)).hasSize(1);
    assertThat(room.under(PORT).get(0).box().y().from()).isBetween(0.1, 0.3);
    assertThat(room.under(STARBOARD).get(0).box().y().to()).isBetween(-0.3, -0.1);
    assertThat(room.under(PORT).get(0).box().x()).isEqualTo(new Span(0.86, 2.14));
  }

  @Test
  void a_bench_goes_down_alone_unless_a_chamber_on_both_sides_carries_it() {
    assertThat(heights(seats(false))).containsExactly(0.25, 0.3);
    assertThat(heights(seats(true))).containsExactly(0.25, 0.25);
  }

  private static BoxBoat seats(boolean mirrored) {
    Box box = new Box(new Span(0.9, 2.1), new Span(0.25, 0.6), new Span(0, 0.3));
    Filling air = new Filling.Air(Seal.CLAIMED, Optional.empty());
    return boat().chamber(new Chamber("side seat", box, air, Optional.empty(), mirrored));
  }

  /** After the port bench was lowered by five centimetres. */
  private static List<Double> heights(BoxBoat boat) {
    return SeatLowering.of(boat.model(), BoxBoat.TODAY).stream()
        .filter(c -> DeedWords.of(c.deed()).deed().equals("Lower the port bench by 5 cm"))
        .findFirst()
        .orElseThrow()
        .boat()
        .places()
        .stream()
        .map(Place::z)
        .toList();
  }

  // Somebody moved to a side seat used to be put over the keel.
  @Test
  void people_who_shift_sit_on_the_bench_they_shift_to() {
    BoxBoat boat =
        boat().aboard("Ann", 60, "port bench", 0.4).aboard("Bo", 80, "starboard bench", -0.4);
    List<Change> changes = CrewShifting.of(boat.boat());
    assertThat(changes).isNotEmpty();
    for (Change change : changes) {
      assertThatCode(() -> BoatModel.of(change.boat(), BoxBoat.TODAY))
          .as("%s", change.deed())
          .doesNotThrowAnyException();
    }
    assertThat(DeedWords.of(changes.get(0).deed()).deed())
        .isEqualTo("Seat Ann on the starboard bench instead");
    assertThat(changes.get(0).boat().aboard()).extracting(Person::y).containsExactly(-0.45, -0.45);
  }
}
