package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Person;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Waters;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Finding;
import thwartwise.checks.FindingText;
import thwartwise.checks.Measure;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.crew.Recommendation;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.report.ReportJson;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.remedy.Change;
import thwartwise.remedy.Changes;
import thwartwise.remedy.Changes.Prohibition;
import thwartwise.remedy.Deed;
import thwartwise.report.DeedWords;
import thwartwise.report.ProhibitionWords;
import thwartwise.rules.RuleBook;

/**
 * Advice on the boat that comes with the program, without its other seats and with both people of
 * it on the stern bench, which is too much for it, against inspecting the changed boat anew.
 */
class AdviceTest {
  private static final RuleBook BOOK = RuleSetFile.bundledRuleBook();
  private static final String BENCH = "stern bench";
  private static final Boat DEMO = bothAft(BoatFile.parse(json(), "the demo boat"));
  private static final Report REPORT = Inspection.of(DEMO, BOOK, BoxBoat.TODAY);
  private static final List<AdvicePiece> PIECES = REPORT.advice().pieces();
  private static final Map<AdvicePiece, Report> AFTER = after();

  private static Boat bothAft(Boat boat) {
    return boat.withPlaces(boat.places().stream().filter(p -> p.name().equals(BENCH)).toList())
        .withAboard(
            List.of(new Person("helm", 78, BENCH, -0.2), new Person("passenger", 64, BENCH, 0.2)));
  }

