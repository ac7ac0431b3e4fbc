package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.Waters;
import thwartwise.files.report.OldNames;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.sampleboats.BoatEdits;

class AllowanceTest {
  /** The box of {@link OnPaper} with the first, the last and as many of its stations as asked. */
  private static BoatModel measuredAt(int stations, BoxBoat box) {
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
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            Optional.empty(),
            b.assumptions());
    return BoatModel.of(fewer, BoxBoat.TODAY);
  }

  // A box of 4.2 m with five stations, the middle ones moved so that one stretch is this long: up
  // to
  // 0.30 of the length nothing more is taken off, at a third as much as with four stations, and at
  // 0.3167, half way between, half of it.
  @ParameterizedTest
  @CsvSource({"0.25, 0.9, 0.02", "0.30, 0.9, 0.02", "0.31665, 0.85, 0.03", "0.34, 0.8, 0.04"})
  void more_is_taken_off_the_longer_the_longest_stretch(
      double stretch, double volume, double freeboard) {
    Boat b = OnPaper.boat(100).boat();
    double length = length(b);
    double first = stretch * length;
    double rest = (length - first) / 3;
    Boat moved = at(b, 0, first, first + rest, first + 2 * rest, length);
    assertThat(moved.hull().longestStretch()).isCloseTo(stretch, within(1e-9));
    Allowance taken = Allowance.of(RULES, BoatModel.of(moved, BoxBoat.TODAY));
    assertThat(taken.massFactor()).isEqualTo(1.05);
    assertThat(taken.volumeFactor()).isCloseTo(volume, within(1e-9));
    assertThat(taken.freeboardLoss()).isCloseTo(freeboard, within(1e-9));
  }

  private static double length(Boat boat) {
    return boat.hull().stations().get(4).port().get(0).x();
  }

  private static Boat at(Boat boat, double... along) {
    List<Station> moved = new ArrayList<>();
    for (int i = 0; i < along.length; i++) {
      double x = along[i];
      Station station = boat.hull().stations().get(i);
      moved.add(
          Station.mirrored(
              station.name(),
              station.port().stream().map(p -> Vector3.of(x, p.y(), p.z())).toList()));
    }
    return BoatEdits.withStations(boat, moved);
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
      LoadedBoat trial =
          LoadedBoat.of(
              measuredAt(stations, OnPaper.tanks(700)), List.of(), OldNames.loadCase("on paper"));
      assertThat(trial.spareBuoyancy(List.of())).isCloseTo(140, within(0.01));
      assertThat(trial.under(Allowance.of(RULES, trial.model())).spareBuoyancy(List.of()))
          .isCloseTo((stations == 5 ? 756 : 672) - 735, within(0.01));
    }
  }

  /**
   * By hand: of a hull and no kit, bathroom scales are off by less than 1.645 x 2 % in 95 of 100
   * weighings, which is less than the 5 % of nobody knows how; a guess by 3 x 5 %. People are not
   * weighed by it: 100 kg of hull and 100 kg of others count half each.
   */
  @Test
  void what_was_said_of_the_hull_changes_what_is_added_to_it_alone() {
    BoatModel weighed = said(MeasurementKind.HULL_WEIGHT, MeasuringWay.BATHROOM_SCALES);
    Allowance taken = Allowance.of(RULES, weighed);
    assertThat(taken.listedFactor()).isCloseTo(1 + 1.6449 * 0.02, within(1e-12));
    assertThat(taken.massFactor()).isEqualTo(1.05);
    assertThat(taken.volumeFactor()).isEqualTo(0.9);
    LoadedBoat empty = LoadedBoat.of(weighed, List.of()).under(taken);
    assertThat(empty.loading().mass())
        .isCloseTo(taken.listedFactor() * weighed.boat().hull().mass(), within(1e-9));

    assertThat(
            Allowance.of(RULES, said(MeasurementKind.HULL_WEIGHT, MeasuringWay.GUESS))
                .listedFactor())
        .isCloseTo(1.15, within(1e-12));
  }

  /** By hand: 1.645 x 5 mm; with three stations 20 mm more, whoever held the line. */
  @Test
  void a_taut_line_leaves_less_of_a_freeboard_and_few_stations_what_they_leave_out() {
    assertThat(
            Allowance.of(RULES, said(MeasurementKind.EDGE_HEIGHTS, MeasuringWay.TAUT_LINE))
                .freeboardLoss())
        .isCloseTo(1.6449 * 0.005, within(1e-12));
    BoatModel few = measuredAt(3, OnPaper.boat(100));
    assertThat(
            Allowance.of(
                    RULES,
                    BoatModel.of(
                        few.boat()
                            .withMethods(
                                methods(MeasurementKind.EDGE_HEIGHTS, MeasuringWay.TAUT_LINE)),
                        BoxBoat.TODAY))
                .freeboardLoss())
        .isCloseTo(1.6449 * 0.005 + 0.02, within(1e-12));
  }

  private static List<MeasuringMethod> methods(MeasurementKind kind, MeasuringWay way) {
    return List.of(new MeasuringMethod(kind, Optional.empty(), way));
  }

  private static BoatModel said(MeasurementKind kind, MeasuringWay way) {
    return BoatModel.of(OnPaper.boat(100).boat().withMethods(methods(kind, way)), BoxBoat.TODAY);
  }
}
