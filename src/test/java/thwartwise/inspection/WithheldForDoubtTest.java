package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.checks.FindingText;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;
import thwartwise.sampleboats.BoatEdits;

class WithheldForDoubtTest {
  private static final Boat LIGHT = PlainHulls.pram().withHullMass(5);

  private static Report inspected(Boat boat) {
    RuleBook book = RuleBook.of(RuleSetFile.cautiousDefault());
    return Inspection.withoutAdvice(boat, book, PlainHulls.TODAY);
  }

  @Test
  void a_pram_of_five_kilograms_is_recommended_for_nobody() {
    Report report = inspected(LIGHT);
    Recommendation answer = report.recommendation();
    assertThat(answer.withheld()).isTrue();
    assertThat(answer.people()).isZero();
    assertThat(answer.load()).isZero();
    assertThat(answer.crewLimits()).isEmpty();
    assertThat(FindingText.refusals(answer.reasons()))
        .containsExactly(
            "a measurement looks wrong: mass of the bare hull. Measure it again; if it is right,"
                + " keep it with a reason (\"kept\", about \"hull-mass\")");
    assertThat(report.isUnrestricted()).isFalse();
  }

  /** The shell of 50 kg/m3 would lift by itself what 40 kg of plywood never could. */
  @Test
  void a_swamped_density_no_material_has_is_recommended_for_nobody() {
    Boat foam = BoatEdits.withDensity(PlainHulls.pram(), 50).withChambers(List.of());
    Recommendation answer = inspected(foam).recommendation();
    assertThat(answer.people()).isZero();
    assertThat(FindingText.refusals(answer.reasons()))
        .contains(
            "a measurement looks wrong: swamped density of the hull. Measure it again; if it is"
                + " right, keep it with a reason (\"kept\", about \"density\")");
  }

  @Test
  void kept_with_a_reason_it_is_recommended_as_it_was_measured() {
    Boat kept =
        LIGHT.withConfirmedMeasurements(
            List.of(new ConfirmedMeasurement("hull-mass", "balsa, weighed twice")));
    assertThat(FindingText.refusals(inspected(kept).recommendation().reasons())).isEmpty();
    assertThat(inspected(kept).recommendation().withheld()).isFalse();
  }
}
