package thwartwise.loadcase;

import static thwartwise.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.crew.Seating;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.inspection.PlainHulls;
import thwartwise.rules.RuleSet;

/**
 * Narrow dories that have no stable equilibrium at some pulls and one at greater pulls. Every pull
 * is tried, which needs no method.
 */
class PullWithGapTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();

  /** Between two pulls, N: the greatest halved until it is no more than ten. */
  private static final double STEP = RULES.value("greatest-pull") / 512;

  /** As much farther as an equilibrium is looked for. */
  private static final int FARTHER = 40;

  private static LoadedBoat dory(double wide, double deep, Integer... seats) {
    Boat boat = PlainHulls.dory();
    HullMeasurements hull = boat.hull();
    List<Station> stations =
        hull.stations().stream()
            .map(s -> Station.mirrored(s.name(), scaled(s.port(), wide, deep)))
            .toList();
    BoatModel model = BoatModel.of(boat.withHull(hull.withStations(stations)), PlainHulls.TODAY);
    Seating seating = new Seating(List.of(seats));
    int people = List.of(seats).stream().mapToInt(Integer::intValue).sum();
    return LoadedBoat.of(
        model, seating.bodies(model, Collections.nCopies(people, 90.0), Packing.SPREAD));
  }

  private static List<Vector3> scaled(List<Vector3> points, double wide, double deep) {
    return points.stream().map(p -> Vector3.of(p.x(), wide * p.y(), deep * p.z())).toList();
  }

  private static boolean isDry(LoadedBoat pulled, StreamHead head) {
    return LowestEdge.of(pulled.atRest(), pulled, head).height().orElse(-1) >= 0;
  }

  /** The last dry step below the first that is not, of which there are greater ones. */
  private static int lastBeforeGap(IntPredicate dry) {
    int last = 0;
    while (dry.test(last + 1)) {
      last++;
    }
    boolean dryAgain = false;
    for (int step = last + 2; step < last + FARTHER; step++) {
      dryAgain |= dry.test(step);
    }
    assertThat(dryAgain).isTrue();
    return last;
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.1, 1.2})
  void pulled_ahead_it_ends_at_the_first_pull_without_an_equilibrium(double deep) {
    LoadedBoat boat = dory(0.75, deep, 1, 1, 0);
    LineOut line = LineOut.of(RULES, boat, false).get(0);
    StreamHead head = StreamHead.of(RULES, boat.model().form(), false);
    int last = lastBeforeGap(step -> isDry(line.pulling(boat, step * STEP), head));
    assertThat(line.greatest(boat, Double.NaN)).isEqualTo(last * STEP);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.75, 0.8, 0.85, 0.9, 1.0})
  void pulled_abeam_it_ends_at_the_first_pull_without_an_equilibrium(double wide) {
    LoadedBoat boat = dory(wide, 1.1, 1, 0, 0);
    LineOut line = LineOut.of(RULES, boat, true).get(0);
    int last =
        lastBeforeGap(step -> isDry(line.pullingAbeam(boat, step * STEP, 1), StreamHead.NONE));
    assertThat(line.greatestAbeam(boat, Double.NaN)).isEqualTo(last * STEP);
  }
}
