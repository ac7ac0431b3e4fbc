package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.checks.Finding;
import thwartwise.checks.Unit;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.InspectedBoats;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.page.PdfPage;
import thwartwise.picture.Pictures.LetterPictures;
import thwartwise.picture.Pictures.LetterPictures.Sketch;
import thwartwise.record.Comparison;
import thwartwise.record.InspectionRecord;
import thwartwise.record.RecordEntry;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed;
import thwartwise.remedy.Deed.FoamBlock;
import thwartwise.sampleboats.OrdinaryBoats;
import thwartwise.today.TodayPage;
import thwartwise.today.TodayVerdict;

/**
 * Whoever measured in feet and pounds reads no other units on any paper of the boat. The boat has
 * six chambers, eight places, waters of its own and whatever else can be measured.
 */
class PapersInFeetTest {
  private static final String UNIT =
      "(m|cm|mm|kg|g|kg/m3|l|litres?|Nm|km|kW|W|N|m/s|m2|m3|deg/m|newtons?|degrees a metre)";
  private static final Pattern METRIC =
      Pattern.compile(
          "\\d[\\s\u00a0]*"
              + UNIT
              + "(?![\\w'/])|(?i)\\b(kilo|centi|milli|deci)?(metres?|grams?|litres?|newtons?|watts?)\\b"
              + "|(?-i)\\b(kg|cm|mm|Nm|kW)\\b|Celsius|°C");

  /** A tape is read to the sixteenth of an inch, scales to the tenth of a pound. */
  private static final Pattern TOO_FINE =
      Pattern.compile(
          "\\d\\.\\d{2,}[\\s\u00a0]*(ft|in(?! (water|air|the))|lb|US gallons|hp|mph|°F|yards|square feet)\\b"
              + "|/(?!(2|4|8|16)[\\s\u00a0]*in\\b)\\d+[\\s\u00a0]*in\\b");

  private static final String NUMBER = "2026-11-26T090000-1a2b3c4d";

  private static InspectionRecord record;

  @BeforeAll
  static void inspected() {
    Boat boat = BoatFile.parse(SampleBoat.resource("files/butter-dish.json"), "butter-dish.json");
    Report plain =
        Inspection.withoutAdvice(boat, RuleSetFile.bundledRuleBook(), OrdinaryBoats.TODAY);
    record = inspected(boat, plain.with(new Advice(pieces(plain), List.of())));
  }

  private static InspectionRecord inspected(Boat boat, Report report) {
    OffsetDateTime date = OffsetDateTime.parse("2026-11-26T09:00:00Z");
    return new InspectionRecord(date, "Odo Marl", "0.1.0", boat, report);
  }

  /** One of each kind of deed that has a figure, with what it would move. */
  private static List<AdvicePiece> pieces(Report report) {
    Finding least =
        report.findings().stream()
            .filter(f -> f.margin().unit() == Unit.METRE && f.margin().value().isPresent())
            .findFirst()
            .orElseThrow();
    AdviceReading moved =
        new AdviceReading(
            least.question(), least.loadCase().crew(), least.margin(), OptionalDouble.of(0.3));
    Deed prove = new Deed.ProveChambers(List.of(new Deed.ProvenChamber("fore box", true)), true);
    Deed battery = new Deed.MoveKitAlong("battery", 1.27, 0.1016, false);
    return List.of(
            new Deed.AddFoam(0.0734, "in the bow", foam(), false),
            prove,
            new Deed.SealChamber("fore thwart box"),
            new Deed.RaiseEdge("motor notch", 0.4, 0.47, true),
            new Deed.LowerSeat("fore thwart", 0.1, 0.2, List.of("fore thwart box")),
            new Deed.DeedPair(battery, prove),
            new Deed.AnchorByTheBow(OptionalDouble.of(0.21), OptionalDouble.of(0.03), true))
        .stream()
        .map(
            deed ->
                new AdvicePiece(
                    deed,
                    Effort.AN_HOUR,
                    1,
                    43.7,
                    31.2,
                    Optional.of(moved),
                    List.of(),
                    List.of(),
                    List.of()))
        .toList();
  }

  private static RecordEntry kept(String name, InspectionRecord inspection) {
    return new RecordEntry(
        "butter-dish/1",
        name,
        OptionalInt.of(1),
        "",
        true,
        true,
        true,
        Optional.empty(),
        inspection);
  }

  private static void isInFeet(String paper) {
    String bare = paper.replaceAll("(?s)<style.*?</style>", "").replaceAll("<[^>]*>", "\n");
    assertThat(bare.lines().filter(line -> METRIC.matcher(line).find())).isEmpty();
    assertThat(bare.lines().filter(line -> TOO_FINE.matcher(line).find())).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {24, 40, 99})
  void the_screen_is_in_feet(int rows) {
    isInFeet(String.join("\n", Screen.of(record, rows)));
  }

  @Test
  void every_sheet_of_the_page_is_in_feet_and_says_much() {
    String sheets =
        TextPage.sheets(kept("1", record)).stream()
            .map(TextPage.Sheet::text)
            .collect(Collectors.joining("\n"));

    assertThat(
            Pattern.compile("\\d[\\s\u00a0](ft|in|lb|mph|hp|US gallons)\\b")
                .matcher(sheets)
                .results())
        .hasSizeGreaterThan(200);
    isInFeet(sheets);
  }

