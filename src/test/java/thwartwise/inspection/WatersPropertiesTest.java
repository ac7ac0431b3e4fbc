package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.SomeWaters;
import thwartwise.checks.FindingText;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

/** What must hold of any recommendation, whatever the waters. */
class WatersPropertiesTest {
  private static Recommendation on(SomeWaters waters) {
    RuleBook own = RuleBook.of(RuleSetFile.cautiousDefault());
    return QuickAnswer.recommended(
        PlainHulls.pram().withWaters(waters.waters()), own, PlainHulls.TODAY);
  }

  private static SomeWaters sheltered() {
    return SomeWaters.sheltered();
  }

  @Test
  void worse_waters_never_raise_people_crew_or_load() {
    List<SomeWaters> worsening =
        List.of(
            sheltered(),
            sheltered().waves(0.22),
            sheltered().waves(0.26),
            sheltered().waves(0.26).celsius(8),
            sheltered().waves(0.26).celsius(8).wash(),
            sheltered().waves(0.26).celsius(8).wash().wind(9));
    for (int i = 1; i < worsening.size(); i++) {
      noMore(on(worsening.get(i - 1)), on(worsening.get(i)));
    }
  }

  /** A property that holds because nothing ever changes would be worth nothing. */
  @Test
  void wash_does_lower_the_crew_of_a_pram() {
    double sheltered = on(sheltered()).crew();
    assertThat(on(sheltered().wash()).crew()).isLessThan(sheltered);
  }

  @Test
  void waters_outside_the_model_withhold_everything_and_say_so_first() {
    Recommendation r = on(sheltered().breaking());
    assertThat(r.withheld()).isTrue();
    assertThat(r.people()).isZero();
    assertThat(r.crew()).isZero();
    assertThat(r.load()).isZero();
    assertThat(r.crewLimits()).isEmpty();
    assertThat(FindingText.refusals(r.reasons()).get(0)).startsWith("the waves break");
  }

  private static void noMore(Recommendation before, Recommendation after) {
    assertThat(after.people()).isLessThanOrEqualTo(before.people());
    assertThat(after.crew()).isLessThanOrEqualTo(before.crew());
    assertThat(after.load()).isLessThanOrEqualTo(before.load());
    assertThat(after.staysUpWith()).isLessThanOrEqualTo(before.staysUpWith());
    assertThat(after.holdsUpWhenSwamped()).isLessThanOrEqualTo(before.holdsUpWhenSwamped());
  }
}
