package thwartwise.files.report;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.inspection.Report;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.report.CheckWords;
import thwartwise.report.LoadCaseWords;
import tools.jackson.databind.JsonNode;

/** A report that an earlier program wrote, with names of checks and load cases in words alone. */
class OldReportsTest {
  private static final JsonNode KEPT = kept();
  private static final Report READ = ReportCodec.read(KEPT, Location.whole("record.json"));

  private static JsonNode kept() {
    try (var in =
        OldReportsTest.class.getResourceAsStream("/thwartwise/files/record-with-report-1.json")) {
      String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return JsonText.parse(json, Location.whole("record.json")).path("report");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> texts(String list, String key) {
    return StreamSupport.stream(KEPT.at(list).spliterator(), false)
        .map(node -> node.path(key).stringValue())
        .toList();
  }

  @Test
  void every_check_of_it_is_known_by_its_identity() {
    assertThat(KEPT.path("format").stringValue()).isEqualTo("thwartwise/report/1");
    assertThat(READ.findings()).hasSizeGreaterThan(60);
    assertThat(READ.findings())
        .extracting(f -> f.question().check())
        .doesNotContain(CheckId.NO_LONGER_ASKED)
        .contains(CheckId.ONE_CHAMBER_LOST, CheckId.PLAUSIBILITY, CheckId.DRAIN_OPEN);
    assertThat(READ.recommendation().margins())
        .extracting(m -> m.question().check())
        .isNotEmpty()
        .doesNotContain(CheckId.NO_LONGER_ASKED);
    assertThat(READ.recommendation().governedBy()).containsInstanceOf(LimitingFactor.ByCheck.class);
  }

  @Test
  void its_words_come_back_as_they_were_written() {
    assertThat(READ.findings().stream().map(f -> CheckWords.of(f.question())))
        .isEqualTo(texts("/findings", "check"));
    assertThat(READ.findings().stream().map(f -> LoadCaseWords.of(f.loadCase())))
        .isEqualTo(texts("/findings", "condition"));
    assertThat(READ.recommendation().margins().stream().map(QuestionMargin::question))
        .extracting(CheckWords::of)
        .isEqualTo(texts("/recommendation/margins", "check"));
    assertThat(LoadCaseWords.of(READ.atLimit().loadCase()))
        .isEqualTo(KEPT.at("/atLimit/loading").stringValue());
  }

  @Test
  void its_loadings_have_a_shape() {
    assertThat(READ.findings())
        .extracting(f -> f.loadCase().kind())
        .contains(Kind.AS_LOADED, Kind.AT_LIMIT, Kind.AS_MEASURED);
    assertThat(READ.atLimit().loadCase().crew()).isInstanceOf(Crew.Alike.class);
  }

  @Test
  void written_anew_it_says_the_same_by_identity() {
    String anew = ReportJson.write(READ);
    assertThat(anew).contains("\"format\": \"thwartwise/report/2\"", "\"FREEBOARD_AT_REST\"");
    Report again = ReportJson.parse(anew, "report.json");
    assertThat(again.findings())
        .extracting(Finding::question)
        .isEqualTo(READ.findings().stream().map(Finding::question).toList());
    assertThat(again.findings())
        .extracting(Finding::loadCase)
        .isEqualTo(READ.findings().stream().map(Finding::loadCase).toList());
    assertThat(again.recommendation().governedBy()).isEqualTo(READ.recommendation().governedBy());
    assertThat(again.atLimit().loadCase()).isEqualTo(READ.atLimit().loadCase());
  }

  /** What the program says of a question today has no part in it. */
  @Test
  void the_identity_counts_and_not_the_words_next_to_it() {
    String reworded =
        ReportJson.write(READ)
            .replace("\"check\": \"freeboard at rest\"", "\"check\": \"reworded\"");
    assertThat(reworded).contains("reworded");
    assertThat(ReportJson.parse(reworded, "report.json").findings())
        .extracting(Finding::question)
        .isEqualTo(READ.findings().stream().map(Finding::question).toList());
  }

  @Test
  void names_with_commas_and_semicolons_are_read_whole() {
    assertThat(OldQuestions.of("leaving the locker, bow hatch open, lift to spare when swamped"))
        .isEqualTo(
            thwartwise.checks.CheckQuestion.of(
                CheckId.HATCH_LEFT_OPEN, Measure.LIFT, "locker, bow hatch"));
    String loading = "as loaded: Ann; the helm at stern seat";
    assertThat(new OldLoadCases(loading, "").read(loading + "; everyone kneeling").before())
        .isEqualTo(OldLoadCases.of(loading));
  }
}