  /** Letters and other words of its pictures too. */
  @Test
  void the_page_with_its_pictures_is_in_feet() {
    isInFeet(HtmlPage.of(record, NUMBER));
  }

  /** Strangers read it, so each mass stands in both. */
  @Test
  void the_card_is_in_feet_but_for_masses_in_both() {
    for (String card : List.of(CardPage.text(record, NUMBER), CardPage.html(record, NUMBER))) {
      String bare = card.replace('\u00a0', ' ');
      assertThat(bare).contains("kg");
      isInFeet(bare.replaceAll("\\d+ kg\\b", ""));
    }
  }

  @Test
  void pictures_in_letters_and_their_words_are_in_feet() {
    for (Sketch sketch : pictures().drawn()) {
      PictureWords words = PictureWords.of(sketch.facts(), ReaderUnits.of(record.boat()));
      isInFeet(String.join("\n", sketch.drawing(), words.alternative(), words.caption()));
    }
  }

  private static LetterPictures pictures() {
    return LetterPictures.of(record.boat(), record.report(), OrdinaryBoats.TODAY, 80);
  }

  /** What was changed, one of each kind, and what came of it. */
  @Test
  void a_comparison_and_a_supposition_are_in_feet() {
    Boat pram = pram();
    Boat heavier =
        pram.withKit(
                List.of(
                    new Kit(
                        "battery",
                        20.4,
                        Vector3.of(1, 0, 0.1),
                        Optional.of(0.007),
                        true,
                        Optional.empty())))
            .withBailer(6.0)
            .withTrailer(250.0);
    InspectionRecord before = inspected(pram, InspectedBoats.underShipped(pram));
    InspectionRecord after = inspected(heavier, InspectedBoats.underShipped(heavier));

    isInFeet(ComparePage.of(kept("1", before), kept("2", after)));
    isInFeet(ComparePage.html(kept("1", before), kept("2", after)));
    isInFeet(SupposePage.of(Comparison.of(before, after), List.of(), Optional.empty()));
  }

  @Test
  void who_may_sit_where_is_in_feet() {
    BoatModel model = BoatModel.of(record.boat(), OrdinaryBoats.TODAY);
    PlannedMasses planned = PlannedMasses.of(RuleSetFile.cautiousDefault());
    List<NamedPerson> wanted =
        List.of(
            NamedPerson.weighed("Odo", 76),
            NamedPerson.adult("adult", planned),
            NamedPerson.youth("Una", Sex.GIRL, 9));

    isInFeet(
        SeatsPage.of(record.boat(), CrewSeating.of(model, RuleSetFile.bundledRuleBook(), wanted)));
  }

  @Test
  void todays_questions_are_in_feet() {
    isInFeet(TodayPage.opening(record));
    isInFeet(
        TodayVerdict.of(record.report(), record.boat(), record.date().toLocalDate())
            .points()
            .stream()
            .map(point -> point.question() + "\n" + point.why() + "\n" + point.todo())
            // The norm's name for a life jacket by its lift.
            .map(question -> question.replaceAll("\\b(100|50)\u00a0N\\b", ""))
            .collect(Collectors.joining("\n")));
  }

  @Test
  void six_chambers_and_eight_places_fill_at_most_eight_sheets() {
    assertThat(record.boat().chambers()).hasSize(6);
    assertThat(record.boat().places()).hasSize(8);
    assertThat(PdfPage.sheets(HtmlPage.pdf(record, NUMBER))).isLessThanOrEqualTo(8);
  }

  @Test
  void what_was_measured_is_told_as_the_tape_gave_it() {
    String measured = MeasuredSection.of(record.boat(), ReaderUnits.of(record.boat())).toString();

    assertThat(measured.replace('\u00a0', ' ')).contains("51.5 lb").contains("7/8 in");
    isInFeet(measured);
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
    assertThat(CardPage.text(record, "0001")).containsPattern("\\d+ lb +\\(\\d+.kg\\) all people");
    assertThat(CardPage.text(other, "0001")).containsPattern("\\d+ kg +\\(\\d+.lb\\) all people");
  }

  /** Figures of a report do not follow the units. */
  @Test
  void figures_of_the_report_stay_si() {
    Report metric = InspectedBoats.underShipped(OrdinaryBoats.all().get(0));
    Report feet = InspectedBoats.underShipped(pram());

    assertThat(feet.recommendation().crew()).isEqualTo(metric.recommendation().crew());
    assertThat(feet.findings().stream().map(Finding::margin))
        .containsExactlyElementsOf(metric.findings().stream().map(Finding::margin).toList());
  }

  private static Boat pram() {
    return OrdinaryBoats.all().get(0).in(UnitSystem.FEET_INCHES_POUNDS);
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
    isInFeet(foam.how() + "\n" + String.join("\n", foam.cautions()));
    DeedWords moved = DeedWords.of(new Deed.MoveKitAlong("battery", 1.27, 0.1016, false), units);
    assertThat(moved.deed())
        .isEqualTo("Move the battery to 4 ft 2 in forward of the aft end, 4 in up");
  }

  private static List<FoamBlock> foam() {
    Span along = new Span(0.3048, 0.9144);
    return List.of(new FoamBlock(new Box(along, Span.ALL, new Span(0, 0.2032)), false));
  }
}
