package thwartwise.rules;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.UnitFormat;
import thwartwise.report.ExcludedUseWords;
import thwartwise.report.FormulaNoteWords;
import thwartwise.rules.CapacityFigure.FigureStatus;

class RuleBookTest {
  private static final RuleSet OWN = RuleSetFile.cautiousDefault();
  private static final BoatModel BOAT = BoxBoat.of(3, 1.2, 0.5).model();

  @Test
  void a_stricter_limit_comes_into_force_with_the_name_of_whose_it_is() {
    RuleSet inForce = book(pond("", 0.30)).inForce(BOAT);
    assertThat(inForce.value("freeboard-at-rest")).isEqualTo(0.30);
    assertThat(inForce.limit("freeboard-at-rest").cited())
        .isEqualTo("Pond rules: the warden (judgement)");
    assertThat(inForce.value("swamped-heel")).isEqualTo(OWN.value("swamped-heel"));
  }

  @Test
  void a_laxer_limit_changes_nothing() {
    assertThat(book(pond("", 0.05)).inForce(BOAT)).isEqualTo(OWN);
  }

  @Test
  void a_set_that_stands_beside_tightens_nothing() {
    RuleBook book = book(pond("\"takesPart\": false,", 0.30));
    assertThat(book.inForce(BOAT)).isEqualTo(OWN);
    assertThat(book.figures(BOAT)).allMatch(f -> f.standing() == FigureStatus.BESIDE);
    assertThat(book.tightening(BOAT)).isEmpty();
  }

  @Test
  void a_set_that_does_not_apply_gives_its_reason_and_no_number() {
    RuleBook book = book(pond("\"applies\": { \"length\": [4, 6] },", 0.30));
    assertThat(book.inForce(BOAT)).isEqualTo(OWN);
    assertThat(book.figures(BOAT))
        .singleElement()
        .satisfies(f -> assertThat(f.standing()).isEqualTo(FigureStatus.DOES_NOT_APPLY))
        .satisfies(f -> assertThat(f.value()).isNaN())
        .satisfies(f -> assertThat(f.takesPart()).isFalse())
        .satisfies(
            f ->
                assertThat(FormulaNoteWords.of(f.note(), UnitFormat.METRIC))
                    .isEqualTo(
                        "does not apply: the boat is 3 m long and it is written for 4 m to under"
                            + " 6 m"));
  }

  @Test
  void a_limit_is_shown_beside_ours() {
    assertThat(
            FormulaNoteWords.of(
                book(pond("", 0.30)).figures(BOAT).get(0).note(), UnitFormat.METRIC))
        .isEqualTo("0.3 m; ours is 0.2 m, which this tightens");
    assertThat(
            FormulaNoteWords.of(
                book(pond("", 0.10)).figures(BOAT).get(0).note(), UnitFormat.METRIC))
        .isEqualTo("0.1 m; ours is 0.2 m, which is no laxer");
  }

  @Test
  void a_boat_outside_our_own_set_is_not_covered() {
    BoatModel barge = BoxBoat.of(7, 2, 0.6).model();
    assertThat(words(RuleBook.of(OWN), barge))
        .isEqualTo(
            "not covered by any rule set at hand: the boat is 7 m long and it is written for 2 m to"
                + " under 6.1 m; so nothing is recommended. Why so: a boat under 2 m is a toy or a"
                + " tender of another kind, 20 ft is where 33 CFR 183 subpart C ends, and over"
                + " 15 hp a boat of this size planes, which is not worked out here (judgement)");
    assertThat(words(book(pond("", 0.3)), barge)).startsWith("not covered by our own limits: ");
    assertThat(RuleBook.of(OWN).notCovered(BOAT)).isEmpty();
  }

  private static String words(RuleBook book, BoatModel model) {
    return ExcludedUseWords.of(book.notCovered(model).orElseThrow(), UnitFormat.METRIC);
  }

  @Test
  void sets_given_later_stand_behind_those_there_were() {
    RuleSet pond = RuleSetFile.alternative(pond("", 0.3), "pond", OWN);
    assertThat(RuleSetFile.bundledRuleBook().and(List.of(pond)).others()).endsWith(pond).hasSize(6);
  }

  private static RuleBook book(String json) {
    return RuleBook.of(OWN).and(List.of(RuleSetFile.alternative(json, "pond", OWN)));
  }

  private static String pond(String more, double freeboard) {
    return """
        { "format": "thwartwise/rules/1", "name": "Pond rules", "edition": "2026",
          "appliesTo": "boats on the pond", %s
          "limits": { "freeboard-at-rest":
            { "value": %s, "unit": "m", "basis": "judgement", "source": "the warden" } } }
        """
        .formatted(more, freeboard);
  }
}
