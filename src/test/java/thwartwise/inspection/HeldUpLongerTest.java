package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.crew.AppliedRules;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** Chambers that leak hold fewer people up for ten hours than for one. */
class HeldUpLongerTest {
  private static final RuleSet OWN = RuleSetFile.cautiousDefault();

  /** Each chamber let in 0.95 litres in 20 minutes. */
  private static Boat leaking() {
    SealTest test = new SealTest(PlainHulls.TODAY, "held under", 20, 0.95, "me", Optional.of(0.2));
    Boat skiff = PlainHulls.skiff();
    return skiff.withChambers(
        skiff.chambers().stream()
            .map(c -> c.filledWith(new Filling.Air(Seal.PROVEN, Optional.of(test))))
            .toList());
  }

  private static RuleBook minutes(int minutes) {
    RuleSet set =
        RuleSetFile.alternative(
            """
            { "format": "thwartwise/rules/1", "name": "lake", "edition": "1", "appliesTo": "all",
              "limits": { "swamped-minutes": { "value": %d, "unit": "min", "basis": "judgement",
                "source": "few pass by" } } }
            """
                .formatted(minutes),
            "lake",
            OWN);
    return new RuleBook(OWN, List.of(set));
  }

  @Test
  void the_number_of_people_is_of_the_time_for_which_they_must_be_held_up() {
    Recommendation hour = recommended(minutes(60));
    Recommendation tenHours = recommended(minutes(600));
    assertThat(tenHours.people()).isLessThan(hour.people());
    assertThat(tenHours.crew()).isLessThan(hour.crew());
    AppliedRules applied =
        new AppliedRules(BoatModel.of(leaking(), PlainHulls.TODAY), minutes(600));
    Limits search =
        new Limits(
            new CrewAssessment(applied.model(), applied.inForce()),
            applied.inForce(),
            applied.caps());
    assertThat(tenHours.people()).isEqualTo(applied.recommendation(search).people());
    assertThat(tenHours.load()).isEqualTo(applied.recommendation(search).load());
  }

  private static Recommendation recommended(RuleBook book) {
    return Inspection.withoutAdvice(leaking(), book, PlainHulls.TODAY).recommendation();
  }
}
