package thwartwise.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.checks.OnPaper.RULES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Craft;
import thwartwise.boat.HullMeasurements;
import thwartwise.boat.Station;

class AllowanceTest {
  /** The box of {@link OnPaper} with the first, the last and as many of its stations as asked. */
  private static Craft measuredAt(int stations, BoxBoat box) {
    Boat b = box.boat();
    HullMeasurements hull = b.hull();
    List<Station> some = new ArrayList<>(hull.stations().subList(0, stations - 1));
    some.add(hull.stations().get(hull.stations().size() - 1));
    Boat fewer =
        new Boat(
            b.name(),
            b.water(),
            new HullMeasurements(
                hull.mass(),
                hull.centre(),
                hull.material(),
                hull.density(),
                hull.thickness(),
                hull.floor(),
                some,
                hull.decked()),
            b.openings(),
            b.chambers(),
            b.places(),
            b.kit(),
            b.aboard(),
            b.propulsion(),
            Optional.empty(),
            b.assumptions());
    return Craft.of(fewer, BoxBoat.TODAY);
  }

  @Test
  void with_three_or_four_stations_twice_as_much_is_taken_off() {
    for (int few : List.of(3, 4)) {
      Allowance taken = Allowance.of(RULES, measuredAt(few, OnPaper.boat(100)));
      assertThat(taken.massFactor()).isEqualTo(1.05);
      assertThat(taken.volumeFactor()).isCloseTo(0.8, within(1e-12));
      assertThat(taken.freeboardLoss()).isEqualTo(0.04);
    }
    assertThat(Allowance.of(RULES, measuredAt(5, OnPaper.boat(100))))
        .isEqualTo(Allowance.withEnoughStations(RULES))
        .isEqualTo(new Allowance(1.05, 0.9, 0.02));
  }

  // Two tanks of 420 litres: 756 of 840 count after a tenth is taken off, 672 after a fifth, and
  // 700 kg become 735.
  @Test
  void a_lift_that_meets_with_five_stations_is_borderline_with_four() {
    for (int stations : List.of(4, 5)) {
      Trial trial = Trial.of(measuredAt(stations, OnPaper.tanks(700)), List.of(), "on paper");
      assertThat(trial.spareBuoyancy(List.of())).isCloseTo(140, within(0.01));
      assertThat(trial.under(Allowance.of(RULES, trial.craft())).spareBuoyancy(List.of()))
          .isCloseTo((stations == 5 ? 756 : 672) - 735, within(0.01));
    }
  }
}
