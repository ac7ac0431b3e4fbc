package thwartwise.files.report;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.boat.BuoyancyReason;
import thwartwise.boat.NamedEnd;
import thwartwise.boat.NamedSide;
import thwartwise.checks.Finding;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.Note;
import thwartwise.crew.LimitingFactor;
import thwartwise.crew.Refusal;
import thwartwise.hull.PanelTwist.PanelSide;
import thwartwise.hull.ReadingDirection;
import thwartwise.hull.TapeSlip;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.json.CanonicalNumbers;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.measure.UnitFormat;
import thwartwise.report.BuoyancyReasonWords;
import thwartwise.report.FormulaNoteWords;
import thwartwise.report.NoteWords;
import thwartwise.report.RefusalWords;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.ExcludedUse;
import thwartwise.rules.FormulaNote;
import thwartwise.rules.ScopeMismatch;
import thwartwise.rules.ValidWaters.WaterStatement;
import tools.jackson.databind.JsonNode;

/**
 * A record with every kind of note, refusal, limiting factor and statement of the waters, as it was
 * written when the report first named them. The names are in records that nobody can write again:
 * whoever renames a kind, one of its parts or a word of a choice fails here. A new kind gets its
 * lines in the kept file.
 */
class KeptKindsTest {
  private static final String FILE = "/thwartwise/files/record-with-kinds-2.json";

  /** Words alone name no kind. */
  private static final Set<Class<?>> WITHOUT_A_NAME =
      Set.of(
          Note.None.class,
          Note.Stated.class,
          Refusal.Stated.class,
          LimitingFactor.Stated.class,
          BuoyancyReason.Stated.class,
          FormulaNote.None.class,
          FormulaNote.Stated.class);

  private static final String OF_MEASUREMENT = Note.OfMeasurement.class.getSimpleName();

  private final JsonNode kept = kept();
  private final Report read = ReportCodec.read(kept, Location.whole("record.json"));

  @Test
  void what_was_named_is_named_the_same_again() {
    JsonNode anew = parsed(Layout.of(CanonicalNumbers.in(ReportCodec.write(read))));
    assertThat(named(anew)).isEqualTo(named(kept)).hasSizeGreaterThan(40).doesNotContainNull();
  }

  /** The words that stood next to each are those of today. */
  @Test
  void what_was_said_of_a_reason_is_said_of_it_still() {
    assertThat(RefusalWords.of(read.recommendation().reasons(), UnitFormat.METRIC))
        .isEqualTo(
            kept.at("/recommendation/reasons").valueStream().map(JsonNode::stringValue).toList());
  }

  @Test
  void what_was_said_of_a_formula_is_said_of_it_still() {
    assertThat(
            read.capacityFigures().stream()
                .map(figure -> FormulaNoteWords.of(figure.note(), UnitFormat.METRIC)))
        .isEqualTo(
            kept.path("capacityFigures")
                .valueStream()
                .map(f -> f.path("note").stringValue())
                .toList());
  }

  /** Those of the file's older part have words alone, and keep them. */
  @Test
  void what_was_said_of_a_chamber_is_said_of_it_still() {
    assertThat(
            read.chambers().stream()
                .map(chamber -> BuoyancyReasonWords.of(chamber.why(), UnitFormat.METRIC)))
        .isEqualTo(
            kept.path("chambers").valueStream().map(c -> c.path("why").stringValue()).toList());
    assertThat(read.chambers().get(0).why())
        .isEqualTo(new BuoyancyReason.Stated("proven 2026-05-02 by builder"));
  }

  @Test
  void what_was_said_of_a_measurement_is_said_of_it_still() {
    List<String> words =
        kept.at("/findings")
            .valueStream()
            .filter(f -> OF_MEASUREMENT.equals(f.at("/noteIs/is").stringValue("")))
            .map(f -> f.path("note").stringValue())
            .toList();
    assertThat(
            read.findings().stream()
                .map(Finding::note)
                .filter(Note.OfMeasurement.class::isInstance)
                .map(note -> NoteWords.of(note, UnitFormat.METRIC)))
        .isEqualTo(words)
        .hasSizeGreaterThan(40)
        .doesNotHaveDuplicates();
  }

  /** Every key that names a kind, in the order of the file. */
  private static List<JsonNode> named(JsonNode report) {
    return Stream.of(
            report.findValues("noteIs"),
            report.findValues("whyIs"),
            report.findValues("reasonsAre"),
            report.findValues("nextPersonBreaksAre"),
            report.findValues("watersAre"))
        .flatMap(List::stream)
        .toList();
  }

