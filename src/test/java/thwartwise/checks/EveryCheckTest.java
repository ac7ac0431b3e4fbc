package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.fitted;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;

/** What holds for every check of the cautious set. */
class EveryCheckTest {

  static Stream<Check> checks() {
    return CautiousChecks.of(RULES).stream();
  }

  private static final List<Check> OF_CANOES =
      List.of(
          new StiffOffTheMiddle(RULES, true), new SittingInItSwamped(RULES), new SittingUp(RULES));

  private static List<Finding> all(LoadedBoat trial) {
    LoadedBoat remembering = trial.remembering(new BalanceCache());
    return checks().flatMap(c -> OnPaper.findings(c, remembering).stream()).toList();
  }

  private static void readable(List<Finding> found) {
    assertThat(found)
        .allSatisfy(
            f -> {
              assertThat(f.limit()).as(FindingText.check(f)).isFinite();
              f.value().ifPresent(v -> assertThat(v).as(FindingText.check(f)).isFinite());
              assertThat(f.value().isPresent() || !FindingText.note(f).isBlank())
                  .as(FindingText.check(f))
                  .isTrue();
              oneLine(FindingText.check(f), FindingText.check(f));
              oneLine(FindingText.check(f), f.source());
              oneLine(FindingText.check(f), FindingText.condition(f));
              assertThat(FindingText.check(f)).isNotBlank();
              assertThat(f.source()).isNotBlank();
              assertThat(FindingText.note(f))
                  .as(FindingText.check(f))
                  .doesNotContain("\n")
                  .doesNotContain("NaN");
              assertThat(FindingText.note(f)).as(FindingText.check(f)).doesNotContain("Infinity");
            });
  }

  private static void oneLine(String check, String words) {
    assertThat(words).as(check).doesNotContain("\n").doesNotContain("NaN");
  }

  /** Everything a check may ask about, aft and lopsided; on the other side when mirrored. */
  private static LoadedBoat fullyFitted(double side, double mass) {
    Function<Double, Span> y = out -> side > 0 ? new Span(out, 0.6) : new Span(-0.6, -out);
    BoxBoat boat =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(mass, Vector3.of(1.4, 0, 0.2))
            .proven("stern tank", new Span(0, 0.6))
            .proven("side tank", new Span(1, 2), y.apply(0.4), new Span(0, 0.4))
            .claimed("bow tank", new Span(2.5, 3))
            .driven(new Propulsion.Outboard(400))
            .opening(
                new Opening(
                    "drain",
                    Vector3.of(0, side * 0.2, 0.05),
                    0,
                    true,
                    Optional.of("bung"),
                    Optional.empty(),
                    Optional.of(0.02)))
            .opening(
                new Opening(
                    "hatch",
                    Vector3.of(1.5, side * 0.5, 0.4),
                    0.2,
                    false,
                    Optional.of("lid"),
                    Optional.of("side tank"),
                    Optional.empty()))
            .opening(new Opening("notch", Vector3.of(0, side * 0.1, 0.42), 0.2, true))
            .weight("motor", 12, Vector3.of(-0.1, 0, 0.4))
            .kit(
                new Kit(
                    "anchor",
                    8,
                    Vector3.of(2.2, side * 0.3, 0.1),
                    Optional.empty(),
                    false,
                    Optional.empty()));
    List<Cleat> cleats = List.of(new Cleat("quarter cleat", Vector3.of(0.1, side * 0.5, 0.48)));
    Body aft = seated("aft", 70, 0.8, 0.35).at(side * 0.05);
    Body middle = seated("middle", 60, 1.6, 0.3).at(-side * 0.1);
    Outfit outfit = Outfit.NOT_STATED.with(new SeamLeak("keel", 0.002, 1800));
    return trial(fitted(boat, cleats, Optional.of(3.0)).withOutfit(outfit), aft, middle);
  }

  private static Body seated(String name, double mass, double x, double reach) {
    return Body.seated(name, mass, new Place(name + " thwart", x, 0.25, reach, 1), 0, 0.02);
  }

  @Test
  void a_boat_with_everything_gives_each_check_something_to_say() {
    LoadedBoat trial = fullyFitted(1, 150);
    for (Check check : CautiousChecks.of(RULES)) {
      if (!OF_CANOES.contains(check)) {
        assertThat(check.readings(trial)).as(check.getClass().getName()).isNotEmpty();
      }
    }
    readable(all(trial));
  }

  // Bisections stop a tenth of a litre or ten newtons short or over.
  private static double near(Unit unit) {
    return switch (unit) {
      case NEWTON -> 10.1;
      case LITRE -> 2e-4;
      case MILLIMETRE -> 1e-4;
      case MINUTE -> 2;
      case NEWTON_METRE, KILOGRAM -> 1e-3;
      default -> 1e-5;
    };
  }

