package thwartwise.files.report;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.boat.ReadingLabel;
import thwartwise.boat.ReadingLabel.FloatedState;
import thwartwise.boat.ReadingLabel.ReadingPoint;
import thwartwise.boat.Side;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.Note;
import thwartwise.checks.Unit;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Refusal;
import thwartwise.electrics.CircuitSums;
import thwartwise.inspection.Report;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.report.NoteWords;
import thwartwise.report.RefusalWords;
import thwartwise.rules.ExcludedUse;
import thwartwise.rules.ValidWaters.WaterStatement;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Notes and refusals by what they are, and by their words in records that have no more. */
class KeptNotesTest {
  private static final Margin OVER = Margin.atMost(0.4, OptionalDouble.of(0.5), Unit.DEGREE);
  private static final Refusal.ByCheck CHECK =
      new Refusal.ByCheck(
          CheckQuestion.of(CheckId.ONE_CHAMBER_LOST, Measure.LIFT, "bow, locker"),
          Margin.atLeast(20, OptionalDouble.of(12.5), Unit.KILOGRAM),
          Note.of(Note.Fact.COSTLIEST_LOSS),
          true);

  private static final List<Note> NOTES =
      List.of(
          Note.of(Note.Fact.NO_STEADY_REST),
          new Note.NoRest(Equilibria.Ending.SINKS),
          new Note.LiesOver(PoseOrientation.ON_ITS_SIDE),
          new Note.LowestAt("rail, near middle", 0.115),
          new Note.WetWithoutPull(new Note.LowestAt("drain", 0)),
          new Note.LevelPull(true),
          new Note.SwampedSo(new Note.LiesOver(PoseOrientation.BOW_UP)),
          new Note.NextToSeated(Note.NONE, OVER),
          new Note.CurveEnd(
              Side.PORT, 0.61, new RightingCurve.End("rail", false), OptionalDouble.of(310.5), 0.4),
          new Note.FloodsFirst("rail", 0.5, 41.2),
          new Note.TwoChambers("fore \"locker\"", "aft; tank"),
          new Note.TurnedBack(62.5, true, false),
          new Note.NotUpsideDown(true),
          new Note.FirstUnder("cut-out"),
          new Note.DrainInflow(0.0005, OptionalDouble.empty(), 0.04, true),
          new Note.RainTaken(0.3, 2.4),
          new Note.Bailed(0.41, 0.004, false, 20, 0.5),
          new Note.SeamsLeak(1e-6, 0.04, "port chine", 0.75),
          new Note.RowlocksAft(0.38, 0.35),
          new Note.AnchorScope(4, 5),
          new Note.AfterAllowance(OVER, Note.of(Note.Fact.SWINGS_SO_FAR)),
          new Note.Confirmed("weighed twice"),
          new Note.OfMeasurement(new MeasurementNote.UnusualMass(200, OptionalDouble.of(20))),
          new Note.UnguardedCircuit(CircuitSums.Fault.NO_FUSE));

  private static final List<Refusal> REFUSALS =
      List.of(
          CHECK,
          new Refusal.ByLimit(new LimitingFactor.ByFormula("set", "formula")),
          new Refusal.EmptyBoat(CHECK),
          new Refusal.ThoseLeft(List.of("Ann; the helm", "Bo"), CHECK),
          new Refusal.OnlyLighter(95, 78.5),
          new Refusal.NotOnePerson(95, 45),
          new Refusal.NoPlaces(),
          new Refusal.MoreThanPlaces(2),
          new Refusal.MoreThanRule(new LimitingFactor.NoPlaceLeft(), 2, 3),
          new Refusal.HeavierThanRule(new LimitingFactor.TooManyWays(3388, 4), 120, 240.5),
          new Refusal.Implausible(PlausibilityId.parse("kit:tool box").orElseThrow(), true),
          new Refusal.FailedTrial("2026-04-09", "Ann", 2, true, false),
          new Refusal.OutsideUse(new ExcludedUse.HighWaves(0.31, 0.3, "somewhere (READ)")),
          new Refusal.FailedProof(
              "2026-04-09",
              "Ann",
              Optional.of(
                  new SuspectedMeasurement(
                      "FREEBOARD_READ",
                      "",
                      Optional.of(new ReadingLabel(FloatedState.SEATED, ReadingPoint.BOW)),
                      0.03,
                      0.75))),
          new Refusal.LookedAt("2026-04-09", "Ann", "No crack in the transom."));

