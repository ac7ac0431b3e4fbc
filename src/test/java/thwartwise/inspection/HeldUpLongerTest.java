package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.crew.AppliedRules;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.HeldUpFor;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

/** Chambers that leak hold fewer people up for ten hours than for one. */
class HeldUpLongerTest {
  /** Each chamber let in 0.95 litres in 20 minutes. */
  private static Boat leaking() {
    SealTest test = new SealTest(PlainHulls.TODAY, "held under", 20, 0.95, "me", Optional.of(0.2));
    Boat skiff = PlainHulls.skiff();
    return skiff.withChambers(
        skiff.chambers().stream()
            .map(c -> c.filledWith(new Filling.Air(Seal.PROVEN, Optional.of(test))))
            .toList());
  }

  @Test
  void the_number_of_people_is_of_the_time_for_which_they_must_be_held_up() {
    Recommendation hour = recommended(HeldUpFor.minutes(60));
    Recommendation tenHours = recommended(HeldUpFor.minutes(600));
    assertThat(tenHours.people()).isLessThan(hour.people());
    assertThat(tenHours.crew()).isLessThan(hour.crew());
    AppliedRules applied =
        new AppliedRules(BoatModel.of(leaking(), PlainHulls.TODAY), HeldUpFor.minutes(600));
    Limits search =
        new Limits(
            new CrewAssessment(applied.model(), applied.inForce()),
            applied.inForce(),
            applied.caps());
    assertThat(tenHours.people()).isEqualTo(applied.recommendation(search).people());
    assertThat(tenHours.load()).isEqualTo(applied.recommendation(search).load());
  }

  /** With no other set by which the search is run a second time. */
  @Test
  void so_it_is_where_our_own_set_wants_it() throws IOException {
    try (InputStream in =
        RuleBook.class.getResourceAsStream("/thwartwise/rules/cautious-default.json")) {
      String own = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String longer =
          own.replaceFirst(
              "\"swamped-minutes\": \\{ \"value\": 60", "\"swamped-minutes\": { \"value\": 600");
      assertThat(longer).isNotEqualTo(own);
      RuleBook alone = RuleBook.of(RuleSetFile.parse(longer, "longer"));
      assertThat(recommended(alone).people())
          .isEqualTo(recommended(HeldUpFor.minutes(600)).people());
    }
  }

  private static Recommendation recommended(RuleBook book) {
    return Inspection.withoutAdvice(leaking(), book, PlainHulls.TODAY).recommendation();
  }
}