  private static String json() {
    try (InputStream in = AdviceTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The changed boats, inspected from the beginning as if somebody had measured them. */
  private static Map<AdvicePiece, Report> after() {
    BoatModel model = BoatModel.of(DEMO, BoxBoat.TODAY);
    Map<AdvicePiece, Report> reports = new LinkedHashMap<>();
    for (AdvicePiece piece : PIECES) {
      changes(model)
          .filter(change -> change.deed().equals(piece.deed()))
          .findFirst()
          .map(change -> Inspection.withoutAdvice(change.boat(), BOOK, BoxBoat.TODAY))
          .ifPresent(report -> reports.put(piece, report));
    }
    return reports;
  }

  private static Stream<Change> changes(BoatModel model) {
    return Stream.concat(
        Changes.toTheBoat(model, BoxBoat.TODAY).stream(), Changes.toToday(DEMO).stream());
  }

  @Test
  void the_demo_boat_gets_at_least_three_pieces_that_buy_something() {
    assertThat(PIECES.stream().filter(AdvicePiece::buys)).hasSizeGreaterThanOrEqualTo(3);
    assertThat(AFTER).hasSizeGreaterThanOrEqualTo(3);
  }

  /** What puts the loading of today right, then what buys most adults, the cheapest first. */
  @Test
  void what_makes_no_limit_worse_comes_first_and_of_it_what_puts_today_right() {
    List<AdvicePiece> harmless = PIECES.stream().filter(p -> !p.worsensALimit()).toList();
    assertThat(PIECES.subList(0, harmless.size())).isEqualTo(harmless);
    List<AdvicePiece> right = harmless.stream().filter(p -> !p.corrects().isEmpty()).toList();
    assertThat(right).isNotEmpty();
    assertThat(harmless.subList(0, right.size())).isEqualTo(right);
    for (int i = right.size() + 1; i < harmless.size(); i++) {
      AdvicePiece better = harmless.get(i - 1);
      AdvicePiece piece = harmless.get(i);
      assertThat(better.people()).isGreaterThanOrEqualTo(piece.people());
      if (better.people() == piece.people() && piece.people() == 0) {
        assertThat(better.crew()).isGreaterThanOrEqualTo(piece.crew());
      }
    }
  }

  @Test
  void what_a_piece_says_it_buys_is_what_inspecting_the_changed_boat_gives() {
    Recommendation today = REPORT.recommendation();
    AFTER.forEach(
        (piece, report) -> {
          Recommendation then = report.recommendation();
          assertThat(then.people() - today.people())
              .as("%s", piece.deed())
              .isEqualTo(piece.people());
          assertThat(then.crew() - today.crew()).as("%s", piece.deed()).isEqualTo(piece.crew());
          assertThat(then.load() - today.load()).as("%s", piece.deed()).isEqualTo(piece.load());
        });
  }

  @Test
  void what_a_piece_puts_right_held_back_before_and_is_met_after() {
    assertThat(PIECES.stream().flatMap(p -> p.corrects().stream())).isNotEmpty();
    AFTER.forEach(
        (piece, report) -> {
          for (CheckQuestion check : piece.corrects()) {
            assertThat(asLoaded(REPORT, check)).anyMatch(o -> o != Outcome.MEETS);
            assertThat(asLoaded(report, check)).as("%s", piece.deed()).containsOnly(Outcome.MEETS);
          }
        });
  }

  private static Stream<Outcome> asLoaded(Report report, CheckQuestion check) {
    return report.findings().stream()
        .filter(f -> f.question().equals(check) && FindingText.condition(f).startsWith("as loaded"))
        .map(Finding::outcome);
  }

  /** Outcomes got worse for the people who are aboard today: each is named in the piece. */
  @Test
  void nothing_is_made_worse_in_silence() {
    AFTER.forEach(
        (piece, report) ->
            assertThat(piece.worse().stream().map(AdviceWorse::question))
                .as("%s", piece.deed())
                .containsAll(worse(report)));
  }

  /** A boat that stands more water takes longer to bail of it, and is no worse for that. */
  private static List<CheckQuestion> worse(Report after) {
    return after.findings().stream()
        .filter(f -> FindingText.condition(f).startsWith("as loaded"))
        .filter(f -> before(f).filter(o -> f.outcome().isWorseThan(o)).isPresent())
        .map(Finding::question)
        .filter(question -> !question.asks(CheckId.LOOSE_WATER, Measure.TIME))
        .distinct()
        .toList();
  }

  private static Optional<Outcome> before(Finding finding) {
    return asLoaded(REPORT, finding.question()).reduce(Outcome::worse);
  }

  @Test
  void an_act_that_only_the_larger_crew_must_not_do_is_named() {
    assertThat(PIECES.stream().flatMap(p -> p.forbiddenAfterwards().stream())).isNotEmpty();
    AFTER.forEach(
        (piece, report) ->
            assertThat(forbidden(report))
                .as("%s", piece.deed())
                .containsAll(piece.forbiddenAfterwards()));
  }

  private static List<Subject> forbidden(Report report) {
    return report.findings().stream()
        .filter(f -> f.role() == Role.FORBIDS_AN_ACT && f.outcome() != Outcome.MEETS)
        .map(f -> f.question().subject())
        .toList();
  }

  @Test
  void a_space_with_a_battery_is_never_to_be_sealed() {
    assertThat(Changes.toTheBoat(BoatModel.of(DEMO, BoxBoat.TODAY), BoxBoat.TODAY))
        .extracting(c -> DeedWords.of(c.deed()).deed())
        .noneMatch(deed -> deed.matches("(Seal|Prove).*battery box.*"));
    assertThat(REPORT.advice().prohibitions())
        .extracting(ProhibitionWords::of)
        .containsExactly(
            "Never seal the battery box: it holds the battery, and gas and heat must get out. Vent"
                + " it high up");
  }

  @Test
  void a_boat_that_is_not_covered_gets_no_advice() {
    assertThat(Inspection.of(underSail(PlainHulls.pram()), BOOK, PlainHulls.TODAY).advice())
        .isEqualTo(Advice.NONE);
  }

  private static Boat underSail(Boat boat) {
    return new Boat(
        boat.name(),
        boat.water(),
        boat.hull(),
        boat.openings(),
        boat.chambers(),
        boat.places(),
        boat.kit(),
        boat.aboard(),
        new Propulsion.Sail(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        boat.measuredBy(),
        List.of());
  }

  @Test
  void no_word_of_a_verdict_that_is_not_ours_to_give_stands_in_the_report() {
    assertThat(ReportJson.write(REPORT).toLowerCase(Locale.ROOT))
        .doesNotContainPattern("\\b(safe|safely|approved|certified|pass|passed|passes)\\b")
        .contains("not a capacity plate and not a builder's plate");
  }

  @Test
  void advice_is_written_and_read_back_the_same() {
    Advice read = ReportJson.parse(ReportJson.write(REPORT), "report.json").advice();
    assertThat(read)
        .usingRecursiveComparison()
        .withEqualsForType((a, b) -> DeedWords.of(a).equals(DeedWords.of(b)), Deed.class)
        .withEqualsForType(
            (a, b) -> ProhibitionWords.of(a).equals(ProhibitionWords.of(b)), Prohibition.class)
        .withEqualsForType(AdviceTest::nearly, OptionalDouble.class)
        .withEqualsForType((a, b) -> Math.abs(a - b) < 1e-9, Double.class)
        .isEqualTo(REPORT.advice());
  }

  private static boolean nearly(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() == b.isPresent() && Math.abs(a.orElse(0) - b.orElse(0)) < 1e-9;
  }
}
