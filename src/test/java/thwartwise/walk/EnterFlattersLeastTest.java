package thwartwise.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.files.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Recommendation;

/**
 * Pressing Enter alone never buys a person. Every question of the walk is here by its kind: where
 * Enter is refused, where it is the poorest answer, and the few where it is not an answer that was
 * measured. A new question that takes Enter fails until it is put in its place.
 */
class EnterFlattersLeastTest {
  private static final Map<Boat, Recommendation> KNOWN = new ConcurrentHashMap<>();

  /** Keys where Enter takes something, with why that flatters least. */
  private static final Map<String, String> TAKEN =
      Map.ofEntries(
          Map.entry("way", "which walk it is, no measurement"),
          Map.entry("measuredBy", "a name, no measurement"),
          Map.entry("finish", "the end of the walk; everything is said by then"),
          Map.entry("hull\\.stations", "how closely is measured; no size of the boat"),
          Map.entry("hull\\.points", "how closely is measured; no size of the boat"),
          Map.entry("hull\\.station\\.\\d+\\.name", "a name, no measurement"),
          Map.entry("hull\\.station\\.\\d+\\.upright", "never at an end: one line is taped"),
          Map.entry("hull\\.weighed", "which way it was weighed; each is measured"),
          Map.entry("hull\\.thickness", "twice the usual: tried below"),
          Map.entry("hull\\.decked\\.\\d+\\.any", "no deck more: tried below"),
          Map.entry("opening\\.\\d+\\.closedBy", "nothing closes it: tried below"),
          Map.entry("chamber\\.\\d+\\.any", "no chamber more: tried below"),
          Map.entry("chamber\\.\\d+\\.mirrored", "no twin: tried below"),
          Map.entry(
              "chamber\\.\\d+\\.litres",
              "drawn only; what is poured can be less and cannot be known before"),
          Map.entry("chamber\\.\\d+\\.(same|together|twin.*)", "what is known of twins"),
          Map.entry("place\\.\\d+\\.any", "no place more: tried below"),
          Map.entry("kit\\.\\d+\\.mass", "a quarter more than usual: tried below"),
          Map.entry("kit\\.\\d+\\.litres", "no lift: tried below"),
          Map.entry("whenSwamped", "they sit in it, which asks more of it: tried below"),
          Map.entry("bailer", "none aboard: tried below"),
          Map.entry("person\\.\\d+\\.y", "only as loaded; the recommendation asks nobody"),
          Map.entry("hull\\.doubt\\..*", "goes on, and its reason is asked for at the end"),
          Map.entry("kept\\..*", "not kept, so nothing is recommended"),
          Map.entry("short\\.tested", "no chamber counts: tried below"),
          Map.entry("short\\.mass", "a heavy guess: tried below"));

  static Stream<Sheet> sheets() {
    return Stream.of(Sheet.small(), Sheet.full(true), Sheet.full(false), Sheet.borrowed(true));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void enter_is_refused_or_known_to_flatter_least(Sheet sheet) {
    for (List<Answer> sofar : sheet.stops()) {
      if (Sheet.WALK.next(sofar) instanceof Step.Ask ask && ask.question().skipped().isPresent()) {
        String key = ask.question().key();
        assertThat(TAKEN.keySet()).as(key).anyMatch(key::matches);
      }
    }
  }

  private static Sheet kit(String mass) {
    return Sheet.small()
        .with("kit.1.any", "yes")
        .with("kit.1.name", "battery")
        .with("kit.1.mass", mass)
        .with("kit.1.x", "0.6")
        .with("kit.1.z", "0.1")
        .with("kit.1.fastened", "yes");
  }

  /** Two foam blocks, so that somebody is held up when it is swamped. */
  private static Sheet buoyant() {
    return Sheet.small()
        .with("chamber.1.any", "yes")
        .with("chamber.1.name", "bow foam")
        .with("chamber.1.x.from", "1.8")
        .with("chamber.1.filling", "foam")
        .with("chamber.1.closed", "yes")
        .with("chamber.1.fastened", "yes")
        .with("chamber.2.any", "yes")
        .with("chamber.2.name", "stern foam")
        .with("chamber.2.x.to", "0.5")
        .with("chamber.2.filling", "foam")
        .with("chamber.2.closed", "yes")
        .with("chamber.2.fastened", "yes");
  }

  private static Sheet drain(Sheet sheet) {
    return sheet
        .with("opening.1.any", "yes")
        .with("opening.1.name", "drain")
        .with("opening.1.x", "0")
        .with("opening.1.y", "0")
        .with("opening.1.z", "0.30")
        .with("opening.1.width", "0.03")
        .with("opening.1.edge", "across");
  }

  /** Sheet, question, measured answers. */
  static Stream<Arguments> measured() {
    Sheet buoyant = buoyant();
    return Stream.of(
        Arguments.of(buoyant, "hull.thickness", List.of("5 mm", "6 mm", "9 mm", "12 mm")),
        Arguments.of(drain(buoyant), "opening.1.closedBy", List.of("bung")),
        Arguments.of(buoyant, "bailer", List.of("5")),
        Arguments.of(buoyant, "whenSwamped", List.of("sit in it", "hold on to it")),
        Arguments.of(
            buoyant
                .with("chamber.2.x.to", "0.5")
                .with("chamber.2.y.from", "0.05")
                .with("chamber.2.y.to", "hull"),
            "chamber.2.mirrored",
            List.of("yes")),
        Arguments.of(
            buoyant
                .with("kit.1.any", "yes")
                .with("kit.1.name", "battery")
                .with("kit.1.x", "0.6")
                .with("kit.1.z", "0.1")
                .with("kit.1.fastened", "yes"),
            "kit.1.mass",
            List.of("4", "12", "18")),
        Arguments.of(kit("12"), "kit.1.litres", List.of("2", "6")),
        Arguments.of(Sheet.borrowed(true), "short.mass", List.of("40", "60", "80")));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("measured")
  void no_measured_answer_gives_less_than_enter(Sheet sheet, String key, List<String> answers) {
    Recommendation enter = of(sheet.with(key, ""));
    for (String answer : answers) {
      Recommendation told = of(sheet.with(key, answer));
      assertThat(told.people()).as(answer).isGreaterThanOrEqualTo(enter.people());
      assertThat(told.crew()).as(answer).isGreaterThanOrEqualTo(enter.crew());
      assertThat(told.extra()).as(answer).isGreaterThanOrEqualTo(enter.extra());
      assertThat(told.holdsUpWhenSwamped())
          .as(answer)
          .isGreaterThanOrEqualTo(enter.holdsUpWhenSwamped());
    }
  }

  private static Recommendation of(Sheet sheet) {
    return KNOWN.computeIfAbsent(
        sheet.boat(),
        boat -> Inspection.of(boat, RuleSetFile.cautiousDefault(), Sheet.TODAY).recommendation());
  }
}
