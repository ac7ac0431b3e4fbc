package thwartwise.plausibility;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.RandomCases;
import thwartwise.boat.Boat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.hull.RandomHull;
import thwartwise.hull.ReadingDirection;
import thwartwise.hull.Station;
import thwartwise.hull.TapeSlip;
import thwartwise.inspection.PlainHulls;
import thwartwise.sampleboats.OrdinaryBoats;

class StationFairnessTest {
  private static final StationFairness FAIR =
      new PlausibleLimits(RuleSetFile.cautiousDefault()).stations();

  static Stream<Boat> plainHulls() {
    return Stream.of(
        PlainHulls.pram(),
        PlainHulls.skiff(),
        PlainHulls.punt(),
        PlainHulls.canoe(),
        PlainHulls.roundDinghy(),
        PlainHulls.dory());
  }

  /** Those with four stations and more; of three the middle one may lie anywhere. */
  static Stream<Boat> hullsOfMoreStations() {
    return plainHulls().filter(b -> b.hull().stations().size() >= 4);
  }

  @ParameterizedTest
  @MethodSource("plainHulls")
  void plain_hulls_are_in_line(Boat boat) {
    assertThat(FAIR.outOfLine(boat.hull().stations())).isEmpty();
  }

  @Test
  void hulls_nobody_has_built_are_in_line() {
    RandomCases.each(
        RandomCases.of(10_000, RandomHull::any),
        hull -> assertThat(FAIR.outOfLine(hull.measured().stations())).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("hullsOfMoreStations")
  void the_full_breadth_at_one_station_is_found_and_named(Boat boat) {
    List<Station> right = boat.hull().stations();
    for (int i = 1; i + 1 < right.size(); i++) {
      List<Station> wrong = with(right, i, p -> Vector3.of(p.x(), 2 * p.y(), p.z()));
      List<FairnessOutlier> found = FAIR.outOfLine(wrong);
      int station = i;
      assertThat(found)
          .as("%s, station %d", boat.name(), i)
          .isNotEmpty()
          .allSatisfy(
              out -> {
                assertThat(out.station()).isEqualTo(station);
                assertThat(out.slip()).isEqualTo(TapeSlip.FULL_BREADTH);
                assertThat(out.meant())
                    .isCloseTo(right.get(station).port().get(out.point()).y(), within(1e-12));
              });
    }
  }

  @ParameterizedTest
  @MethodSource("hullsOfMoreStations")
  void a_decimal_point_that_slipped_in_one_half_breadth_is_found_and_named(Boat boat) {
    List<Station> right = boat.hull().stations();
    int rail = right.get(0).port().size() - 1;
    for (int i = 1; i + 1 < right.size(); i++) {
      List<Station> wrong = with(right, i, rail, p -> Vector3.of(p.x(), p.y() / 10, p.z()));
      assertThat(FAIR.outOfLine(wrong)).as("%s, station %d", boat.name(), i).hasSize(1);
      FairnessOutlier out = FAIR.outOfLine(wrong).get(0);
      assertThat(out.station()).isEqualTo(i);
      assertThat(out.point()).isEqualTo(rail);
      assertThat(out.slip()).isEqualTo(TapeSlip.POINT_TOO_FAR_LEFT);
      assertThat(out.direction()).isEqualTo(ReadingDirection.HALF_BREADTH);
    }
  }

  @ParameterizedTest
  @MethodSource("hullsOfMoreStations")
  void inches_written_as_centimetres_are_found_and_named(Boat boat) {
    List<Station> right = boat.hull().stations();
    for (int i = 1; i + 1 < right.size(); i++) {
      List<Station> wrong = with(right, i, p -> Vector3.of(p.x(), p.y() / 2.54, p.z() / 2.54));
      assertThat(FAIR.outOfLine(wrong))
          .as("%s, station %d", boat.name(), i)
          .anySatisfy(
              out -> {
                assertThat(out.slip()).isEqualTo(TapeSlip.INCHES_FOR_CENTIMETRES);
              });
    }
  }

  // Rail 0.74 and chine 0.65 of the punt's quarter, each in the place of the other.
  @Test
  void two_half_breadths_that_changed_places_are_found_and_named() {
    List<Station> right = PlainHulls.punt().hull().stations();
    List<Station> wrong = new ArrayList<>(right);
    List<Vector3> p = right.get(1).port();
    wrong.set(
        1,
        Station.mirrored(
            "quarter",
            List.of(
                p.get(0),
                Vector3.of(p.get(1).x(), p.get(2).y(), p.get(1).z()),
                Vector3.of(p.get(2).x(), p.get(1).y(), p.get(2).z()))));
    assertThat(FAIR.outOfLine(wrong))
        .singleElement()
        .satisfies(
            out -> {
              assertThat(out.slip()).isEqualTo(TapeSlip.SWAPPED);
              assertThat(out.station()).isEqualTo(1);
              assertThat(out.point()).isEqualTo(1);
            });
  }

  // The row of the table: 0.41 and 0.55 between neighbours of 0.21 and 0.28.
  @Test
  void the_boat_of_the_issue_is_found_at_its_second_station() {
    List<Station> stations =
        List.of(
            chine(0, 0.17, 0.23), chine(1, 0.41, 0.55), chine(2, 0.21, 0.28), chine(3, 0.1, 0.14));
    assertThat(FAIR.outOfLine(stations))
        .hasSize(2)
        .allSatisfy(
            out -> {
              assertThat(out.station()).isEqualTo(1);
              assertThat(out.slip()).isEqualTo(TapeSlip.FULL_BREADTH);
            });
  }

  @Test
  void a_transom_far_broader_than_all_else_is_out_of_line_and_one_a_little_broader_is_not() {
    assertThat(
            FAIR.outOfLine(List.of(chine(0, 1.0, 1.2), chine(1, 0.55, 0.65), chine(2, 0.4, 0.5))))
        .hasSize(2)
        .allSatisfy(out -> assertThat(out.slip()).isEqualTo(TapeSlip.FULL_BREADTH));
    assertThat(
            FAIR.outOfLine(List.of(chine(0, 0.6, 0.7), chine(1, 0.55, 0.65), chine(2, 0.4, 0.5))))
        .isEmpty();
  }

  @Test
  void what_is_wrong_to_starboard_alone_is_told_of_starboard() {
    List<Station> stations = new ArrayList<>(PlainHulls.dory().hull().stations());
    Station middle = stations.get(2);
    List<Vector3> wide =
        middle.starboard().stream().map(p -> Vector3.of(p.x(), 2 * p.y(), p.z())).toList();
    stations.set(2, new Station("middle", middle.port(), wide));
    assertThat(FAIR.outOfLine(stations))
        .isNotEmpty()
        .allSatisfy(out -> assertThat(out.port()).isFalse());
  }

  /** The round dinghy's rail: 0.50, 0.66, 0.71, 0.63, 0.38, 0.03 out. */
  @Test
  void a_reading_written_down_twice_is_found_and_named() {
    List<Station> right = OrdinaryBoats.all().get(1).hull().stations();
    int rail = right.get(0).port().size() - 1;
    for (int i : new int[] {3, 5}) {
      double before = right.get(i - 1).portRail().y();
      List<FairnessOutlier> found =
          FAIR.outOfLine(with(right, i, rail, p -> Vector3.of(p.x(), before, p.z())));
      assertThat(found).as("station %d", i).hasSize(1);
      assertThat(found.get(0).slip()).as("station %d", i).isEqualTo(TapeSlip.REPEATED);
    }
  }

  /** Two stations of a punt with parallel sides read alike, and are. */
  @Test
  void two_stations_alike_in_a_straight_run_are_in_line() {
    assertThat(
            FAIR.outOfLine(
                List.of(
                    chine(0, 0.6, 0.7),
                    chine(1, 0.65, 0.75),
                    chine(2, 0.65, 0.75),
                    chine(3, 0.65, 0.75),
                    chine(4, 0.6, 0.7))))
        .isEmpty();
  }

  private static Station chine(double x, double bottom, double rail) {
    return Station.mirrored(
        "at " + x,
        List.of(Vector3.of(x, 0, 0), Vector3.of(x, bottom, 0), Vector3.of(x, rail, 0.4)));
  }

  private static List<Station> with(List<Station> right, int i, UnaryOperator<Vector3> slip) {
    List<Station> wrong = new ArrayList<>(right);
    Station s = right.get(i);
    wrong.set(i, Station.mirrored(s.name(), s.port().stream().map(slip).toList()));
    return wrong;
  }

  private static List<Station> with(
      List<Station> right, int i, int point, UnaryOperator<Vector3> slip) {
    List<Station> wrong = new ArrayList<>(right);
    List<Vector3> port = new ArrayList<>(right.get(i).port());
    port.set(point, slip.apply(port.get(point)));
    wrong.set(i, Station.mirrored(right.get(i).name(), port));
    return wrong;
  }
}
