package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.measure.UnitSystem;
import thwartwise.report.AssumptionWords;
import thwartwise.walk.engine.Answer;

@Isolated("sets the locale of the process")
class WholeWalkTest {

  @Test
  void a_walk_in_metres_gives_the_boat_that_was_measured() {
    assertThat(Sheet.full(true).boat()).usingRecursiveComparison().isEqualTo(measured());
  }

  @Test
  void a_walk_in_feet_inches_and_pounds_gives_the_same_boat_to_the_last_digit() {
    assertThat(Sheet.full(false).boat())
        .isEqualTo(Sheet.full(true).boat().in(UnitSystem.FEET_INCHES_POUNDS));
  }

  @Test
  void the_locale_of_the_machine_changes_nothing() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Sheet.full(false).boat())
          .isEqualTo(Sheet.full(true).boat().in(UnitSystem.FEET_INCHES_POUNDS));
      assertThat(Sheet.small().refused("hull.length", "45"))
          .isEqualTo(
              "45.00 m is not between 1.5 and 8 m, the length of any boat this is for."
                  + " Measure it again.");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void pressing_enter_takes_what_the_prompt_shows() {
    Boat boat = Sheet.small().boat();
    assertThat(boat.measuredBy()).isEmpty();
    assertThat(boat.hull().material()).hasValue(Material.PLYWOOD);
    assertThat(boat.hull().thickness()).isEqualTo(2 * Material.PLYWOOD.usualThickness());
    assertThat(boat.hull().centre()).isEmpty();
    assertThat(boat.bailer()).isEmpty();
    assertThat(boat.hull().stations())
        .extracting(Station::name)
        .containsExactly("aft end", "station 2", "fore end");
    assertThat(boat.hull().stations()).allMatch(Station::isSymmetric);
  }

  @Test
  void what_enter_took_for_granted_is_known_not_to_be_measured() {
    assertThat(AssumptionWords.of(Sheet.small().boat()))
        .containsExactly("Shell thickness 12 mm: thick for plywood, not measured (judgement).");
    assertThat(Sheet.small().with("hull.thickness", "6 mm").boat())
        .extracting(AssumptionWords::of)
        .isEqualTo(List.of());
  }

  @Test
  void a_floor_is_never_taken_for_granted() {
    Sheet raised = Sheet.small().with("hull.station.2.point.1.z", "0.02");
    assertThat(raised.refused("hull.floor", ""))
        .startsWith("Nothing was typed. Type a length such as");
  }

  @Test
  void an_upright_aft_end_is_the_origin_and_its_distance_is_not_asked() {
    assertThat(Sheet.small().boat().hull().stations().get(0).port())
        .containsExactly(Vector3.of(0, 0, 0.06), Vector3.of(0, 0.5, 0.44));
  }

  @Test
  void the_same_answers_always_give_the_same_boat() {
    List<Answer> answers = Sheet.full(true).toTheEnd();
    assertThat(Sheet.walk().next(answers)).isEqualTo(Sheet.walk().next(answers));
  }

  private static Boat measured() {
    return new Boat(
            "Gravy Boat",
            Water.SALT,
            hull(),
            List.of(
                new Opening("motor notch", Vector3.of(0, -0.1016, 0.381), 0.3048, true), drain()),
            chambers(),
            List.of(
                new Place("midships thwart", 1.7018, 0.2794, 0.4572, 2),
                new Place("stern seat", 0.4572, 0.2667, 0.4064, 1)),
            kit(),
            List.of(
                new Person("helm", 80.73944186, "stern seat", 0),
                new Person("bow", 78.01788764, "midships thwart", -0.1524)),
            new Propulsion.Outboard(500),
            List.of(),
            Optional.of(0.0075),
            Waters.NOT_STATED,
            Optional.of("the builder"),
            List.of())
        .whenSwamped(CrewWhenSwamped.SIT_IN_IT);
  }

  private static Opening drain() {
    return new Opening(
        "drain",
        Vector3.of(0.0508, 0.2032, 0.0635),
        0.0254,
        true,
        Optional.of("rubber bung"),
        Optional.empty(),
        Optional.empty());
  }

  private static HullMeasurements hull() {
    return new HullMeasurements(
        68.0388555,
        Optional.of(Vector3.of(1.7018, 0, 0.2032)),
        Optional.empty(),
        900,
        0.00635,
        0.0254,
        List.of(transom(), middle(), stem()),
        List.of(new Span(2.8448, 3.6576)));
  }

  private static Station transom() {
    return new Station(
        "transom",
        List.of(
            Vector3.of(0.0508, 0, 0.0508),
            Vector3.of(0.0254, 0.4572, 0.0635),
            Vector3.of(0, 0.5842, 0.4318)),
        List.of(
            Vector3.of(0.0508, -0.0, 0.0508),
            Vector3.of(0.0254, -0.4572, 0.0635),
            Vector3.of(0, -0.5715, 0.4318)));
  }

  private static Station middle() {
    return new Station(
        "middle",
        List.of(
            Vector3.of(1.8288, 0, 0),
            Vector3.of(1.8288, 0.5588, 0.0127),
            Vector3.of(1.8288, 0.6985, 0.4191)),
        List.of(
            Vector3.of(1.8288, -0.0, 0),
            Vector3.of(1.8288, -0.5588, 0.0127),
            Vector3.of(1.8288, -0.6858, 0.4191)));
  }

  private static Station stem() {
    return Station.mirrored(
        "fore end",
        List.of(
            Vector3.of(3.3528, 0, 0.2032),
            Vector3.of(3.4544, 0.0254, 0.254),
            Vector3.of(3.6576, 0.0381, 0.5842)));
  }

  private static List<Chamber> chambers() {
    Filling proven =
        new Filling.Air(
            Seal.PROVEN,
            Optional.of(
                new SealTest(
                    LocalDate.of(2026, 5, 2),
                    "water poured in",
                    20,
                    0.5,
                    "the builder",
                    Optional.of(0.3556))));
    return List.of(
        new Chamber(
            "fore locker",
            new Box(new Span(2.8448, 3.6576), Span.ALL, new Span(0, 0.3556)),
            proven,
            Optional.empty(),
            false),
        new Chamber(
            "midships thwart",
            new Box(new Span(1.6002, 1.8796), Span.ALL, new Span(0, 0.2794)),
            new Filling.Air(Seal.CLAIMED, Optional.empty()),
            Optional.of(0.086),
            false),
        new Chamber(
            "side foam",
            new Box(new Span(0.6096, 1.4224), new Span(0.4064, 0.6604), new Span(0.1016, 0.3048)),
            new Filling.Foam(true, true),
            Optional.empty(),
            true));
  }

  private static List<Kit> kit() {
    return List.of(
        new Kit(
            "battery",
            18.1436948,
            Vector3.of(0.9652, 0, 0.127),
            Optional.of(0.009),
            true,
            Optional.of("midships thwart")),
        new Kit(
            "motor",
            10.43262451,
            Vector3.of(-0.0762, -0.1016, 0.3556),
            Optional.empty(),
            false,
            Optional.empty()));
  }
}
