package thwartwise.plausibility;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.measure.UnitFormat;
import thwartwise.report.PlausibilityWords;

/** A tank across a box of 3 by 1.2 by 0.5 m, 1800 litres in all. */
class ChamberPlausibilityTest {
  private static Boat tank(double length, double litres) {
    Box box = new Box(new Span(0, length), Span.ALL, Span.ALL);
    return BoxBoat.of(3, 1.2, 0.5)
        .hull(80, 0.2)
        .weightlessShell()
        .chamber(BoxBoat.proven("tank", box, Optional.of(litres / 1000)))
        .boat();
  }

  private static List<PlausibilityFinding> doubts(Boat boat) {
    return Plausibility.of(BoatModel.of(boat, BoxBoat.TODAY), RuleSetFile.cautiousDefault())
        .stream()
        .filter(
            f ->
                f.id().topic() == PlausibilityTopic.CHAMBER
                    || f.id().topic() == PlausibilityTopic.LEAK_TEST)
        .toList();
  }

  @Test
  void more_than_twice_what_its_walls_hold_withholds_the_answer() {
    assertThat(doubts(tank(0.5, 599))).isEmpty();
    PlausibilityFinding doubt = doubts(tank(0.5, 620)).get(0);
    assertThat(doubt.withholds()).isTrue();
    assertThat(PlausibilityWords.of(doubt, UnitFormat.METRIC))
        .isEqualTo(
            "chamber \"tank\", litres poured into it: 620.0 litres, limit 599.9 litres;"
                + " measure its walls, or pour again and count");
  }

  @Test
  void so_does_more_than_the_whole_boat_holds() {
    assertThat(doubts(tank(1.8, 1790))).isEmpty();
    assertThat(doubts(tank(1.8, 1830))).hasSize(1);
  }

  /** A US gallon holds 3.785 litres, so 300 litres are 79 gallons. */
  @Test
  void gallons_written_as_litres_are_doubted() {
    assertThat(doubts(tank(0.5, 150))).isEmpty();
    assertThat(PlausibilityWords.of(doubts(tank(0.5, 79)).get(0), UnitFormat.METRIC))
        .isEqualTo(
            "chamber \"tank\", litres poured into it: 79.0 litres, limit 105.0 litres;"
                + " were those gallons? Measure its walls, or pour again and count");
  }

  @Test
  void a_leak_test_of_next_year_is_doubted() {
    Box box = new Box(new Span(0, 0.5), Span.ALL, Span.ALL);
    LocalDate next = BoxBoat.TODAY.plusDays(300);
    SealTest test = new SealTest(next, "water", 20, 0, "builder");
    Filling air = new Filling.Air(Seal.PROVEN, Optional.of(test));
    Chamber tank = new Chamber("tank", box, air, Optional.empty(), false);
    Boat boat = BoxBoat.of(3, 1.2, 0.5).hull(80, 0.2).chamber(tank).boat();
    PlausibilityFinding doubt = doubts(boat).get(0);
    assertThat(doubt.id().text()).isEqualTo("leak-test:tank");
    assertThat(doubt.withholds()).isTrue();
    assertThat(PlausibilityWords.of(doubt, UnitFormat.METRIC))
        .isEqualTo(
            "chamber \"tank\", days from its leak test until today: -300 days, limit 0"
                + " days; it is dated %s, which has not come yet: was the year written wrongly?"
                    .formatted(next));
  }

  @Test
  void kept_with_a_reason_it_stands() {
    Boat kept =
        tank(0.5, 620)
            .withConfirmedMeasurements(
                List.of(new ConfirmedMeasurement("chamber:tank", "poured twice")));
    assertThat(doubts(kept)).noneMatch(PlausibilityFinding::withholds);
  }
}
