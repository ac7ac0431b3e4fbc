package thwartwise.files.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Measure;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.report.CheckWords;

/**
 * Records kept the question about a measurement as a sentence before it had a name: they are read
 * as the question of today, so that a record of each kind can be compared.
 */
class OldMeasurementQuestionsTest {

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '\'',
      value = {
        "'how hard a panel is twisted', PANEL_TWIST, ''",
        "'station \"transom\" against its neighbours', STATION_FAIRNESS, 'transom'",
        "'seat \"side, port\", height', SEAT_HEIGHT, 'side, port'",
        "'seat \"aft\", height above the floor', SEAT_ABOVE_FLOOR, 'aft'",
        "'place \"aft\", between it and place \"fore\" along the boat', PLACES_APART, 'aft|fore'",
        "'chamber \"bow\", days from its leak test until today', LEAK_TEST_AGE, 'bow'",
      })
  void a_sentence_of_an_older_record_is_read_as_the_question_of_today(
      String words, Measure measure, String names) {
    ObjectReader holder =
        ObjectReader.free(
            JsonText.parse(
                "{\"check\": \"x\", \"asks\": {\"check\": \"PLAUSIBILITY\", \"measure\":"
                    + " \"AS_MEASURED\", \"things\": [\""
                    + words.replace("\"", "\\\"")
                    + "\"]}}",
                Location.whole("record.json")),
            Location.whole("record.json"));
    assertThat(QuestionCodec.read(holder))
        .isEqualTo(
            new CheckQuestion(
                CheckId.PLAUSIBILITY,
                measure,
                names.isEmpty() ? List.of() : List.of(names.split("\\|"))));
  }

  @Test
  void a_sentence_that_no_version_wrote_stays_as_it_is() {
    CheckQuestion kept = OldQuestions.ofMeasurement("how green it is, 50 %s");
    assertThat(kept.measure()).isEqualTo(Measure.AS_MEASURED);
    assertThat(CheckWords.of(kept)).isEqualTo("how green it is, 50 %s");
  }

  /** Words as {@code report} makes them today are those the older records have. */
  @Test
  void every_measurement_has_words_of_its_own_and_is_known_by_them() {
    List<CheckQuestion> all =
        Stream.of(Measure.values())
            .filter(measure -> measure.compareTo(Measure.AS_MEASURED) > 0)
            .map(OldMeasurementQuestionsTest::question)
            .toList();
    assertThat(all).hasSize(28);
    assertThat(all.stream().map(CheckWords::of)).doesNotHaveDuplicates();
    assertThat(all.stream().map(CheckWords::of).map(OldQuestions::ofMeasurement)).isEqualTo(all);
  }

  private static CheckQuestion question(Measure measure) {
    if (measure == Measure.PLACES_APART) {
      return CheckQuestion.of(CheckId.PLAUSIBILITY, measure, "the one", "the other");
    }
    return measure.compareTo(Measure.LOWEST_POINT) > 0
        ? CheckQuestion.of(CheckId.PLAUSIBILITY, measure, "the one")
        : CheckQuestion.of(CheckId.PLAUSIBILITY, measure);
  }
}