  @Test
  void every_kind_is_in_the_kept_file() {
    assertThat(kinds(read.findings().stream().map(Finding::note))).containsAll(kinds(Note.class));
    assertThat(kinds(measurements())).containsAll(kinds(MeasurementNote.class));
    assertThat(kinds(refusals())).containsAll(kinds(Refusal.class));
    assertThat(kinds(uses())).containsAll(kinds(ExcludedUse.class));
    assertThat(kinds(uncovered()))
        .containsAll(Set.of(ScopeMismatch.class.getPermittedSubclasses()));
    assertThat(kinds(read.capacityFigures().stream().map(CapacityFigure::note)))
        .containsAll(kinds(FormulaNote.class));
    assertThat(kinds(read.chambers().stream().map(ChamberFigures::why)))
        .containsAll(kinds(BuoyancyReason.class));
    assertThat(kinds(factors())).containsAll(kinds(LimitingFactor.class));
    assertThat(read.waters())
        .extracting(WaterStatement::kind)
        .contains(WaterStatement.Kind.values());
    assertThat(kinds(read.waters().stream()))
        .isEqualTo(Set.of(WaterStatement.class.getPermittedSubclasses()));
  }

  @Test
  void every_word_of_a_choice_is_in_the_kept_file() {
    List<Note> notes = read.findings().stream().map(Finding::note).toList();
    assertThat(notes)
        .containsAll(Arrays.stream(Note.Fact.values()).map(Note::of).toList())
        .containsAll(Arrays.stream(Equilibria.Ending.values()).map(Note.NoRest::new).toList())
        .containsAll(Arrays.stream(PoseOrientation.values()).map(Note.LiesOver::new).toList());
  }

  @Test
  void every_word_of_what_is_odd_about_a_measurement_is_in_the_kept_file() {
    assertThat(measurements())
        .containsAll(Arrays.stream(MeasurementNote.Fact.values()).map(MeasurementNote::of).toList())
        .containsAll(
            Arrays.stream(NamedEnd.values()).map(MeasurementNote.NamedForEnd::new).toList());
    assertThat(values(MeasurementNote.NamedForSide.class, MeasurementNote.NamedForSide::side))
        .contains(NamedSide.values());
    assertThat(values(MeasurementNote.TwistedPanel.class, MeasurementNote.TwistedPanel::side))
        .contains(PanelSide.values());
    assertThat(values(MeasurementNote.OutOfLine.class, MeasurementNote.OutOfLine::slip))
        .contains(TapeSlip.values());
    assertThat(values(MeasurementNote.OutOfLine.class, MeasurementNote.OutOfLine::direction))
        .contains(ReadingDirection.values());
  }

  private <N, V> Stream<V> values(Class<N> kind, Function<N, V> value) {
    return measurements().filter(kind::isInstance).map(kind::cast).map(value);
  }

  private Stream<MeasurementNote> measurements() {
    return read.findings().stream()
        .map(Finding::note)
        .filter(Note.OfMeasurement.class::isInstance)
        .map(note -> ((Note.OfMeasurement) note).note());
  }

  private Stream<Refusal> refusals() {
    return Stream.of(read.recommendation().nextPersonBreaks(), read.recommendation().reasons())
        .flatMap(List::stream);
  }

  private Stream<ExcludedUse> uses() {
    return refusals()
        .filter(Refusal.OutsideUse.class::isInstance)
        .map(refusal -> ((Refusal.OutsideUse) refusal).use());
  }

  private Stream<ScopeMismatch> uncovered() {
    return uses()
        .filter(ExcludedUse.NotCovered.class::isInstance)
        .map(use -> ((ExcludedUse.NotCovered) use).why());
  }

  private Stream<LimitingFactor> factors() {
    return refusals()
        .filter(Refusal.ByLimit.class::isInstance)
        .map(refusal -> ((Refusal.ByLimit) refusal).factor());
  }

  private static Set<Class<?>> kinds(Stream<?> all) {
    return all.map(Object::getClass).collect(Collectors.toSet());
  }

  private static List<Class<?>> kinds(Class<?> family) {
    return Arrays.stream(family.getPermittedSubclasses())
        .filter(kind -> !WITHOUT_A_NAME.contains(kind))
        .<Class<?>>map(kind -> kind)
        .toList();
  }

  private static JsonNode kept() {
    try (var in = KeptKindsTest.class.getResourceAsStream(FILE)) {
      return parsed(new String(in.readAllBytes(), StandardCharsets.UTF_8)).path("report");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JsonNode parsed(String json) {
    return JsonText.parse(json, Location.whole("record.json"));
  }
}
