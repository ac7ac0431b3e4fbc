package thwartwise.rules;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Propulsion;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Span;

class Cfr183FlotationTest {
  private static final double CUBIC_FOOT = 0.3048 * 0.3048 * 0.3048;
  private static final double LB = 0.45359237;

  static Stream<Reference> hulls() {
    return Reference.of("cfr-hull-flotation");
  }

  @ParameterizedTest
  @MethodSource("hulls")
  void a_hull_needs_what_the_handbook_works_out(Reference r) {
    double volume =
        Cfr183Flotation.hull(r.in("under") * LB, r.in("SG"), r.in("dry") * LB, r.in("B"));
    assertThat(volume / CUBIC_FOOT).isCloseTo(r.wanted("ft3"), within(r.near("ft3")));
  }

  static Stream<Reference> motors() {
    return Reference.of("cfr-motor-flotation");
  }

  @ParameterizedTest
  @MethodSource("motors")
  void a_motor_needs_what_the_handbook_works_out(Reference r) {
    assertThat(Cfr183Flotation.volume(r.in("lb") * LB, r.in("B")) / CUBIC_FOOT)
        .isCloseTo(r.wanted("ft3"), within(r.near("ft3")));
  }

  static Stream<Reference> people() {
    return Reference.of("cfr-people-flotation");
  }

  @ParameterizedTest
  @MethodSource("people")
  void people_need_what_the_handbook_works_out(Reference r) {
    double mass = Cfr183Flotation.people(r.in("persons") * LB, r.in("load") * LB);
    assertThat(Cfr183Flotation.volume(mass, r.in("B")) / CUBIC_FOOT)
        .isCloseTo(r.wanted("ft3"), within(r.near("ft3")));
  }

  static Stream<Reference> basic() {
    return Reference.of("cfr-basic-flotation");
  }

  @ParameterizedTest
  @MethodSource("basic")
  void floating_somehow_needs_a_share_of_the_load(Reference r) {
    double mass = Cfr183Flotation.basicLoad(r.in("persons") * LB, r.in("load") * LB);
    assertThat(mass / LB).isCloseTo(r.wanted("lb"), within(r.near("lb")));
  }

  // A page adds wood as if it sank; it floats, and its weight under water is negative.
  @Test
  void wood_takes_off_what_is_needed() {
    assertThat(Cfr183Flotation.submerged(200, 0.55)).isNegative();
  }

  // Box 3 x 1.2 x 0.5, hull 60 kg of 1600 kg/m3 (K 0.375: 22.5 kg), manual: W 0.3 x 1740 = 522,
  // P 469.8 kg = 1035.7 lb: 0.5 x 249.476 + 0.125 x 220.324 + 0.25 x 52.2 = 165.3285; in all
  // 187.8285 kg over 0.99955 kg/l.
  @Test
  void a_rowed_box_boat_needs_what_paper_says_and_its_air_counts() {
    FormulaResult level = Cfr183Flotation.level(rated(box()), Parameters.NONE).get(0);
    assertThat(level.value() * 1000)
        .isCloseTo(187.8285 / (62.4 * LB / CUBIC_FOOT / 1000), within(1e-3));
    assertThat(level.has().getAsDouble()).isGreaterThan(0.1);
  }

  @Test
  void a_motor_of_two_horsepower_adds_twenty_five_pounds() {
    double rowed = Cfr183Flotation.level(rated(box()), Parameters.NONE).get(0).value();
    BoxBoat small = box().driven(new Propulsion.Outboard(1000));
    double motor = Cfr183Flotation.level(rated(small), Parameters.NONE).get(0).value();
    // P falls by 25 lb as well: an eighth of it less, and a quarter of it more in other load.
    double people = 25 * LB * (-0.125 + 0.25);
    assertThat(motor - rowed)
        .isCloseTo(Cfr183Flotation.volume(25 * LB + people, 62.4), within(1e-9));
  }

  @Test
  void over_two_horsepower_air_built_into_the_hull_does_not_count_and_foam_does() {
    BoxBoat strong = box().driven(new Propulsion.Outboard(3000)).place("seat", 1.5, 0.2, 0.3, 2);
    assertThat(Cfr183Flotation.level(rated(strong), Parameters.NONE).get(0).has()).hasValue(0);
    strong.chamber(
        new Chamber(
            "block",
            new Box(new Span(2.5, 2.9), Span.ALL, Span.ALL),
            new Filling.Foam(true, true),
            java.util.Optional.empty(),
            false));
    assertThat(Cfr183Flotation.level(rated(strong), Parameters.NONE).get(0).has().getAsDouble())
        .isGreaterThan(0.1);
  }

  @Test
  void basic_flotation_leaves_the_two_largest_air_chambers_out() {
    FormulaResult none = Cfr183Flotation.basic(rated(box()), Parameters.NONE).get(0);
    assertThat(none.has()).hasValue(0);
    BoxBoat three = box().proven("b", new Span(1, 1.2)).proven("smallest", new Span(1.5, 1.6));
    double smallest =
        three.model().spaces().stream()
            .filter(s -> s.name().equals("smallest"))
            .mapToDouble(s -> s.solid().volume())
            .sum();
    assertThat(Cfr183Flotation.basic(rated(three), Parameters.NONE).get(0).has().getAsDouble())
        .isCloseTo(smallest, within(1e-9));
  }

  private static BoxBoat box() {
    return BoxBoat.of(3, 1.2, 0.5).hull(60, 0.2).shell(1600, 0.006).proven("a", new Span(0, 0.4));
  }

  private static RatedBoat rated(BoxBoat boat) {
    return RuleBook.rated(boat.model(), RuleSetFile.cautiousDefault(), List.of());
  }
}
