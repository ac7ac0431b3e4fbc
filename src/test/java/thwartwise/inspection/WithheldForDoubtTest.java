package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Kept;
import thwartwise.files.RuleSetFile;
import thwartwise.rules.RuleBook;

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
    assertThat(answer.reasons())
        .containsExactly(
            "a measurement looks wrong: mass of the bare hull. Measure it again; if it is right,"
                + " keep it with a reason (\"kept\", about \"hull-mass\")");
    assertThat(report.nothingHoldsBack()).isFalse();
  }

  @Test
  void kept_with_a_reason_it_is_recommended_as_it_was_measured() {
    Boat kept = LIGHT.keeping(List.of(new Kept("hull-mass", "balsa, weighed twice")));
    assertThat(inspected(kept).recommendation().reasons()).isEmpty();
    assertThat(inspected(kept).recommendation().withheld()).isFalse();
  }
}