  private static ObjectReader reader(ObjectNode node) {
    return ObjectReader.free(node, Location.whole("report.json"));
  }

  @Test
  void every_note_comes_back_as_it_was() {
    assertThat(NOTES.stream().map(Object::getClass).distinct())
        .hasSize(Note.class.getPermittedSubclasses().length - 2);
    for (Note note : NOTES) {
      ObjectNode node = NoteCodec.put(JsonText.object(), note, UnitFormat.METRIC);
      assertThat(node.path("note").stringValue()).isNotBlank();
      assertThat(NoteCodec.read(reader(node))).isEqualTo(note);
    }
  }

  @Test
  void every_refusal_comes_back_as_it_was() {
    assertThat(REFUSALS.stream().map(Object::getClass).distinct())
        .hasSize(Refusal.class.getPermittedSubclasses().length - 1);
    ObjectNode node = JsonText.object();
    WordedListCodec.putRefusals(node, "reasons", REFUSALS, UnitFormat.METRIC);
    assertThat(WordedListCodec.readRefusals(reader(node), "reasons")).isEqualTo(REFUSALS);
    assertThat(node.path("reasons").valueStream().map(JsonNode::stringValue))
        .isEqualTo(RefusalWords.of(REFUSALS, UnitFormat.METRIC))
        .doesNotHaveDuplicates();
  }

  /** What the program says of it today has no part in it. */
  @Test
  void what_it_is_counts_and_not_the_words_next_to_it() {
    ObjectNode node = NoteCodec.put(JsonText.object(), NOTES.get(0), UnitFormat.METRIC);
    node.put("note", "reworded");
    assertThat(NoteCodec.read(reader(node))).isEqualTo(NOTES.get(0));
  }

  @Test
  void one_of_a_kind_not_yet_known_keeps_its_words() {
    ObjectNode node = NoteCodec.put(JsonText.object(), NOTES.get(0), UnitFormat.METRIC);
    node.set("noteIs", JsonText.object().put("is", "OfALaterProgram"));
    assertThat(NoteCodec.read(reader(node)))
        .isEqualTo(new Note.Stated("it does not come to a steady rest"));
  }

  @Test
  void words_come_in_the_units_of_whoever_reads() {
    Note note = new Note.LowestAt("rail", 0.12);
    assertThat(NoteWords.of(note, UnitFormat.METRIC)).endsWith("raises the water there by 0.12 m");
    assertThat(NoteWords.of(note, new UnitFormat(UnitSystem.FEET_INCHES_POUNDS)))
        .endsWith("by 5\u00a0in")
        .doesNotContain("0.12");
  }

  /** A record of version 2 that was written while notes and reasons were words alone. */
  @Test
  void a_kept_report_with_words_alone_reads_and_is_written_as_it_was() throws IOException {
    JsonNode kept = kept();
    assertThat(kept.path("format").stringValue()).isEqualTo("thwartwise/report/2");
    Report read = ReportCodec.read(kept, Location.whole("record.json"));
    ObjectNode anew = ReportCodec.write(read);
    assertThat(read.waters())
        .extracting(WaterStatement::kind)
        .contains(WaterStatement.Kind.HOLDS_FOR, WaterStatement.Kind.NOT_FOR);
    assertThat(anew.path("waters")).isEqualTo(kept.path("waters"));
    assertThat(notes(anew)).isNotEmpty().isEqualTo(notes(kept));
    for (String key : List.of("reasons", "nextPersonBreaks")) {
      assertThat(anew.at("/recommendation").path(key))
          .isEqualTo(kept.at("/recommendation").path(key));
    }
    assertThat(anew.at("/recommendation").propertyNames())
        .containsExactlyElementsOf(kept.at("/recommendation").propertyNames());
    assertThat(read.findings())
        .extracting(Finding::note)
        .allMatch(note -> note.isNone() || note instanceof Note.Stated)
        .anyMatch(note -> note instanceof Note.Stated);
    assertThat(Optional.of(read.recommendation().nextPersonBreaks()))
        .hasValueSatisfying(
            b -> assertThat(b).isNotEmpty().allMatch(Refusal.Stated.class::isInstance));
  }

  private static List<String> notes(JsonNode report) {
    return report.path("findings").valueStream().map(f -> f.path("note").stringValue()).toList();
  }

  private static JsonNode kept() throws IOException {
    try (var in =
        KeptNotesTest.class.getResourceAsStream("/thwartwise/files/record-with-report-2.json")) {
      String json = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return JsonText.parse(json, Location.whole("record.json")).path("report");
    }
  }
}
