package thwartwise.plausibility;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.boat.Waters;
import thwartwise.checks.Finding;
import thwartwise.checks.FindingText;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.inspection.PlainHulls;
import thwartwise.rules.RuleSet;
import thwartwise.sampleboats.BoatEdits;
import thwartwise.sampleboats.OrdinaryBoats;
import thwartwise.sampleboats.PublishedBoats;

class PlausibilityTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final String BLOCK = "how much of its block the hull fills under water";
  private static final String TWIST = "how hard a panel is twisted";
  private static final String WEIGHT = "weight of the bare hull against that of its skin";

  static List<Boat> boats() {
    return List.of(
        PlainHulls.pram(), PlainHulls.skiff(), PlainHulls.punt(), PlainHulls.canoe(), demo());
  }

  @ParameterizedTest
  @MethodSource("boats")
  void a_plain_boat_is_plausible_empty_and_with_two_aboard(Boat boat) {
    for (double aboard : new double[] {0, 160}) {
      List<Finding> findings = findings(boat, aboard);
      assertThat(findings).extracting(FindingText::check).contains(BLOCK, WEIGHT);
      assertThat(findings)
          .allSatisfy(
              f -> {
                assertThat(f.outcome()).as("%s %s", boat.name(), f).isEqualTo(Outcome.MEETS);
                assertThat(f.role()).isEqualTo(Role.INFORMATION);
                assertThat(f.source()).contains("judgement");
              });
    }
  }

  static Stream<Boat> ordinaryBoats() {
    return Stream.concat(OrdinaryBoats.forty().stream(), PublishedBoats.all());
  }

  @ParameterizedTest
  @MethodSource("ordinaryBoats")
  void nothing_of_an_ordinary_boat_is_doubted(Boat boat) {
    BoatModel model = BoatModel.of(boat, OrdinaryBoats.TODAY);
    assertThat(Plausibility.of(model, RULES))
        .allSatisfy(f -> assertThat(f.isDoubtful()).as("%s: %s", boat.name(), f).isFalse());
  }

  @Test
  void a_box_fills_its_whole_block_and_is_told_to_check_the_stations() {
    Finding block =
        of(
            BLOCK,
            BoxBoat.of(4, 1.2, 0.5)
                .hull(200, 0.2)
                .model()
                .boat()
                .withConfirmedMeasurements(List.of()),
            0);
    assertThat(block.value().orElseThrow()).isCloseTo(1, within(1e-9));
    assertThat(block.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(block.limit()).isEqualTo(0.95);
    assertThat(block.margin().atLeast()).isFalse();
    assertThat(block.margin().unit()).isEqualTo(Unit.PERCENT);
    assertThat(FindingText.note(block)).isEqualTo("check the stations");
  }

  @Test
  void a_wedge_with_its_edge_down_fills_half_and_one_that_closes_to_both_ends_too_little() {
    assertThat(of(BLOCK, wedge(0.6, 0.6, 0.6), 0).value().orElseThrow())
        .isCloseTo(0.5, within(1e-9));
    // In plan a parabola, which fills two thirds of that half; to the sag of the straight pieces.
    assertThat(of(BLOCK, wedge(0, 0.6, 0), 0).value().orElseThrow())
        .isCloseTo(1.0 / 3, within(0.001));
    Finding sharp = of(BLOCK, wedge(0, 0.1, 0.6, 0.1, 0), 0);
    assertThat(sharp.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(sharp.limit()).isEqualTo(0.20);
    assertThat(sharp.margin().atLeast()).isTrue();
  }

  // Somebody far aft or a list changes the pose, not the stations.
  @Test
  void what_is_aboard_and_where_counts_only_by_its_weight() {
    BoatModel model = BoatModel.of(PlainHulls.punt(), PlainHulls.TODAY);
    Loading aft =
        new Loading(
            model, List.of(), List.of(new Loading.Weight(90, Vector3.of(0.3, 0.5, 0.3))), 1);
    Loading amid =
        new Loading(model, List.of(), List.of(new Loading.Weight(90, Vector3.of(2, 0, 0.3))), 1);
    assertThat(found(aft)).isEqualTo(found(amid));
  }

  @Test
  void a_boat_heavier_than_the_water_it_can_displace_has_no_block_and_is_no_fault() {
    List<Finding> findings = findings(PlainHulls.pram(), 5000);
    assertThat(findings).extracting(FindingText::check).contains(WEIGHT).doesNotContain(BLOCK);
  }

  // The rail of the middle station typed 0.35 out instead of 0.675.
  @Test
  void a_rail_typed_wrong_twists_the_side_and_the_panel_is_named() {
    Boat skiff = PlainHulls.skiff();
    List<Station> all = skiff.hull().stations();
    List<Station> stations = new ArrayList<>(List.of(all.get(0), all.get(2), all.get(4)));
    stations.add(
        1,
        Station.mirrored(
            "quarter",
            List.of(
                Vector3.of(0.9, 0, 0.02), Vector3.of(0.9, 0.5, 0.02), Vector3.of(0.9, 0.2, 0.44))));
    Finding twist = of(TWIST, with(skiff, 55, Optional.of(Material.PLYWOOD), stations), 0);
    assertThat(twist.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(twist.limit()).isEqualTo(Math.toRadians(45));
    assertThat(FindingText.note(twist))
        .isEqualTo("most between chine and rail, from quarter to middle; check these points");
    // Moulded, it may have any shape.
    assertThat(findings(with(skiff, 55, Optional.of(Material.GRP), stations), 0))
        .extracting(FindingText::check)
        .doesNotContain(TWIST);
  }

  // Skin of the box: bottom 4.8, sides 4, ends 1.2: 10 m2 of 6 mm at 750 are 45 kg.
  @Test
  void a_hull_lighter_than_its_skin_or_far_heavier_is_told_to_be_weighed_again() {
    assertThat(weight(31).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(weight(32).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(weight(135).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(weight(136).outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(weight(31).limit()).isCloseTo(31.5, within(1e-9));
    assertThat(weight(31).margin().atLeast()).isTrue();
    assertThat(weight(136).limit()).isCloseTo(135, within(1e-9));
    assertThat(weight(136).margin().atLeast()).isFalse();
    assertThat(FindingText.note(weight(136)))
        .isEqualTo("weigh it again or check the thickness: 10.0 m2 of skin come to 45 kg");
    assertThat(weight(60).note()).isEqualTo(Note.NONE);
  }

  /** The pram's 34 kg weighed at one end: 17 kg, 0.82 of 4.6 m2 of 6 mm at 750, 20.7 kg. */
  @Test
  void a_hull_weighed_at_one_end_only_is_doubted() {
    Finding half = of(WEIGHT, OrdinaryBoats.all().get(0).withHullMass(17), 0);
    assertThat(half.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(half))
        .isEqualTo(
            "weigh it again or check the thickness: 4.6 m2 of skin come to 21 kg; was one end of it"
                + " on the scales, and not both?");
  }

  /** Ten times the thickness makes a skin ten times as heavy; nobody measured is not too light. */
  @Test
  void a_thickness_ten_times_too_large_shows_in_the_mass() {
    for (Boat boat : OrdinaryBoats.all()) {
      double thick = boat.hull().thickness();
      assertThat(of(WEIGHT, BoatEdits.withThickness(boat, 10 * thick), 0).outcome())
          .as(boat.name())
          .isEqualTo(Outcome.FALLS_SHORT);
      double unmeasured = boat.hull().material().orElseThrow().unmeasuredThickness();
      assertThat(of(WEIGHT, BoatEdits.withThickness(boat, unmeasured), 0).outcome())
          .as(boat.name())
          .isEqualTo(Outcome.MEETS);
    }
  }

  private static Finding weight(double mass) {
    return of(
        WEIGHT,
        BoxBoat.of(4, 1.2, 0.5).hull(mass, 0.2).model().boat().withConfirmedMeasurements(List.of()),
        0);
  }

  @Test
  void an_outline_that_crosses_between_two_stations_is_told_with_its_place() {
    Boat folded =
        with(
            PlainHulls.skiff(),
            55,
            Optional.of(Material.PLYWOOD),
            List.of(fold(0), fold(1), fold(2)));
    Finding crossing = of("length over which the faired outline crosses itself", folded, 0);
    assertThat(crossing.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(crossing.value().orElseThrow()).isBetween(0.01, 0.2);
    assertThat(crossing.limit()).isZero();
    assertThat(FindingText.note(crossing))
        .matches("from x 0\\.\\d\\d to 0\\.\\d\\d m; measure another station there");
  }

  private static Station fold(double x) {
    double t = x / 2;
    return Station.mirrored(
        "at " + x,
        List.of(
            Vector3.of(x, 0, 0),
            Vector3.of(x, 0.5 - 0.4 * t, 0.3 + 0.2 * t),
            Vector3.of(x, 0.1 + 0.4 * t, 0.5 - 0.4 * t),
            Vector3.of(x, 0.7, 0.6)));
  }

  private static Boat wedge(double... breadths) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < breadths.length; i++) {
      double x = 3.0 * i / (breadths.length - 1);
      stations.add(
          Station.mirrored(
              "at " + x, List.of(Vector3.of(x, 0, 0), Vector3.of(x, breadths[i], 0.5))));
    }
    return with(PlainHulls.skiff(), 100, Optional.of(Material.PLYWOOD), stations);
  }

  private static Boat with(
      Boat boat, double mass, Optional<Material> material, List<Station> stations) {
    return new Boat(
        boat.name(),
        boat.water(),
        new HullMeasurements(
            mass, Optional.empty(), material, 750, 0.006, 0.02, stations, List.of()),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        boat.propulsion(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        Optional.empty(),
        List.of());
  }

  private static Finding of(String check, Boat boat, double aboard) {
    return findings(boat, aboard).stream()
        .filter(f -> FindingText.check(f).equals(check))
        .findFirst()
        .orElseThrow();
  }

  private static List<Finding> findings(Boat boat, double aboard) {
    BoatModel model = BoatModel.of(boat, PlainHulls.TODAY);
    List<Loading.Weight> weights =
        aboard > 0 ? List.of(new Loading.Weight(aboard, Vector3.of(1.5, 0, 0.3))) : List.of();
    return found(new Loading(model, List.of(), weights, 1));
  }

  private static List<Finding> found(Loading loading) {
    return Plausibility.of(loading, RULES).stream().map(PlausibilityFinding::finding).toList();
  }

  private static Boat demo() {
    try (InputStream in =
        PlausibilityTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return BoatFile.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), "demo");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
