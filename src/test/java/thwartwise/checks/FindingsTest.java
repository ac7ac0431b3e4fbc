package thwartwise.checks;

import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadedBoat;

/** How the reading as measured and the one after the allowance make one finding. */
class FindingsTest {
  private record Asked(List<CheckReading> measured, List<CheckReading> cautious) implements Check {
    @Override
    public Role role() {
      return Role.INFORMATION;
    }

    @Override
    public List<CheckReading> readings(LoadedBoat trial) {
      return trial.allowance().equals(Allowance.NONE) ? measured : cautious;
    }
  }

  private static CheckReading reading(String check, double value) {
    return reading(check, OptionalDouble.of(value), true, "");
  }

  private static CheckReading reading(
      String check, OptionalDouble value, boolean assessed, String note) {
    Margin margin = Margin.atMost(0.2, value, Unit.DEGREE);
    CheckQuestion question = CheckQuestion.of(CheckId.NO_LONGER_ASKED, Measure.HEEL, check);
    return new CheckReading(
        question, margin, assessed, "judgement", LoadCase.UNNAMED, Note.stated(note));
  }

  private static List<Finding> findings(List<CheckReading> measured, List<CheckReading> cautious) {
    return OnPaper.findings(new Asked(measured, cautious), OnPaper.trial(OnPaper.boat(300)));
  }

  private static Finding finding(CheckReading measured, CheckReading cautious) {
    return findings(List.of(measured), List.of(cautious)).get(0);
  }

  @Test
  void a_reading_that_is_missing_after_the_allowance_is_borderline() {
    List<Finding> found =
        findings(
            List.of(reading("heel", 0.1), reading("heel of another", 0.1)),
            List.of(reading("heel", 0.1)));
    assertThat(found)
        .extracting(Finding::outcome)
        .containsExactly(Outcome.MEETS, Outcome.BORDERLINE);
    assertThat(FindingText.note(found.get(1)))
        .isEqualTo("With the allowance for tape and scales no such state was found");
    assertThat(found.get(1).value()).hasValue(0.1);
  }

  @Test
  void a_reading_that_is_missing_altogether_after_the_allowance_raises_nothing() {
    assertThat(findings(List.of(reading("heel", 0.1)), List.of()))
        .extracting(Finding::outcome)
        .containsExactly(Outcome.BORDERLINE);
    assertThat(findings(List.of(reading("heel", 0.3)), List.of()))
        .extracting(Finding::outcome)
        .containsExactly(Outcome.FALLS_SHORT);
    assertThat(findings(List.of(), List.of())).isEmpty();
  }

  @Test
  void readings_are_paired_by_their_name_and_not_by_their_order() {
    List<Finding> found =
        findings(
            List.of(reading("a", 0.1), reading("b", 0.1)),
            List.of(reading("b", 0.3), reading("a", 0.1)));
    assertThat(found)
        .extracting(Finding::outcome)
        .containsExactly(Outcome.MEETS, Outcome.BORDERLINE);
  }

  // 0.25 rad is 14.32 degrees, rounded up.
  @Test
  void a_borderline_note_tells_what_the_allowance_makes_of_it() {
    assertThat(FindingText.note(finding(reading("heel", 0.1), reading("heel", 0.25))))
        .isEqualTo("With the allowance for tape and scales it is 14.4 deg");
    assertThat(FindingText.note(finding(reading("heel", 0.1), reading("heel", 3))))
        .isEqualTo("With the allowance for tape and scales it rolls over");
  }

  @Test
  void what_was_not_assessed_either_way_is_not_assessed() {
    CheckReading none = reading("heel", OptionalDouble.empty(), false, "not found");
    assertThat(finding(none, reading("heel", 0.1)).outcome()).isEqualTo(Outcome.NOT_ASSESSED);
    assertThat(finding(reading("heel", 0.1), none).outcome()).isEqualTo(Outcome.NOT_ASSESSED);
  }

  @Test
  void a_value_that_is_no_number_is_not_met() {
    assertThat(finding(reading("heel", Double.NaN), reading("heel", Double.NaN)).outcome())
        .isEqualTo(Outcome.FALLS_SHORT);
    assertThat(RULES.value("allowance-mass")).as("or there is no allowance").isPositive();
  }

  private static Finding heel(double radians, String source) {
    return new Finding(
        CheckQuestion.of(CheckId.EVERYONE_HARD_TO_ONE_SIDE, Measure.HEEL),
        Role.FORBIDS_AN_ACT,
        Outcome.MEETS,
        Margin.atMost(0.4, OptionalDouble.of(radians), Unit.DEGREE),
        source,
        LoadCase.UNNAMED,
        Note.of(Note.Fact.NO_SUCH_STATE));
  }

  /** Heel to port and to starboard of a boat alike on both sides differ in the last bits. */
  @Test
  void of_two_that_are_equally_bad_the_first_stays() {
    Finding port = heel(0.2, "port");
    assertThat(Finding.worse(port, heel(0.2 + 1e-13, "starboard"))).isSameAs(port);
    assertThat(Finding.worse(port, heel(0.2 + 1e-6, "starboard")).source()).isEqualTo("starboard");
  }
}