  @ParameterizedTest
  @MethodSource("checks")
  void a_mirrored_boat_with_mirrored_people_reads_the_same(Check check) {
    List<CheckReading> port = check.readings(fullyFitted(1, 150));
    List<CheckReading> starboard = check.readings(fullyFitted(-1, 150));
    assertThat(starboard).extracting(FindingText::check).isEqualTo(mapped(port));
    for (int i = 0; i < port.size(); i++) {
      CheckReading p = port.get(i);
      CheckReading s = starboard.get(i);
      assertThat(s.value().isPresent()).as(FindingText.check(p)).isEqualTo(p.value().isPresent());
      assertThat(s.limit()).as(FindingText.check(p)).isCloseTo(p.limit(), within(1e-5));
      if (p.value().isPresent()) {
        assertThat(s.value().getAsDouble())
            .as(FindingText.check(p))
            .isCloseTo(p.value().getAsDouble(), within(near(p.margin().unit())));
      }
    }
  }

  private static List<String> mapped(List<CheckReading> readings) {
    return readings.stream().map(FindingText::check).toList();
  }

  // From light to so heavy that it floats only as measured, and to one that sinks at once.
  @ParameterizedTest
  @ValueSource(doubles = {20, 150, 600, 1000, 1400, 1560, 1600, 1635, 1645, 1700, 1900})
  void a_boat_of_any_mass_is_answered_in_plain_lines(double mass) {
    readable(all(fullyFitted(1, mass)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {20, 300, 600, 700, 780, 800, 820, 835, 850, 1700, 1715, 1790, 1810})
  void a_boat_of_any_mass_on_two_tanks_is_answered_in_plain_lines(double mass) {
    readable(all(trial(OnPaper.tanks(mass))));
    readable(all(trial(OnPaper.tanks(mass), person(95, 0.4))));
  }

  // Nobody aboard, no motor, no opening, no chamber.
  @Test
  void a_bare_boat_gives_only_what_it_has() {
    List<Finding> found = all(trial(OnPaper.boat(300)));
    readable(found);
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "freeboard at rest",
            "swamped, lift to spare",
            "swamped, heel",
            "swamped, higher end above the water",
            "swamped, lower end under the water",
            "climbing in over the side",
            "climbing in over the side, freeboard left",
            "climbing in over the stern",
            "climbing in over the stern, freeboard left",
            "anchoring by the stern",
            "anchoring by the stern, freeboard left",
            "anchoring by the bow",
            "anchoring by the bow, freeboard left",
            "greatest pull at the middle of the stern",
            "greatest pull at the middle of the stern, out over the side",
            "greatest pull at the stem",
            "greatest pull at the stem, out over the side",
            "wind on the beam",
            "wind on the beam, freeboard left",
            "loose water, first edge under",
            "loose water, no longer comes back",
            "loose water, bailing it out before the first edge is under",
            "rain at the mooring",
            "swamped, lowest edge above the water for bailing",
            "swamped, bailing it out",
            "swamped and turned over, turning it back",
            "swamped and turned over, turning it back with a line",
            "swamped, getting back in over the side",
            "swamped, getting back in over the stern",
            "swamped, getting back in over the bow");
  }

  @Test
  void what_is_done_to_a_trial_adds_to_what_was_done_before() {
    LoadedBoat trial = trial(OnPaper.boat(300), person(95, 0.4));
    LoadedBoat twice =
        trial
            .after(
                Disturbance.weighed(
                    new LoadCaseStep.Stated("a bag"),
                    trial.people(),
                    List.of(new thwartwise.boat.Loading.Weight(10, Vector3.of(1, 0, 0.1)))))
            .after(
                Disturbance.weighed(
                    new LoadCaseStep.Stated("another"),
                    List.of(),
                    List.of(new thwartwise.boat.Loading.Weight(5, Vector3.of(1, 0, 0.1)))));
    assertThat(FindingText.condition(twice)).isEqualTo("on paper; a bag; another");
    assertThat(twice.loading().mass()).isCloseTo(315, within(1e-9));
    assertThat(twice.people()).isEmpty();
    assertThat(trial.loading().mass()).isCloseTo(395, within(1e-9));
    LoadedBoat unnamed = LoadedBoat.of(trial.model(), List.of());
    assertThat(FindingText.condition(unnamed.empty(LoadCaseStep.Act.OPEN))).isEqualTo("open");
    assertThat(
            FindingText.condition(twice.called(new LoadCaseStep.Stated("told otherwise"), trial)))
        .isEqualTo("on paper; told otherwise");
    // It takes over what was done to the other one, and keeps its own loading.
    assertThat(FindingText.condition(trial.called(new LoadCaseStep.Stated("told"), unnamed)))
        .isEqualTo("on paper; told");
  }
}
