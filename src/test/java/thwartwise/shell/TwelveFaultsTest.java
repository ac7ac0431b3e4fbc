package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.BoatModel;
import thwartwise.boat.PointAnswer;
import thwartwise.checklist.PointQuestion;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.crew.Refusal;
import thwartwise.electrics.CircuitSums.Fault;
import thwartwise.files.rules.ChecklistFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.Report;
import thwartwise.page.PdfPage;
import thwartwise.passage.PassagePlan;
import thwartwise.record.InspectionRecord;
import thwartwise.report.HtmlPage;
import thwartwise.report.RangePage;
import thwartwise.report.TextPage;
import thwartwise.report.WiringPage;

/** The twelve faults that were put into the second demo boat on purpose are found and graded. */
class TwelveFaultsTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 27);
  private static final Boat BOAT = DemoCommand.faultyAsOf(TODAY);

  private static Report report;

  @BeforeAll
  static void inspect() {
    report = Inspection.of(BOAT, RuleSetFile.cautiousDefault(), TODAY);
  }

  /** 1 a pocket left open, 2 a sealed battery box, 3 the anchor line at the stern. */
  @ParameterizedTest
  @ValueSource(strings = {"stern bench", "starter battery", ""})
  void what_holds_the_launch_withholds_the_recommendation(String thing) {
    PointAnswer answer =
        BOAT.pointAnswers().stream()
            .filter(a -> a.holdsTheLaunch() && a.item().equals(thing))
            .findFirst()
            .orElseThrow();
    assertThat(report.recommendation().withheld()).isTrue();
    assertThat(report.recommendation().reasons())
        .contains(
            new Refusal.LookedAt(
                answer.date().toString(), answer.by(), answer.requirementOfItem()));
  }

  /** 4 a torn seal, 5 a pipe out of a chamber, 6 a loose battery, 7 a bung without a line. */
  @ParameterizedTest
  @ValueSource(strings = {"hatch of the bow locker", "fore thwart box", "starter battery", "drain"})
  void what_must_be_put_right_first_is_a_finding_that_holds_back(String thing) {
    assertThat(of(CheckId.LOOKED_AT).filter(f -> f.question().things().contains(thing)))
        .hasSize(1)
        .allMatch(Finding::holdsBack);
  }

  @Test
  void no_chamber_of_it_counts_and_loose_kit_lifts_nothing() {
    assertThat(BoatModel.of(BOAT, TODAY).spaces()).allMatch(s -> s.counting().share() == 0);
    assertThat(
            BoatModel.of(BOAT.withPointAnswers(List.of()), TODAY).spaces().stream()
                .filter(s -> s.counting().share() > 0)
                .count())
        .isEqualTo(3);
    assertThat(of(CheckId.DRAIN_OPEN).filter(Finding::holdsBack)).isNotEmpty();
    assertThat(BoatModel.of(BOAT, TODAY).boat().kit())
        .filteredOn(k -> k.name().equals("starter battery"))
        .allMatch(k -> !k.fastened());
  }

  /** 8 no fuse for the motor, 9 a lamp's wire that is too thin. */
  @ParameterizedTest
  @CsvSource({"motor, NO_FUSE", "bow lamp, WIRE_TOO_THIN"})
  void a_circuit_that_would_burn_holds_back(String circuit, Fault fault) {
    CheckQuestion question =
        CheckQuestion.of(CheckId.CIRCUIT_GUARDED, Measure.AS_MEASURED, circuit);
    assertThat(report.findings())
        .filteredOn(f -> f.question().equals(question))
        .hasSize(1)
        .allMatch(Finding::holdsBack)
        .allMatch(f -> f.note().equals(new Note.UnguardedCircuit(fault)));
  }

  /** 10 no fuse between controller and battery. */
  @Test
  void a_panel_without_its_second_fuse_holds_back() {
    assertThat(of(CheckId.PANEL_FUSED)).hasSize(1).allMatch(Finding::holdsBack);
  }

  /** 11 a battery made to start an engine, 12 a running time it cannot give. */
  @Test
  void the_battery_is_told_for_what_it_is_and_the_claim_for_what_it_is_worth() {
    assertThat(WiringPage.of(BOAT, TODAY).text())
        .contains("The battery is made to start an engine, and drives the motor here.");
    assertThat(RangePage.of(PassagePlan.of(BOAT, TODAY), Optional.empty()))
        .contains("It is said to run 4 hours at full power: this battery cannot give that.");
  }

  /** With all its faults the paper keeps its length, and tells of battery, motor and wires. */
  @Test
  void its_page_has_six_sheets_and_names_what_motor_and_wires_are_worth() {
    InspectionRecord record =
        new InspectionRecord(
            TODAY.atTime(9, 0).atOffset(ZoneOffset.UTC), "Otto Wenlock", "0.1.0", BOAT, report);
    String number = "2026-11-27T090000-1a2b3c4d";
    assertThat(PdfPage.sheets(HtmlPage.pdf(record, number))).isLessThanOrEqualTo(6);
    assertThat(TextPage.of(record, number))
        .contains("* At full power the battery lasts 3 min: turn back after 1 min at the latest")
        .contains("* It is said to run 4 hours at full power: this battery cannot give that.")
        .contains("things are to be put right before the battery is connected: type wiring.")
        .contains("* The seal is torn at the fore corner (hatch of the bow locker). Put right");
  }

  /** Answers kept in its file are graded as the shipped lists have them. */
  @Test
  void its_answers_weigh_what_the_shipped_lists_say() {
    List<PointQuestion> asked = PointQuestion.of(ChecklistFile.bundledWith(List.of()), BOAT);
    assertThat(BOAT.pointAnswers()).hasSize(7);
    for (PointAnswer answer : BOAT.pointAnswers()) {
      assertThat(asked)
          .filteredOn(q -> q.isAnsweredBy(answer))
          .hasSize(1)
          .allMatch(q -> q.system().equals(answer.system()))
          .allMatch(q -> q.point().gravity() == answer.gravity())
          .allMatch(q -> q.point().fact().equals(answer.fact()));
    }
    assertThat(BOAT.pointAnswers().stream().flatMap(a -> a.fact().stream()))
        .containsExactlyInAnyOrder(
            BoatFact.SEAL_CLAIMED,
            BoatFact.CHAMBER_OPEN,
            BoatFact.CHAMBER_LEAKS,
            BoatFact.KIT_LOOSE,
            BoatFact.BUNG_LOST);
  }

  private static Stream<Finding> of(CheckId check) {
    return report.findings().stream().filter(f -> f.question().check() == check);
  }
}
