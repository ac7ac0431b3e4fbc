package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Step;

/** What stands on the screen fits it, whatever the names and the units. */
class ScreenTest {
  private static final int COLUMNS = 78;

  private static final List<Question> QUESTIONS = questions();

  private static List<Question> questions() {
    List<Question> questions = new ArrayList<>();
    for (Sheet sheet :
        List.of(
            Sheet.small(), Sheet.full(true), longNames(), Sheet.everyKind(true), Sheet.saidHow())) {
      sheet.stops().stream()
          .map(Sheet::next)
          .filter(Step.Ask.class::isInstance)
          .forEach(step -> questions.add(((Step.Ask) step).question()));
    }
    return questions;
  }

  private static Sheet longNames() {
    Sheet sheet = Sheet.full(false);
    for (String key : List.copyOf(sheet.typed().keySet())) {
      if (key.endsWith(".name")) {
        sheet = sheet.with(key, longName(sheet.typed().get(key)));
      } else if (key.endsWith(".in") || key.endsWith(".place")) {
        sheet = sheet.with(key, longName(sheet.typed().get(key)));
      }
    }
    return sheet;
  }

  private static String longName(String name) {
    return (name + " with a very long name indeed").substring(0, 30).strip();
  }

  @Test
  void every_prompt_is_one_line_that_fits() {
    assertThat(QUESTIONS)
        .extracting(Question::prompt)
        .filteredOn(prompt -> !(prompt.length() <= COLUMNS && prompt.endsWith(":")))
        .isEmpty();
  }

  @Test
  void every_line_of_help_fits() {
    assertThat(
            QUESTIONS.stream()
                .flatMap(question -> question.help().stream())
                .filter(line -> line.length() > COLUMNS || line.isBlank()))
        .isEmpty();
  }

  @Test
  void every_question_says_how_and_why() {
    assertThat(QUESTIONS)
        .filteredOn(question -> !question.subject().startsWith("Another "))
        .allMatch(question -> !question.how().isEmpty() && !question.why().isEmpty());
  }

  @Test
  void the_short_walk_fits_too() {
    for (Sheet sheet :
        List.of(Sheet.borrowed(true), Sheet.borrowed(false), Sheet.borrowedAndTried())) {
      for (List<Answer> stop : sheet.stops()) {
        if (Sheet.next(stop) instanceof Step.Ask ask) {
          assertThat(ask.question().prompt()).hasSizeLessThanOrEqualTo(COLUMNS).endsWith(":");
          assertThat(ask.question().help()).allMatch(line -> line.length() <= COLUMNS);
          assertThat(ask.question().sketch()).allMatch(line -> line.length() <= COLUMNS);
        }
      }
    }
  }

  @Test
  void no_two_questions_of_a_walk_have_the_same_key() {
    List<String> keys = Sheet.full(true).toTheEnd().stream().map(Answer::question).toList();
    Set<String> different = new HashSet<>(keys);
    assertThat(different).hasSameSizeAs(keys);
  }

  @Test
  void a_prompt_names_the_unit_and_what_enter_means() {
    assertThat(Sheet.open(Sheet.small().upTo("hull.thickness")).prompt())
        .isEqualTo("Thickness of the shell (m) [Enter: 12 mm, thick for it, not measured]:");
    assertThat(Sheet.open(Sheet.full(false).upTo("hull.station.2.point.2.y")).prompt())
        .isEqualTo("Station 2 \"middle\", chine, half-breadth (inches):");
    assertThat(Sheet.open(Sheet.full(false).upTo("kit.1.litres")).prompt())
        .isEqualTo("Kit \"battery\", its own volume (litres) [Enter: gives no lift]:");
    assertThat(Sheet.open(Sheet.full(false).upTo("opening.2.closedBy")).prompt())
        .isEqualTo("Opening \"drain\", closed under way by (or no) [Enter: nothing]:");
    assertThat(Sheet.open(Sheet.full(false).upTo("bailer")).prompt())
        .isEqualTo("Bailer or bucket aboard, it holds (litres) [Enter: none aboard]:");
  }
}
