package thwartwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.picture.LetterPictures;
import thwartwise.picture.LetterPictures.Sketch;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;
import thwartwise.remedy.Deed;
import thwartwise.remedy.FoamBlock;
import thwartwise.sampleboats.OrdinaryBoats;
import thwartwise.today.TodayVerdict;

/** Whoever measured in feet and pounds reads no other units on any paper of the boat. */
class PapersInFeetTest {
  private static final String UNIT = "(m|cm|mm|kg|kg/m3|l|litres?|Nm|km|kW|W|N|m/s|m2)";
  private static final Pattern METRIC =
      Pattern.compile(
          "\\d[\\s\u00a0]*" + UNIT + "(?![\\w'])|\\bmetres?\\b|\\blitres?\\b|\\b(kg|cm|mm|Nm)\\b");

  private static InspectionRecord record;

  @BeforeAll
  static void inspected() {
    Boat boat = OrdinaryBoats.all().get(0).in(UnitSystem.FEET_INCHES_POUNDS);
    record =
        new InspectionRecord(
            OffsetDateTime.parse("2026-06-14T09:05:07+02:00"),
            "M. Quill",
            "0.1.0",
            boat,
            Inspection.withoutAdvice(boat, RuleSetFile.shippedBook(), OrdinaryBoats.TODAY));
  }

  private static RecordEntry kept() {
    return new RecordEntry(
        "pram/1", "pram-1", OptionalInt.of(1), "", true, true, true, Optional.empty(), record);
  }

  private static Stream<String> metric(String paper) {
    return paper.lines().filter(line -> METRIC.matcher(line).find());
  }

  private static String sheets() {
    return IntStream.rangeClosed(1, TextPage.headings(kept()).size() - 1)
        .mapToObj(sheet -> TextPage.sheet(kept(), sheet))
        .collect(Collectors.joining("\n"));
  }

  @Test
  void the_screen_has_no_metric_word() {
    assertThat(metric(String.join("\n", Screen.of(record, 40)))).isEmpty();
  }

  /** Notes of published rules quote their rule; what all rests on stands on the last sheet. */
  @Test
  void no_sheet_before_the_last_has_a_metric_word_but_where_a_published_rule_is_quoted() {
    String quoted = "(?s)What these rules rest on.*?(?=\n[^\n]*\n-----)";
    assertThat(metric(sheets().replaceAll(quoted, ""))).isEmpty();
  }

  @Test
  void what_was_measured_is_told_as_the_tape_gave_it() {
    String measured = MeasuredSection.of(record.boat(), ReaderUnits.of(record.boat())).toString();
    assertThat(metric(measured)).isEmpty();
    assertThat(Pattern.compile("\\d\\.\\d{2,}").matcher(measured).results()).isEmpty();
    assertThat(Pattern.compile("/(?!2 |4 |8 |16 )\\d+ in").matcher(measured).results()).isEmpty();
  }

  @Test
  void pictures_and_their_words_are_in_feet() {
    for (Sketch sketch : pictures().drawn()) {
      PictureWords words = PictureWords.of(sketch.facts(), ReaderUnits.of(record.boat()));
      String all = String.join("\n", sketch.drawing(), words.alternative(), words.caption());
      assertThat(metric(all)).isEmpty();
    }
  }

  private static LetterPictures pictures() {
    return LetterPictures.of(record.boat(), record.report(), OrdinaryBoats.TODAY, 80);
  }

  @Test
  void todays_questions_are_in_pounds() {
    List<String> asked =
        TodayVerdict.of(record.report(), record.boat()).points().stream()
            .map(point -> point.question())
            .map(question -> question.replaceAll("[0-9]+\u00a0N \\(EN ISO", "(EN ISO"))
            .toList();
    assertThat(metric(String.join("\n", asked))).isEmpty();
  }

  @Test
  void the_card_has_kilograms_and_pounds_in_either() {
    InspectionRecord other = record.in(UnitSystem.METRIC);
    int rows = record.report().recommendation().crewLimits().size();
    for (InspectionRecord one : List.of(record, other)) {
      String card = CardPage.text(one, "0001").replace('\u00a0', ' ');
      assertThat(Pattern.compile("\\d kg").matcher(card).results())
          .hasSizeGreaterThanOrEqualTo(rows + 2);
      assertThat(Pattern.compile("\\d lb").matcher(card).results())
          .hasSizeGreaterThanOrEqualTo(rows + 2);
    }
    assertThat(CardPage.text(record, "0001")).containsPattern("\\d+ lb +\\(\\d+.kg\\) people");
    assertThat(CardPage.text(other, "0001")).containsPattern("\\d+ kg +\\(\\d+.lb\\) people");
  }

  /** Figures of a report do not follow the units. */
  @Test
  void figures_of_the_report_stay_si() {
    Boat metric = record.boat().in(UnitSystem.METRIC);
    Report same = Inspection.withoutAdvice(metric, RuleSetFile.shippedBook(), OrdinaryBoats.TODAY);
    assertThat(record.report().recommendation().crew()).isEqualTo(same.recommendation().crew());
    assertThat(record.report().findings().stream().map(f -> f.margin()))
        .containsExactlyElementsOf(same.findings().stream().map(f -> f.margin()).toList());
  }

  // 0.0508 m are 2 in, 0.254 m 10 in, 0.03 m³ 7.9 US gallons.
  @Test
  void what_is_to_be_done_is_told_as_one_marks_it_with_a_tape() {
    UnitFormat units = ReaderUnits.of(record.boat());
    DeedWords lowered =
        DeedWords.of(new Deed.LowerSeat("aft thwart", 0.0508, 0.254, List.of()), units);
    assertThat(lowered.deed()).isEqualTo("Lower the aft thwart by 2 in");
    assertThat(lowered.how()).isEqualTo("To 10 in above the lowest point of the bottom");
    DeedWords foam = DeedWords.of(new Deed.AddFoam(0.03, "in the bow", foam(), false), units);
    assertThat(foam.deed()).isEqualTo("Add 7 US gallons of closed-cell foam in the bow");
    assertThat(metric(foam.how() + "\n" + String.join("\n", foam.cautions()))).isEmpty();
    DeedWords moved = DeedWords.of(new Deed.MoveKitAlong("battery", 1.27, 0.1016, false), units);
    assertThat(moved.deed())
        .isEqualTo("Move the battery to 4 ft 2 in forward of the aft end, 4 in up");
  }

  private static List<FoamBlock> foam() {
    Span along = new Span(0.3048, 0.9144);
    return List.of(new FoamBlock(new Box(along, Span.ALL, new Span(0, 0.2032)), false));
  }
}
