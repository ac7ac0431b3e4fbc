package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.TestThread;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.Report;
import thwartwise.record.InspectionRecord;
import thwartwise.report.CardPage;
import thwartwise.report.HtmlPage;
import thwartwise.report.Screen;
import thwartwise.report.TextPage;
import thwartwise.today.TodayPage;
import thwartwise.today.TodayVerdict;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Step;

/**
 * Words that an owner of a small boat stumbles over stay out of every paper of three boats, a
 * borrowed one among them, and out of every question.
 */
class PlainWordsTest {
  /** What was once printed, and its kind. */
  private static final Pattern CROOKED =
      Pattern.compile(
          String.join(
              "|",
              "leave to go",
              "that was shown",
              "needs at least -?\\d",
              "must not exceed",
              "displaces",
              "turn(s|ing) over to",
              "what fewer could",
              "only claimed to be tight",
              "prove to be",
              "[Ii]t comes to (?!rest|lie)",
              "water's hold",
              "in decimetres",
              "Hard to find",
              "nor in the",
              "is it plumb",
              "taken for granted of",
              "has its price",
              "lacking",
              "already falls short",
              "would break",
              "no (poise|balance) was",
              "sufficien",
              "in the event",
              "shall be"));

  static Stream<InspectionRecord> records() {
    return Stream.of(
        record(demo(), PlainHulls.TODAY, InspectedBoats.underShipped(demo())),
        record(
            PlainHulls.canoe(), PlainHulls.TODAY, InspectedBoats.underShipped(PlainHulls.canoe())),
        inspected(Sheet.borrowed(true).with("short.tested", "nothing").boat()),
        inspected(Sheet.borrowedAndTried().boat()));
  }

  private static Boat demo() {
    try (InputStream in = PlainWordsTest.class.getResourceAsStream("/thwartwise/demo-boat.json")) {
      return BoatFile.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), "the demo boat");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static InspectionRecord inspected(Boat boat) {
    return record(
        boat,
        Sheet.TODAY,
        TestThread.of(
            () -> Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), Sheet.TODAY)));
  }

  private static InspectionRecord record(Boat boat, LocalDate day, Report report) {
    return new InspectionRecord(
        day.atTime(9, 0).atOffset(ZoneOffset.UTC), "the leader", "0.1.0", boat, report);
  }

  private static List<String> crooked(String text) {
    return CROOKED
        .matcher(text.replaceAll("<[^>]*>", " ").replaceAll("[\\s\u00a0]+", " "))
        .results()
        .map(found -> found.group())
        .distinct()
        .toList();
  }

  /** The page of HTML has every sheet whole. */
  @ParameterizedTest
  @MethodSource("records")
  void no_paper_of_a_boat_has_them(InspectionRecord record) {
    String papers =
        String.join(
            " ",
            String.join(" ", Screen.of(record, Screen.ROWS)),
            TextPage.of(record),
            HtmlPage.of(record, "7"),
            CardPage.text(record, "7"));
    assertThat(papers).hasSizeGreaterThan(10_000);
    assertThat(crooked(papers)).isEmpty();
    assertThat(crooked(today(record))).isEmpty();
  }

  private static String today(InspectionRecord record) {
    TodayVerdict today = TodayVerdict.of(record);
    return TodayPage.opening(record)
        + today.held()
        + today.points().stream()
            .map(point -> point.question() + " " + point.why() + " " + point.todo())
            .collect(Collectors.joining(" "));
  }

  @Test
  void no_question_has_them() {
    List<String> told = new ArrayList<>();
    for (Sheet sheet :
        List.of(Sheet.full(true), Sheet.small(), Sheet.borrowed(true), Sheet.borrowedAndTried())) {
      sheet.stops().stream()
          .flatMap(answers -> Stream.of(Sheet.next(answers)))
          .filter(Step.Ask.class::isInstance)
          .map(step -> ((Step.Ask) step).question())
          .forEach(question -> told.add(words(question)));
    }
    assertThat(told).hasSizeGreaterThan(100);
    assertThat(told.stream().flatMap(words -> crooked(words).stream()).distinct()).isEmpty();
  }

  private static String words(Question question) {
    return question.prompt() + " " + String.join(" ", question.help());
  }
}
