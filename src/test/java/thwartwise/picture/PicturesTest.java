package thwartwise.picture;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.CheckId;
import thwartwise.checks.HardAgainstOneSide;
import thwartwise.checks.Measure;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.CrewAtLimit;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.Report;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.record.SampleRecords;
import thwartwise.remedy.Deed;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.PictureWords;

/** What is drawn is what was worked out, measured off the picture again. */
class PicturesTest {
  /** A line is drawn to a hundredth of a unit; half a unit cannot be seen. */
  private static final double HALF_A_UNIT = 0.5;

  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final Boat TART = demo();
  private static final Report REPORT = report(TART);
  private static final Pictures PICTURES = Pictures.of(TART, REPORT, TODAY);

  private static final int SIDE = 1;
  private static final int PLAN = 0;
  private static final int SWAMPED = 2;
  private static final int SECTION = 3;
  private static final int CURVE = 4;

  private static Boat demo() {
    try (var in = PicturesTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return BoatFile.parse(
          new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8), "demo");
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static Report report(Boat boat) {
    return InspectedBoats.underShipped(boat);
  }

  private static Drawing drawn(int which) {
    return Drawing.of(PICTURES.drawn().get(which));
  }

  static Stream<Pictures> everything() {
    Boat sinks = BoxBoat.of(3, 1.2, 0.5).hull(250, 0.2).shell(7800, 0.006).boat();
    Boat crowded = TART.withKit(java.util.Collections.nCopies(60, TART.kit().get(3)));
    return Stream.of(
        PICTURES,
        Pictures.of(sinks, report(sinks), TODAY),
        Pictures.of(crowded, report(crowded), TODAY),
        Pictures.of(odd("<script>\"'&"), SampleRecords.report(), TODAY));
  }

  private static Boat odd(String name) {
    return new Boat(
        name,
        TART.water(),
        TART.hull(),
        TART.openings(),
        TART.chambers(),
        List.of(new Place(name, 1.7, 0.3, 0.4, 2)),
        List.of(new Kit(name, 5, Vector3.of(2, 0, 0.2), Optional.empty(), false, Optional.empty())),
        List.of(),
        TART.propulsion(),
        List.of(new Cleat(name, Vector3.ZERO)),
        Optional.empty(),
        TART.waters(),
        Optional.empty(),
        List.of());
  }

  @Test
  void the_story_is_five_pictures_and_each_has_its_words() {
    assertThat(PICTURES.omitted()).isEmpty();
    assertThat(PICTURES.drawn()).hasSize(5);
    assertThat(PICTURES.drawn())
        .allSatisfy(
            p -> {
              assertThat(PictureWords.of(p.facts(), UnitFormat.METRIC).title()).isNotBlank();
              assertThat(PictureWords.of(p.facts(), UnitFormat.METRIC).alternative())
                  .hasSizeGreaterThan(60);
              assertThat(PictureWords.of(p.facts(), UnitFormat.METRIC).caption())
                  .hasSizeGreaterThan(60);
            });
  }

  @ParameterizedTest
  @MethodSource("everything")
  void a_picture_is_well_formed_refers_to_nothing_and_stays_within_its_edges(Pictures pictures) {
    assertThat(pictures.drawn()).isNotEmpty();
    for (Picture picture : pictures.drawn()) {
      assertThat(picture.svg()).doesNotContain("href", "url(", "NaN", "Infinity", " id=");
      Drawing drawing = Drawing.of(picture);
      assertThat(drawing.width()).isEqualTo(640);
      for (Element words : drawing.all("text")) {
        double size = Double.parseDouble(words.getAttribute("font-size"));
        double half = Svg.width(words.getTextContent(), size) / 2;
        double at = Double.parseDouble(words.getAttribute("x"));
        String anchor = words.getAttribute("text-anchor");
        double middle = at + (anchor.equals("start") ? half : anchor.equals("end") ? -half : 0);
        assertThat(size).isGreaterThanOrEqualTo(Svg.SMALL);
        assertThat(middle).as(words.getTextContent()).isBetween(half, 640 - half);
        assertThat(Double.parseDouble(words.getAttribute("y")))
            .isBetween(0.7 * size, drawing.height());
      }
      for (Element path : drawing.all("path")) {
        assertThat(Drawing.points(path))
            .as(path.getAttribute("class"))
            .allMatch(p -> p.x() >= 0 && p.x() <= 640 && p.y() >= 0 && p.y() <= drawing.height());
      }
    }
  }

  @Test
  void loaded_and_swamped_waterlines_stand_where_the_report_says() {
    AfloatFigures afloat = REPORT.atLimit().afloat().orElseThrow();
    double loaded = afloat.pose().waterAtOrigin().orElseThrow();
    assertWater("water-loaded", loaded, afloat.pose().trim());
    var swamped = REPORT.atLimit().swamped().pose().orElseThrow();
    assertWater("water-swamped", swamped.waterAtOrigin().orElseThrow(), swamped.trim());
    assertThat(drawn(SIDE).kinds("label")).hasSize(3);
    assertThat(drawn(SIDE).kinds("label").get(1).getTextContent())
        .isEqualTo("loaded " + (int) Math.floor(100 * afloat.leastFreeboard()) + " cm");
  }

  // The lowest point of the hull is the origin of heights, its aft end the origin of lengths (the
  // rail of this boat reaches 0.06 m farther aft).
  private static void assertWater(String kind, double atOrigin, double trim) {
    Drawing side = drawn(SIDE);
    double perMetre = side.perMetre();
    List<Point> hull = side.points("hull");
    double keel = Drawing.most(hull, Point::y);
    double origin = Drawing.least(hull, Point::x) + 0.06 * perMetre;
    List<Point> line = side.points(kind);
    double slope = (line.get(1).y() - line.get(0).y()) / (line.get(1).x() - line.get(0).x());
    double there = line.get(0).y() + slope * (origin - line.get(0).x());
    assertThat((keel - there) / perMetre).isCloseTo(atOrigin, within(HALF_A_UNIT / perMetre));
    // Bow down means that the water climbs the hull toward the bow.
    assertThat(-slope).isCloseTo(Math.tan(trim), within(0.002));
  }

  @Test
  void the_hull_is_as_long_and_as_broad_as_it_was_measured() {
    for (int which : List.of(PLAN, SIDE)) {
      Drawing drawing = drawn(which);
      List<Point> hull = drawing.points("hull");
      double length = Drawing.most(hull, Point::x) - Drawing.least(hull, Point::x);
      assertThat(length).isCloseTo(4.02 * drawing.perMetre(), within(HALF_A_UNIT));
    }
    List<Point> plan = drawn(PLAN).points("hull");
    // The measured stations are 1.48 m broad at most, and the faired rail hardly swells beyond.
    assertThat(Drawing.most(plan, Point::y) - Drawing.least(plan, Point::y))
        .isCloseTo(1.48 * drawn(PLAN).perMetre(), within(HALF_A_UNIT));
    List<Point> side = drawn(SIDE).points("hull");
    assertThat(Drawing.most(side, Point::y) - Drawing.least(side, Point::y))
        .isCloseTo(0.64 * drawn(SIDE).perMetre(), within(HALF_A_UNIT));
  }

  @Test
  void a_box_floats_as_deep_as_its_mass_over_its_plan() {
    Boat box = BoxBoat.of(3, 1.2, 0.5).hull(180, 0.2).boat();
    Drawing side = Drawing.of(Pictures.of(box, report(box), TODAY).drawn().get(SIDE));
    double keel = Drawing.most(side.points("hull"), Point::y);
    double draught = 180 / (box.water().density() * 3 * 1.2);
    for (Point end : side.points("water-empty")) {
      assertThat(keel - end.y()).isCloseTo(draught * side.perMetre(), within(HALF_A_UNIT));
    }
  }

  @Test
  void kit_and_people_stand_where_they_were_measured_bow_to_the_right_and_port_up() {
    Drawing plan = drawn(PLAN);
    List<Point> hull = plan.points("hull");
    double aft = Drawing.least(hull, Point::x) + 0.06 * plan.perMetre();
    double middle = (Drawing.least(hull, Point::y) + Drawing.most(hull, Point::y)) / 2;
    List<Element> squares = plan.kinds("kit");
    assertThat(squares).hasSameSizeAs(TART.kit());
    for (int i = 0; i < squares.size(); i++) {
      List<Point> corners = Drawing.points(squares.get(i));
      Vector3 at = TART.kit().get(i).at();
      double x = (corners.get(0).x() + corners.get(2).x()) / 2;
      double y = (corners.get(0).y() + corners.get(2).y()) / 2;
      assertThat(x).isCloseTo(aft + at.x() * plan.perMetre(), within(HALF_A_UNIT));
      assertThat(y).isCloseTo(middle - at.y() * plan.perMetre(), within(HALF_A_UNIT));
    }
    assertThat(plan.kinds("person")).hasSize(REPORT.recommendation().people());
    List<Place> seats = seats();
    List<Element> people = plan.kinds("person");
    for (int i = 0; i < seats.size(); i++) {
      assertThat(Drawing.middle(people.get(i)).x())
          .isCloseTo(aft + seats.get(i).x() * plan.perMetre(), within(HALF_A_UNIT));
    }
  }

  /** The places of the people at the limit, one for each. */
  private static List<Place> seats() {
    return ((Crew.Alike) REPORT.atLimit().loadCase().crew())
        .places().stream()
            .map(
                n ->
                    TART.places().stream()
                        .filter(p -> p.name().equals(n))
                        .findFirst()
                        .orElseThrow())
            .toList();
  }

  @Test
  void chambers_that_count_are_claimed_and_are_open_are_hatched_apart_and_named() {
    Drawing plan = drawn(PLAN);
    assertThat(plan.kinds("chamber-counts")).hasSize(3);
    assertThat(plan.kinds("chamber-claimed")).hasSize(1);
    assertThat(plan.kinds("chamber-open")).hasSize(1);
    assertThat(
            Stream.of("counts", "claimed", "open")
                .map(state -> plan.kinds("chamber-" + state).get(0).getAttribute("fill"))
                .distinct())
        .hasSize(3);
    assertThat(
            Stream.of("counts", "claimed", "open")
                .map(state -> Drawing.points(plan.kinds("chamber-" + state + "-hatching").get(0)))
                .map(
                    p -> Math.signum((p.get(1).x() - p.get(0).x()) * (p.get(1).y() - p.get(0).y())))
                .distinct())
        .hasSize(3);
    assertThat(key(plan))
        .contains("Counts when swamped: bow locker, stern bench box, port")
        .contains("Only claimed, counts for nothing: middle thwart box")
        .contains("counts for nothing: battery box");
  }

  private static String key(Drawing drawing) {
    return drawing.kinds("key-word").stream()
        .map(Element::getTextContent)
        .collect(Collectors.joining(" "));
  }

  @Test
  void places_and_kit_are_named_in_the_picture() {
    Drawing plan = drawn(PLAN);
    assertThat(key(plan)).contains("middle thwart", "stern bench", "bow seat");
    assertThat(key(plan))
        .contains("battery", "electric motor", "oars, pair", "anchor and line", "solar panel");
    assertThat(plan.kinds("kit-number")).hasSize(2 * TART.kit().size());
    assertThat(plan.kinds("place-letter")).hasSize(2 * TART.places().size());
  }

  @Test
  void full_of_water_the_water_is_level_and_the_hull_lies_to_it_as_the_report_says() {
    Drawing swamped = drawn(SWAMPED);
    List<Point> surface = swamped.points("surface");
    assertThat(surface.get(0).y()).isEqualTo(surface.get(1).y());
    assertThat(swamped.kinds("person")).hasSize(REPORT.recommendation().people());
    // The keel's lowest stretch lies as deep as trim and height of the water say.
    var pose = REPORT.atLimit().swamped().pose().orElseThrow();
    List<Point> hull = swamped.points("hull");
    List<Point> level = drawn(SIDE).points("hull");
    double perMetre = swamped.perMetre();
    double measured = (Drawing.most(hull, Point::y) - surface.get(0).y()) / perMetre;
    double keel = Drawing.most(level, Point::y);
    double origin = Drawing.least(level, Point::x) + 0.06 * drawn(SIDE).perMetre();
    double deepest =
        level.stream()
            .mapToDouble(
                p -> {
                  double x = (p.x() - origin) / drawn(SIDE).perMetre();
                  double z = (keel - p.y()) / drawn(SIDE).perMetre();
                  double water = pose.waterAtOrigin().orElseThrow() + x * Math.tan(pose.trim());
                  return (water - z) * Math.cos(pose.trim());
                })
            .max()
            .orElseThrow();
    assertThat(measured).isCloseTo(deepest, within(0.01));
  }

  @Test
  void hatching_stays_within_what_it_fills() {
    for (String kind : List.of("chamber-counts", "chamber-claimed")) {
      List<Point> area = Drawing.points(drawn(PLAN).kinds(kind).get(0));
      List<Point> strokes = Drawing.points(drawn(PLAN).kinds(kind + "-hatching").get(0));
      assertThat(strokes).hasSizeGreaterThan(8);
      assertThat(strokes)
          .allMatch(p -> p.x() >= Drawing.least(area, Point::x) - 0.01)
          .allMatch(p -> p.x() <= Drawing.most(area, Point::x) + 0.01)
          .allMatch(p -> p.y() >= Drawing.least(area, Point::y) - 0.01)
          .allMatch(p -> p.y() <= Drawing.most(area, Point::y) + 0.01);
    }
  }

  @Test
  void the_arm_across_the_section_times_the_weight_is_the_moment_at_that_heel() {
    Drawing section = drawn(SECTION);
    List<Point> arm = section.points("arm");
    double metres = Math.abs(arm.get(1).x() - arm.get(0).x()) / section.perMetre();
    AfloatFigures afloat = REPORT.atLimit().afloat().orElseThrow();
    HeeledScene heeled = heeled();
    double moment = metres * afloat.displacement() * 9.80665;
    assertThat(moment)
        .isCloseTo(
            between(REPORT.atLimit().righting().orElseThrow(), heeled.heel()),
            within(0.02 * moment));
    assertThat(section.words("arm-word")).isEqualTo((int) Math.floor(100 * metres) + " cm");
  }

  private static HeeledScene heeled() {
    return HeeledScene.of(Scene.of(BoatModel.of(TART, TODAY), REPORT)).orElseThrow();
  }

  private static double between(RightingFigures righting, double heel) {
    int before = (int) Math.floor(Math.toDegrees(heel));
    double share = Math.toDegrees(heel) - before;
    return (1 - share) * righting.curve().get(before).moment()
        + share * righting.curve().get(before + 1).moment();
  }

  private static Kit tied(Kit k) {
    return new Kit(k.name(), k.mass(), k.at(), k.volume(), true, k.in());
  }

  @Test
  void the_section_shows_the_least_freeboard_left_with_everyone_over() {
    Drawing section = drawn(SECTION);
    // The picture leaves kit where it is listed; the check lets what is loose slide.
    BoatModel model =
        BoatModel.of(TART.withKit(TART.kit().stream().map(PicturesTest::tied).toList()), TODAY);
    LoadedBoat trial = LoadedBoat.of(model, CrewAtLimit.of(model, REPORT)).stiff();
    double left =
        new HardAgainstOneSide(RuleSetFile.cautiousDefault())
            .readings(trial).stream()
                .filter(
                    r -> r.question().asks(CheckId.EVERYONE_HARD_TO_ONE_SIDE, Measure.FREEBOARD))
                .mapToDouble(r -> r.value().orElseThrow())
                .min()
                .orElseThrow();
    Point edge = section.middle("lowest-edge");
    double surface = section.points("surface").get(0).y();
    assertThat((surface - edge.y()) / section.perMetre())
        .isCloseTo(left, within(HALF_A_UNIT / section.perMetre()));
    // The edge stands on the hull that is drawn.
    assertThat(section.points("hull"))
        .anyMatch(p -> Math.hypot(p.x() - edge.x(), p.y() - edge.y()) < 2);
  }

  // Upright, wall-sided: B lies half the draught deep, on the middle line.
  @Test
  void the_lift_of_a_box_that_is_heeled_lies_where_paper_says() {
    Boat box = BoxBoat.of(3, 1.2, 0.5).hull(180, 0.2).boat();
    Drawing section = Drawing.of(Pictures.of(box, report(box), TODAY).drawn().get(SECTION));
    double draught = 180 / (box.water().density() * 3 * 1.2);
    HeeledScene heeled =
        HeeledScene.of(Scene.of(BoatModel.of(box, TODAY), report(box))).orElseThrow();
    double tan = Math.tan(heeled.heel());
    double half = 0.6;
    // The bottom has left the water: a triangle of depth h and breadth h / tan, of the same area.
    double depth = Math.sqrt(2 * draught * 2 * half * tan);
    double breadth = depth / tan;
    assertThat(breadth).isLessThan(2 * half);
    double across = half - breadth / 3;
    double up = depth / 3;
    double b = across * Math.cos(heeled.heel()) + up * Math.sin(heeled.heel());
    double g = 0.2 * Math.sin(heeled.heel());
    List<Point> arm = section.points("arm");
    assertThat(Math.abs(arm.get(1).x() - arm.get(0).x()) / section.perMetre())
        .isCloseTo(Math.abs(b - g), within(HALF_A_UNIT / section.perMetre()));
  }

  @Test
  void the_curve_passes_through_the_moments_of_the_report_and_ends_where_water_comes_in() {
    Drawing curve = drawn(CURVE);
    RightingFigures righting = REPORT.atLimit().righting().orElseThrow();
    List<Point> line = curve.points("righting");
    assertThat(line).hasSize(righting.curve().size() + 1);
    List<Element> rungs = curve.kinds("rung-word");
    double nought = rung(curve, 0);
    double perMoment =
        (rung(curve, rungs.size() - 1) - nought)
            / Double.parseDouble(rungs.get(rungs.size() - 1).getTextContent());
    assertThat(rungs.get(0).getTextContent()).isEqualTo("0");
    for (int i = 0; i < righting.curve().size(); i++) {
      assertThat(line.get(i).y())
          .isCloseTo(nought + perMoment * righting.curve().get(i).moment(), within(HALF_A_UNIT));
    }
    double perDegree = line.get(1).x() - line.get(0).x();
    double flooding = Math.toDegrees(righting.floodingHeel().orElseThrow());
    assertThat(line.get(line.size() - 1).x())
        .isCloseTo(line.get(0).x() + flooding * perDegree, within(HALF_A_UNIT));
    assertThat(Drawing.least(curve.points("flooded"), Point::x))
        .isCloseTo(line.get(line.size() - 1).x(), within(HALF_A_UNIT));
    assertThat(curve.words("flooded-word"))
        .isEqualTo("water comes in from " + (int) Math.floor(flooding) + "°");
  }

  // Two adults, one on the stern bench and one on the bow seat, each out to the end of their place:
  // 95 x 9.80665 N times how far that is, upright.
  @Test
  void everyone_to_one_side_begins_at_their_mass_times_how_far_they_move() {
    assertThat(LoadCaseWords.of(REPORT.atLimit().loadCase()))
        .isEqualTo("at the limit: 2 of 95 kg at stern bench, bow seat");
    Drawing curve = drawn(CURVE);
    List<Element> words = curve.kinds("rung-word");
    double nought = rung(curve, 0);
    double most = Double.parseDouble(words.get(words.size() - 1).getTextContent());
    double perMoment = (rung(curve, words.size() - 1) - nought) / most;
    double out = seats().stream().mapToDouble(p -> p.across().to()).sum();
    List<Point> line = curve.points("people");
    assertThat(line.get(0).y())
        .isCloseTo(nought + perMoment * 95 * 9.80665 * out, within(HALF_A_UNIT));
    double heel = REPORT.atLimit().righting().orElseThrow().floodingHeel().orElseThrow();
    assertThat(line.get(line.size() - 1).y())
        .isCloseTo(nought + perMoment * 95 * 9.80665 * out * Math.cos(heel), within(HALF_A_UNIT));
  }

  @Test
  void degrees_stand_under_the_heel_they_name_and_what_is_flooded_has_a_breadth() {
    Drawing curve = drawn(CURVE);
    List<Point> line = curve.points("righting");
    double perDegree = line.get(1).x() - line.get(0).x();
    List<Element> words = curve.kinds("tick-word");
    assertThat(words).hasSizeGreaterThan(3);
    for (Element word : words) {
      double degrees = Double.parseDouble(word.getTextContent());
      assertThat(Double.parseDouble(word.getAttribute("x")))
          .isCloseTo(line.get(0).x() + degrees * perDegree, within(HALF_A_UNIT));
    }
    List<Point> flooded = curve.points("flooded");
    assertThat(Drawing.most(flooded, Point::x) - Drawing.least(flooded, Point::x))
        .isGreaterThan(40);
  }

  private static double rung(Drawing curve, int which) {
    return Drawing.points(curve.kinds("rung").get(which)).get(0).y();
  }

  @Test
  void it_rests_where_the_moment_of_everyone_to_one_side_meets_the_curve() {
    Drawing curve = drawn(CURVE);
    Point meets = curve.middle("meets");
    List<Point> line = curve.points("righting");
    Point before = line.stream().filter(p -> p.x() <= meets.x()).reduce((a, b) -> b).get();
    Point after = line.stream().filter(p -> p.x() > meets.x()).findFirst().get();
    double share = (meets.x() - before.x()) / (after.x() - before.x());
    assertThat(before.y() + share * (after.y() - before.y())).isCloseTo(meets.y(), within(1.5));
  }

  @Test
  void a_boat_that_sinks_says_so_and_has_no_line_for_it() {
    Boat sinks = BoxBoat.of(3, 1.2, 0.5).hull(250, 0.2).shell(7800, 0.006).boat();
    Report report = report(sinks);
    assertThat(report.atLimit().swamped().floats()).isFalse();
    Picture side = Pictures.of(sinks, report, TODAY).drawn().get(SIDE);
    assertThat(Drawing.of(side).kinds("water-swamped")).isEmpty();
    assertThat(Drawing.of(side).kinds("water-empty")).hasSize(1);
    assertThat(PictureWords.of(side.facts(), UnitFormat.METRIC).caption())
        .contains("Full of water, it sinks, so no line is drawn.");
    assertThat(PictureWords.of(side.facts(), UnitFormat.METRIC).alternative())
        .contains("Full of water, it sinks");
    assertThat(Pictures.of(sinks, report, TODAY).omitted())
        .extracting(PictureWords::of)
        .containsExactly("Full of water, it sinks, so it is not drawn");
  }

  @Test
  void where_nobody_is_recommended_nobody_is_drawn_and_it_is_said() {
    Boat tippy = BoxBoat.of(3, 0.6, 0.5).hull(40, 0.2).place("thwart", 1.5, 0.4, 0.2, 1).boat();
    Report report = report(tippy);
    assertThat(report.recommendation().withheld()).isTrue();
    Pictures pictures = Pictures.of(tippy, report, TODAY);
    for (Picture picture : pictures.drawn()) {
      assertThat(Drawing.of(picture).kinds("person")).isEmpty();
      assertThat(Drawing.of(picture).kinds("people")).isEmpty();
    }
    assertThat(Drawing.of(pictures.drawn().get(SIDE)).kinds("water-loaded")).isEmpty();
    assertThat(PictureWords.of(pictures.drawn().get(PLAN).facts(), UnitFormat.METRIC).caption())
        .startsWith("Drawn with nobody aboard.");
    assertThat(PictureWords.of(pictures.drawn().get(SIDE).facts(), UnitFormat.METRIC).caption())
        .contains("nobody is aboard");
  }

  @Test
  void a_boat_that_does_not_float_upright_has_no_picture_of_heeling_and_says_why() {
    Boat heavy = BoxBoat.of(3, 1.2, 0.5).hull(5000, 0.2).boat();
    Pictures pictures = Pictures.of(heavy, SampleRecords.report(), TODAY);
    assertThat(pictures.drawn()).hasSize(3);
    assertThat(pictures.omitted()).hasSize(1);
    assertThat(PictureWords.of(pictures.omitted().get(0)))
        .contains("was not found to float upright");
    assertThat(PictureWords.of(pictures.drawn().get(SIDE).facts(), UnitFormat.METRIC).caption())
        .contains("no line is drawn for it");
  }

  @Test
  void measurements_that_contradict_each_other_leave_a_sentence_and_no_picture() {
    Boat impossible =
        BoxBoat.of(3, 1.2, 0.5)
            .proven("one", new Span(0, 1))
            .proven("two", new Span(0.5, 1.5))
            .boat();
    Pictures pictures = Pictures.of(impossible, SampleRecords.report(), TODAY);
    assertThat(pictures.drawn()).isEmpty();
    assertThat(PictureWords.of(pictures.omitted().get(0)))
        .startsWith("No picture could be drawn")
        .contains("overlap");
  }

  @ParameterizedTest
  @MethodSource("names")
  void what_somebody_typed_can_neither_break_a_picture_nor_run_out_of_it(String name) {
    for (Picture picture : Pictures.of(odd(name), SampleRecords.report(), TODAY).drawn()) {
      assertThat(picture.svg()).doesNotContain("<script");
      assertThat(Drawing.of(picture).all("text"))
          .allMatch(t -> t.getTextContent().codePointCount(0, t.getTextContent().length()) <= 46);
      assertThat(PictureWords.of(picture.facts(), UnitFormat.METRIC).caption().length())
          .isLessThan(900);
    }
  }

  static Stream<String> names() {
    return Stream.of(
        "<script>alert(1)</script>", "\"Ladle\" & 'Sons'", "مَرْحَبًا", "x".repeat(300), "🥄👩‍👧");
  }

  private static Pictures changed(Deed deed) {
    Crew three =
        new Crew.Alike(
            3, 95, List.of("middle thwart", "middle thwart", "bow seat"), Packing.SPREAD);
    return PICTURES.with(TART, deed, three, TODAY);
  }

  private static Deed proving(String chamber) {
    return new Deed.ProveChambers(List.of(new Deed.ProvenChamber(chamber, false)), false);
  }

  @Test
  void what_is_to_be_done_first_is_drawn_before_and_after() {
    Picture both = changed(proving("middle thwart box")).change().orElseThrow();

    Drawing drawing = Drawing.of(both);
    assertThat(drawing.kinds("when").stream().map(Element::getTextContent))
        .containsExactly("today", "afterwards");
    assertThat(drawing.kinds("hull")).hasSize(2);
    assertThat(both.facts())
        .isInstanceOfSatisfying(
            PictureFacts.Changed.class,
            shown -> {
              assertThat(shown.aboard().people()).isEqualTo(3);
              assertThat(shown.then()).isEqualTo(shown.aboard());
            });
  }

  @Test
  void what_cannot_be_done_to_the_boat_is_not_drawn() {
    assertThat(changed(proving("no such box")).change()).isEmpty();
    assertThat(changed(new Deed.OthersAboard()).change()).isEmpty();
    assertThat(PICTURES.change()).isEmpty();
  }
}
