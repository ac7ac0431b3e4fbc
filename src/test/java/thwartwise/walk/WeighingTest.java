package thwartwise.walk;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.geometry.Vector3;
import thwartwise.report.AssumptionWords;
import thwartwise.walk.engine.Step;

/** Three ways to weigh a hull. */
class WeighingTest {
  private static final Sheet SMALL = Sheet.small();

  // Moments about the aft end: 12 kg at 0.3 m and 18 kg at 2.0 m balance at 39.6 / 30 = 1.32 m.
  @Test
  void two_scales_give_the_mass_and_where_it_balances() {
    Boat boat =
        SMALL
            .with("hull.weighed", "ends")
            .with("hull.scale.aft.x", "0.3")
            .with("hull.scale.aft.mass", "12")
            .with("hull.scale.fore.x", "2.0")
            .with("hull.scale.fore.mass", "18")
            .with("hull.centre.z", "0.2")
            .boat();
    assertThat(boat.hull().mass()).isEqualTo(30);
    Vector3 centre = boat.hull().centre().orElseThrow();
    assertThat(centre.x()).isCloseTo(1.32, within(1e-12));
    assertThat(centre.z()).isEqualTo(0.2);
  }

  @Test
  void the_old_word_for_weighing_the_ends_is_still_taken() {
    assertThat(SMALL.accepted("hull.weighed", "scales"))
        .isEqualTo("How the bare hull was weighed: ends");
  }

  private static final Sheet TILTED =
      SMALL
          .with("hull.centre", "yes")
          .with("hull.centre.x", "1.2")
          .with("hull.centre.z", "tilt")
          .with("hull.tilt.x", "1.3")
          .with("hull.tilt.rise", "0.316228");

  // The bottom at 1.3 m lies 0.1 / 1.2 of 0.1 m up: 0.00833 m. A rise of 0.3162 on a metre of board
  // is an angle of which the tangent is 1/3; the centre is 0.1 / (1/3) above the bottom there.
  @Test
  void a_tilt_on_one_trestle_tells_how_high_the_centre_is() {
    Vector3 centre = TILTED.boat().hull().centre().orElseThrow();
    assertThat(centre.z()).isCloseTo(0.1 / 12 + 0.3, within(1e-5));
    assertThat(TILTED.accepted("hull.tilt.rise", "316.228 mm"))
        .isEqualTo(
            "Tilted until it balances, the board's end is up by: 0.316 m (so its centre is 0.308 m up)");
    assertThat(AssumptionWords.of(TILTED.boat()))
        .noneMatch(a -> a.contains("Height of its centre"));
  }

  // tan 18.435 degrees is 1/3.
  @Test
  void the_angle_itself_may_be_typed() {
    assertThat(TILTED.with("hull.tilt.rise", "18.43 deg").boat().hull().centre().orElseThrow().z())
        .isCloseTo(0.1 / 12 + 0.3, within(1e-4));
  }

  @Test
  void what_cannot_be_a_balance_is_refused() {
    assertThat(TILTED.refused("hull.tilt.x", "1.21"))
        .isEqualTo(
            "1.21 m is where it balances level (1.20 m). Shift the trestle by 10 cm and tape again.");
    assertThat(TILTED.refused("hull.tilt.rise", "1.2"))
        .isEqualTo(
            "1.20 m is no rise of such a board. Type how much higher one end is, such as 25 cm.");
    assertThat(TILTED.refused("hull.tilt.rise", "95 deg"))
        .isEqualTo("No hull balances so. Type an angle such as 14 deg.");
    assertThat(TILTED.refused("hull.tilt.rise", "10 cm"))
        .isEqualTo(
            "By that its centre would be 1.003 m up, outside the hull. Balance and tape it again.");
    assertThat(TILTED.refused("hull.tilt.rise", "0.7"))
        .matches(
            "By that its centre is 0\\.11 m up, lower than that of its bare skin \\(0\\.\\d+ m\\)\\."
                + " Balance and tape it again\\.");
  }

  @Test
  void a_fore_scale_aft_of_the_other_is_caught() {
    Sheet sheet =
        SMALL
            .with("hull.weighed", "ends")
            .with("hull.scale.aft.x", "1.3")
            .with("hull.scale.aft.mass", "12");
    assertThat(sheet.refused("hull.scale.fore.x", "0.4"))
        .contains("The second must be the greater");
  }

  // (20 x 1.0 + 10 x 2.2) / 30 = 1.4; (20 x 0.1 + 10 x 0.4) / 30 = 0.2.
  @Test
  void parts_give_the_mass_and_the_whole_centre() {
    Boat boat =
        SMALL
            .with("hull.weighed", "parts")
            .with("hull.part.1.name", "bottom and sides")
            .with("hull.part.1.mass", "20")
            .with("hull.part.1.x", "1.0")
            .with("hull.part.1.z", "0.1")
            .with("hull.part.2.any", "yes")
            .with("hull.part.2.name", "fore deck")
            .with("hull.part.2.mass", "10")
            .with("hull.part.2.x", "2.2")
            .with("hull.part.2.z", "0.4")
            .boat();
    assertThat(boat.hull().mass()).isEqualTo(30);
    Vector3 centre = boat.hull().centre().orElseThrow();
    assertThat(centre.x()).isCloseTo(1.4, within(1e-12));
    assertThat(centre.z()).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void usual_kit_is_offered_with_its_usual_mass_and_named_as_not_weighed() {
    Sheet kit =
        SMALL
            .with("kit.1.any", "yes")
            .with("kit.1.name", "Oars, pair")
            .with("kit.1.x", "1.2")
            .with("kit.1.z", "0.3")
            .with("kit.1.fastened", "no");
    assertThat(kit.boat().kit().get(0).mass()).isEqualTo(1.25 * 4.5);
    assertThat(AssumptionWords.of(kit.boat()))
        .contains("Guessed, not measured: Kit \"Oars, pair\", mass: 5.63 kg, heavy for its kind.");
    assertThat(kit.with("kit.1.mass", "3.9").boat().kit().get(0).mass()).isEqualTo(3.9);
    assertThat(kit.with("kit.1.name", "pig").refused("kit.1.mass", "skip"))
        .startsWith("It cannot be left out");
  }

  @Test
  void a_station_is_drawn_when_it_is_measured() {
    Step.Ask ask = (Step.Ask) Sheet.WALK.next(SMALL.upTo("hull.station.2.name"));
    assertThat(String.join("\n", ask.question().how()))
        .startsWith("Station 1 \"aft end\", seen from aft:")
        .contains("o", ".", "baseline");
    assertThat(ask.question().how()).allMatch(line -> line.length() <= 78);
    int lines = ask.question().how().size();
    long points =
        String.join("", ask.question().how().subList(1, lines - 1))
            .chars()
            .filter(c -> c == 'o')
            .count();
    assertThat(points).isEqualTo(3);
  }
}
