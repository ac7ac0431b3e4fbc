package thwartwise.rules;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Propulsion;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.measure.UnitFormat;
import thwartwise.report.FormulaNoteWords;
import thwartwise.rules.RatedBoat.HullKind;

class ApplicabilityTest {
  private static final Applicability TO_ALL = Applicability.TO_ALL;

  @Test
  void a_set_without_conditions_applies_to_every_boat() {
    assertThat(TO_ALL.mismatch(rated(BoxBoat.of(9, 3, 1)))).isEmpty();
  }

  @Test
  void an_upper_length_itself_is_outside() {
    Applicability short6 = length(new Span(0, 6));
    assertThat(short6.mismatch(rated(BoxBoat.of(5.99, 1.5, 0.5)))).isEmpty();
    assertThat(short6.mismatch(rated(BoxBoat.of(6, 1.5, 0.5))).map(ApplicabilityTest::words))
        .hasValue("the boat is 6 m long and it is written for under 6 m");
  }

  @Test
  void a_lower_length_itself_is_inside() {
    Applicability over3 = length(new Span(3, 6.096));
    assertThat(over3.mismatch(rated(BoxBoat.of(3, 1.5, 0.5)))).isEmpty();
    assertThat(over3.mismatch(rated(BoxBoat.of(2.5, 1.2, 0.5))).map(ApplicabilityTest::words))
        .hasValue("the boat is 2.5 m long and it is written for 3 m to under 6.096 m");
    Applicability only3 = length(new Span(3, Double.POSITIVE_INFINITY));
    assertThat(only3.mismatch(rated(BoxBoat.of(2.5, 1.2, 0.5))).map(ApplicabilityTest::words))
        .hasValue("the boat is 2.5 m long and it is written for 3 m and over");
  }

  @Test
  void a_narrow_boat_is_told_its_beam() {
    Applicability broad =
        new Applicability(Span.ALL, new Span(1.1, 3), Set.of(), Set.of(), Span.ALL);
    assertThat(broad.mismatch(rated(BoxBoat.of(3, 1, 0.5))).map(ApplicabilityTest::words))
        .hasValue("the boat is 1 m broad and it is written for 1.1 m to under 3 m");
  }

  @Test
  void a_canoe_is_told_from_an_open_boat() {
    Applicability open =
        new Applicability(Span.ALL, Span.ALL, Set.of(HullKind.OPEN_BOAT), Set.of(), Span.ALL);
    assertThat(open.mismatch(rated(BoxBoat.of(4.5, 0.9, 0.35))).map(ApplicabilityTest::words))
        .hasValue("the boat is a canoe by its form and it is written for open boats");
    assertThat(open.mismatch(rated(BoxBoat.of(3, 1.2, 0.5)))).isEmpty();
  }

  @Test
  void a_rule_for_outboards_has_no_word_for_oars() {
    Applicability motors =
        new Applicability(Span.ALL, Span.ALL, Set.of(), Set.of(DriveKind.OUTBOARD), Span.ALL);
    assertThat(motors.mismatch(rated(BoxBoat.of(3, 1.2, 0.5))).map(ApplicabilityTest::words))
        .hasValue("the boat is rowed or paddled and it is written for boats driven by an outboard");
    assertThat(motors.mismatch(rated(motor(500)))).isEmpty();
  }

  @Test
  void what_nobody_stated_is_taken_as_rowed() {
    Applicability oars =
        new Applicability(Span.ALL, Span.ALL, Set.of(), Set.of(DriveKind.MANUAL), Span.ALL);
    BoxBoat unsaid = BoxBoat.of(3, 1.2, 0.5).driven(new Propulsion.NotStated());
    assertThat(oars.mismatch(rated(unsaid))).isEmpty();
  }

  @Test
  void an_upper_power_itself_is_inside() {
    Applicability weak =
        new Applicability(Span.ALL, Span.ALL, Set.of(), Set.of(), new Span(0, 3000));
    assertThat(weak.mismatch(rated(motor(3000)))).isEmpty();
    assertThat(weak.mismatch(rated(motor(3700))).map(ApplicabilityTest::words))
        .hasValue("the motor gives 3.7 kW and it is written for up to 3 kW");
    Applicability strong =
        new Applicability(Span.ALL, Span.ALL, Set.of(), Set.of(), new Span(2000, 9000));
    assertThat(strong.mismatch(rated(motor(500))).map(ApplicabilityTest::words))
        .hasValue("the motor gives 0.5 kW and it is written for 2 kW and over");
  }

  private static String words(ScopeMismatch why) {
    return FormulaNoteWords.of(new FormulaNote.OutOfScope(why), UnitFormat.METRIC)
        .replaceFirst("^does not apply: ", "");
  }

  private static Applicability length(Span span) {
    return new Applicability(span, Span.ALL, Set.of(), Set.of(), Span.ALL);
  }

  private static BoxBoat motor(double watts) {
    return BoxBoat.of(3, 1.2, 0.5).driven(new Propulsion.Outboard(watts));
  }

  private static RatedBoat rated(BoxBoat boat) {
    return RuleBook.rated(boat.model(), RuleSetFile.cautiousDefault(), List.of());
  }
}
