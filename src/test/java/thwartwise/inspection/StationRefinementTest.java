package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.measure.UnitFormat;
import thwartwise.report.AssumptionWords;
import thwartwise.rules.RuleSet;

/**
 * A hull 4 m long and 0.4 m deep of upright sides, 0.6 (1 - (x/2)²) to each side at x from
 * amidships, with foam from end to end: a parabola, which the faired lines follow.
 */
class StationRefinementTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  private static Optional<String> words(double... along) {
    List<Station> stations = new ArrayList<>();
    for (double x : along) {
      double y = 0.6 * (1 - x * x / 4);
      stations.add(
          Station.mirrored(
              "at " + x, List.of(Vector3.of(x, 0, 0), Vector3.of(x, y, 0), Vector3.of(x, y, 0.4))));
    }
    Chamber foam =
        new Chamber(
            "foam",
            new Box(Span.ALL, Span.ALL, new Span(0, 0.4)),
            new Filling.Foam(true, true),
            Optional.empty(),
            false);
    Boat boat =
        new Boat(
            "parabola",
            Water.FRESH,
            new HullMeasurements(
                60, Optional.empty(), Optional.empty(), 750, 1e-6, 0, stations, List.of()),
            List.of(),
            List.of(foam),
            List.of(),
            List.of(),
            List.of(),
            new Propulsion.Manual(),
            List.of(),
            Optional.empty(),
            Waters.NOT_STATED,
            Optional.empty(),
            List.of());
    return StationRefinement.of(BoatModel.of(boat, BoxBoat.TODAY), RULES)
        .map(gain -> AssumptionWords.of(List.of(gain), UnitFormat.METRIC).get(0));
  }

  // Between chord and curve of y = 0.6 (1 - x²/4) over a length l lie 0.15 l³/6 to each side; two
  // sides and a depth of 0.4 make 0.02 l³: of the last stretch, 1.15 m, 30.4 litres. The faired
  // line is drawn in flats that may sag 0.3 mm, which is 0.3 litres.
  @Test
  void it_names_the_stretch_where_the_hull_swells_most_and_what_that_holds() {
    assertThat(words(-2, -1.5, -1, 0, 0.85, 2))
        .contains(
            "One more station between \"at 0.85\" and \"at 2.0\" is worth up to 30 litres of"
                + " chambers: no chamber counts for more than straight lines between the stations"
                + " hold.");
  }

  // Five stations, and half the length between two of them: that stretch loses 160 litres, and a
  // tenth of nine tenths of 1.28 - 0.02 (0.5³ + 0.5³ + 1 + 8) = 1.095 m³ is 98.5.
  @Test
  void with_five_stations_and_a_long_stretch_one_in_it_is_worth_what_is_taken_off_as_well() {
    assertThat(words(-2, -1.5, -1, 0, 2))
        .contains(
            "One more station between \"at 0.0\" and \"at 2.0\" is worth up to 258 litres of"
                + " chambers: no chamber counts for more than straight lines between the stations"
                + " hold, and with it less is taken off every volume and height.");
  }

  // Four metres of foam hold 1.28 m³. At -2, -1, 0 and 2 straight lines lose 0.02, 0.02 and 0.16;
  // a tenth of nine tenths of 1.08 is 0.097.
  @Test
  void the_fifth_station_is_worth_what_is_taken_off_for_four_as_well() {
    assertThat(words(-2, -1, 0, 2))
        .contains(
            "One more station between \"at 0.0\" and \"at 2.0\" is worth up to 256 litres of"
                + " chambers: no chamber counts for more than straight lines between the stations"
                + " hold, and with it less is taken off every volume and height.");
  }

  @Test
  void where_nothing_swells_it_is_silent() {
    List<Double> close = new ArrayList<>();
    for (int i = -40; i <= 40; i++) {
      close.add(i / 20.0);
    }
    assertThat(words(close.stream().mapToDouble(d -> d).toArray())).isEmpty();
  }
}
