package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.QuickAnswer;
import thwartwise.rules.RuleBook;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Step;

/**
 * Pressing Enter alone never buys a person. Every question of the walk is here by its kind: where
 * Enter is refused, where it is the poorest answer, and the few where it is not an answer that was
 * measured. A new question that takes Enter fails until it is put in its place.
 */
class EnterFlattersLeastTest {
  private static final RuleBook OWN = RuleBook.of(RuleSetFile.cautiousDefault());

  private record Inspected(Boat boat, LocalDate day) {}

  private static final Map<Inspected, Recommendation> KNOWN = new ConcurrentHashMap<>();

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
          Map.entry("hull\\.looks", "a look at what was measured, no measurement"),
          Map.entry("hull\\.weighed", "which way it was weighed; each is measured"),
          Map.entry("hull\\.centre\\.z", "above the centre of its skin: WalkSlipsAndDefaultsTest"),
          Map.entry("hull\\.thickness", "twice the usual: tried below"),
          Map.entry("hull\\.decked\\.\\d+\\.any", "no deck more: tried below"),
          Map.entry("opening\\.\\d+\\.name", "a name, no measurement"),
          Map.entry("opening\\.\\d+\\.closedBy", "nothing closes it: tried below"),
          Map.entry("chamber\\.\\d+\\.name", "a name, no measurement"),
          Map.entry("chamber\\.\\d+\\.any", "no chamber more: tried below"),
          Map.entry("chamber\\.\\d+\\.mirrored", "no twin: tried below"),
          Map.entry(
              "chamber\\.\\d+\\.litres",
              "drawn only; what is poured can be less and cannot be known before"),
          Map.entry(
              "chamber\\.\\d+\\.test\\.head",
              "a hand of water: in less nobody fills a chamber or pushes it under, and the less"
                  + " stood over a leak, the faster it runs when swamped"),
          Map.entry("chamber\\.\\d+\\.(same|together|twin.*)", "what is known of twins"),
          Map.entry("place\\.\\d+\\.any", "no place more: tried below"),
          Map.entry("kit\\.\\d+\\.mass", "a quarter more than usual: tried below"),
          Map.entry("kit\\.\\d+\\.litres", "no lift: tried below"),
          Map.entry("kit\\.\\d+\\.workedFrom", "the nearest place, and no figure follows from it"),
          Map.entry("whenSwamped", "they sit in it, which asks more of it: tried below"),
          Map.entry("bailer", "none aboard: tried below"),
          Map.entry("outfit\\..*", "nothing entered; what is not entered lifts nobody"),
          Map.entry("electrics\\..*", "nothing said, which range and wiring count as the poorest"),
          Map.entry("trailer", "none: it moves no figure of the boat afloat"),
          Map.entry(
              "measuredHow\\.(?!other).+",
              "not said, so as badly measured as the limits allow for: MethodsInTheWalkTest"),
          Map.entry("measuredHow\\.other\\.\\d+\\.any", "nothing else said"),
          Map.entry("short\\.people", "only as loaded; the recommendation asks nobody"),
          Map.entry("person\\.\\d+\\.y", "only as loaded; the recommendation asks nobody"),
          Map.entry("hull\\.doubt\\..*", "goes on, and its reason is asked for at the end"),
          Map.entry("kept\\..*", "not kept, so nothing is recommended"),
          Map.entry("trial\\.done", "nothing seen, so nothing lifted: tried below"),
          Map.entry("trial\\.(level|heads)", "seen to go badly, so nobody goes: tried below"),
          Map.entry("short\\.material", "unknown, as the heaviest: tried below"),
          Map.entry("short\\.tested", "no chamber counts: tried below"),
          Map.entry("short\\.mass", "a heavy guess: tried below"));

  static Stream<Sheet> sheets() {
    return Stream.of(
        Sheet.small(),
        Sheet.full(true),
        Sheet.full(false),
        Sheet.everyKind(true),
        Sheet.saidHow(),
        Sheet.borrowed(true),
        Sheet.borrowedAndTried());
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void enter_is_refused_or_known_to_flatter_least(Sheet sheet) {
    for (List<Answer> sofar : sheet.stops()) {
      if (Sheet.next(sofar) instanceof Step.Ask ask && ask.question().skipped().isPresent()) {
        String key = ask.question().key();
        assertThat(TAKEN.keySet()).as(key).anyMatch(key::matches);
      }
    }
  }

  /** The walk of changes, once through every kind of change, two years after the leak tests. */
  private static ChangedSheet changes() {
    return ChangedSheet.of(Sheet.full(true).boat())
        .on(Sheet.TODAY.plusYears(2))
        .with("changed.1", "added")
        .with("changed.1.name", "battery 2")
        .with("changed.1.x", "0.5")
        .with("changed.1.y", "0")
        .with("changed.1.z", "0.2")
        .with("changed.1.fastened", "yes")
        .with("changed.1.in", "none")
        .with("changed.2", "moved")
        .with("changed.2.which", "motor")
        .with("changed.2.x", "0.1")
        .with("changed.2.y", "0")
        .with("changed.2.z", "0.4")
        .with("changed.3", "removed")
        .with("changed.3.which", "motor")
        .with("changed.4", "chamber")
        .with("changed.4.which", "midships")
        .with("changed.4.filling", "air")
        .with("changed.4.seal", "claimed")
        .with("changed.5", "cut")
        .with("changed.5.name", "notch")
        .with("changed.5.x", "0")
        .with("changed.5.y", "0")
        .with("changed.5.z", "0.39")
        .with("changed.5.width", "0.1")
        .with("changed.5.edge", "across")
        .with("changed.6", "weight")
        .with("changed.6.mass", "70")
        .with("changed.7", "people")
        .with("changed.8", "swamped")
        .with("changed.9", "how measured");
  }

  /** Keys of the walk of changes where Enter takes something, with why that flatters least. */
  private static final Map<String, String> TAKEN_OF_CHANGES =
      Map.ofEntries(
          Map.entry("way", "which walk it is, no measurement"),
          Map.entry(
              "units", "those the boat was measured in; every answer is repeated with its unit"),
          Map.entry("changed\\.\\d+", "nothing more has changed: the list says so before the end"),
          Map.entry("changed\\.\\d+\\.mass", "a quarter more than usual: tried below"),
          Map.entry("changed\\.\\d+\\.litres", "no lift: tried below"),
          Map.entry(
              "changed\\.\\d+\\.workedFrom", "the nearest place, and no figure follows from it"),
          Map.entry("changed\\.\\d+\\.closedBy", "nothing closes it: tried below"),
          Map.entry("changed\\.\\d+\\.whenSwamped", "they sit in it: tried below"),
          Map.entry(
              "changed\\.\\d+\\.measuredHow\\..*", "as it was said before: MethodsInTheWalkTest"),
          Map.entry("old\\..*", "not tested again, so it counts for nothing: tried below"),
          Map.entry("kept\\..*", "not kept, so nothing is recommended"),
          Map.entry("finish", "the end of the walk; everything is said by then"));

  @Test
  void enter_in_the_walk_of_changes_is_refused_or_known_to_flatter_least() {
    List<Question> asked = changes().questions();
    assertThat(asked)
        .extracting(Question::key)
        .contains("old.fore locker", "changed.8.whenSwamped");
    for (Question question : asked) {
      if (question.skipped().isPresent()) {
        assertThat(TAKEN_OF_CHANGES.keySet()).as(question.key()).anyMatch(question.key()::matches);
      }
    }
  }

  /** Sheet, question, measured answers. */
  static Stream<Arguments> measuredChanges() {
    ChangedSheet buoyant = ChangedSheet.of(buoyant().boat());
    ChangedSheet battery =
        buoyant
            .with("changed.1", "added")
            .with("changed.1.name", "battery")
            .with("changed.1.x", "0.6")
            .with("changed.1.y", "0")
            .with("changed.1.z", "0.1")
            .with("changed.1.fastened", "yes")
            .with("changed.1.in", "none");
    ChangedSheet cut =
        buoyant
            .with("changed.1", "cut")
            .with("changed.1.name", "drain")
            .with("changed.1.x", "0")
            .with("changed.1.y", "0")
            .with("changed.1.z", "0.30")
            .with("changed.1.width", "0.03")
            .with("changed.1.edge", "across");
    String old = "old.chamber at the bow";
    ChangedSheet stale =
        ChangedSheet.of(Sheet.borrowed(true).boat())
            .on(Sheet.TODAY.plusYears(2))
            .with(old + ".filling", "air")
            .with(old + ".seal", "proven")
            .with(old + ".test.date", "2028-05-01")
            .with(old + ".test.how", "held under")
            .with(old + ".test.minutes", "20")
            .with(old + ".test.litresIn", "0")
            .with(old + ".test.by", "me");
    return Stream.of(
        Arguments.of(battery, "changed.1.mass", List.of("12")),
        Arguments.of(battery.with("changed.1.mass", "12"), "changed.1.litres", List.of("6")),
        Arguments.of(cut, "changed.1.closedBy", List.of("bung")),
        Arguments.of(
            buoyant.with("changed.1", "swamped"),
            "changed.1.whenSwamped",
            List.of("hold on to it")),
        Arguments.of(stale, old, List.of("yes")));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("measuredChanges")
  void no_measured_change_gives_less_than_enter(
      ChangedSheet sheet, String key, List<String> answers) {
    LocalDate day = sheet.today();
    Recommendation enter = of(sheet.with(key, "").boat(), day);
    for (String answer : answers) {
      assertNotLess(answer, of(sheet.with(key, answer).boat(), day), enter);
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
        Arguments.of(
            buoyant
                .with("hull.decked.1.any", "yes")
                .with("hull.decked.1.from", "2.1")
                .with("hull.decked.1.to", "2.4")
                .with("hull.decked.2.from", "1.9")
                .with("hull.decked.2.to", "2.1"),
            "hull.decked.2.any",
            List.of("yes")),
        Arguments.of(buoyant, "chamber.2.any", List.of("yes")),
        Arguments.of(
            buoyant
                .with("place.2.name", "fore seat")
                .with("place.2.lies", "across")
                .with("place.2.x", "1.6")
                .with("place.2.z", "0.25")
                .with("place.2.halfWidth", "0.3")
                .with("place.2.people", "1"),
            "place.2.any",
            List.of("yes")),
        Arguments.of(Sheet.borrowed(true), "short.tested", List.of("paper")),
        Arguments.of(
            Sheet.borrowed(true),
            "short.material",
            List.of("plywood", "softwood", "GRP", "aluminium")),
        Arguments.of(tried(), "short.tested", List.of("trial")),
        Arguments.of(tried(), "trial.level", List.of("yes")),
        Arguments.of(tried(), "trial.heads", List.of("yes")),
        Arguments.of(Sheet.borrowed(true), "short.mass", List.of("40", "60", "80")));
  }

  /** Two people were seen in it full of water that day, and nothing else was shown. */
  private static Sheet tried() {
    return Sheet.borrowedAndTried();
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("measured")
  void no_measured_answer_gives_less_than_enter(Sheet sheet, String key, List<String> answers) {
    Recommendation enter = of(sheet.with(key, ""));
    for (String answer : answers) {
      assertNotLess(answer, of(sheet.with(key, answer)), enter);
    }
  }

  private static void assertNotLess(String answer, Recommendation told, Recommendation enter) {
    assertThat(told.people()).as(answer).isGreaterThanOrEqualTo(enter.people());
    assertThat(told.crew()).as(answer).isGreaterThanOrEqualTo(enter.crew());
    assertThat(told.extra()).as(answer).isGreaterThanOrEqualTo(enter.extra());
    assertThat(told.holdsUpWhenSwamped())
        .as(answer)
        .isGreaterThanOrEqualTo(enter.holdsUpWhenSwamped());
  }

  private static Recommendation of(Sheet sheet) {
    return of(sheet.boat(), Sheet.TODAY);
  }

  private static Recommendation of(Boat boat, LocalDate day) {
    return KNOWN.computeIfAbsent(
        new Inspected(boat, day), i -> QuickAnswer.recommended(i.boat(), OWN, i.day()));
  }
}
