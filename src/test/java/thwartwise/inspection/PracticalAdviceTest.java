package thwartwise.inspection;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.advice.AdviceOrder;
import thwartwise.advice.AdviceOrder.AdviceCandidate;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.Progress;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Changes;
import thwartwise.remedy.Deed;
import thwartwise.report.DeedWords;
import thwartwise.rules.RuleBook;

/** Advice as a person would give it, on boats like a shoe box whose ends may be chambers. */
class PracticalAdviceTest {
  private static final RuleBook OWN = RuleBook.of(RuleSetFile.cautiousDefault());
  private static final Span BOW = new Span(2.8, 3.4);
  private static final Span STERN = new Span(0, 0.6);

  private static BoxBoat bare() {
    return BoxBoat.of(3.4, 1.3, 0.5)
        .hull(60, 0.2)
        .place("aft thwart", 1.0, 0.25, 0.4, 1)
        .place("fore thwart", 2.2, 0.25, 0.4, 1);
  }

  private static BoxBoat crewed(BoxBoat boat) {
    return boat.aboard("Ann", 90, "aft thwart", 0).aboard("Bob", 80, "fore thwart", 0);
  }

  private static Report inspected(BoxBoat boat) {
    return Inspection.of(boat.boat(), OWN, BoxBoat.TODAY, Progress.UNHEARD);
  }

  private static List<AdvicePiece> pieces(Report report) {
    return report.advice().pieces();
  }

  private static List<String> deeds(Report report) {
    return pieces(report).stream().map(p -> DeedWords.of(p.deed()).deed()).toList();
  }

  /** Foam along the sides carries as many adults; a test takes an hour. */
  @Test
  void a_leak_test_comes_before_foam_that_puts_as_much_right() {
    Report report = inspected(crewed(bare()).claimed("bow", BOW).proven("stern", STERN));
    assertThat(deeds(report).get(0)).isEqualTo("Prove the bow with a leak test");
    assertThat(deeds(report).get(1)).contains("foam along both sides");
    assertThat(pieces(report).get(1).people()).isEqualTo(pieces(report).get(0).people());
    assertThat(pieces(report).subList(0, 2)).allMatch(p -> !p.corrects().isEmpty());
  }

  /** With foam under one thwart only one of the two aboard may go: the loading is not right. */
  @Test
  void what_cures_a_part_of_the_loading_of_today_does_not_put_it_right() {
    Report report = inspected(crewed(bare()).claimed("bow", BOW).proven("stern", STERN));
    List<AdvicePiece> half = pieces(report).stream().filter(p -> p.people() == 1).toList();
    assertThat(half).isNotEmpty().allMatch(p -> p.corrects().isEmpty());
  }

  /** Without the cool box the empty boat no longer sinks, and still nobody may go. */
  @Test
  void while_nobody_may_go_nothing_is_told_that_lets_nobody_go() {
    Report report =
        inspected(
            crewed(bare())
                .weight("cool box", 25, Vector3.of(0.3, 0, 0.15))
                .weight("folded mat", 2, Vector3.of(1.0, 0, 0.1))
                .weight("rolled mat", 2, Vector3.of(2.2, 0, 0.1)));
    assertThat(report.recommendation().crew()).isZero();
    assertThat(pieces(report)).isNotEmpty().allMatch(p -> p.crew() > 0);
    assertThat(deeds(report)).noneMatch(d -> d.endsWith("ashore") || d.startsWith("Anchor"));
  }

  /** Things stand wherever foam would fit but in the stern: test and foam cure only together. */
  private static BoxBoat crammed() {
    BoxBoat boat =
        bare()
            .claimed("bow", BOW)
            .weight("folded mat", 2, Vector3.of(1.0, 0, 0.1))
            .weight("rolled mat", 2, Vector3.of(2.2, 0, 0.1));
    for (double x : new double[] {0.64, 1.02, 1.7, 2.38, 2.76}) {
      boat =
          boat.weight("fender at " + x, 1, Vector3.of(x, 0.6, 0.4))
              .weight("low fender at " + x, 1, Vector3.of(x, 0.6, 0.12));
    }
    return boat;
  }

  @Test
  void two_together_are_tried_when_neither_alone_is_enough() {
    Report report = inspected(crammed());
    assertThat(deeds(report))
        .containsExactly(
            "Prove the bow with a leak test, and add 344 litres of closed-cell foam in the stern");
    AdvicePiece pair = pieces(report).get(0);
    assertThat(pair.effort()).isEqualTo(Effort.AN_AFTERNOON);
    assertThat(pair.people()).isEqualTo(2);
    assertThat(singly()).hasSize(2).containsOnly(0.0);
  }

  /** What each of the two buys by itself, kg of people. */
  private static List<Double> singly() {
    BoatModel model = crammed().model();
    return Changes.toTheBoat(model, BoxBoat.TODAY).stream()
        .filter(c -> c.topic().startsWith("prove") || c.topic().equals("foam in the stern"))
        .map(c -> QuickAnswer.of(c.boat(), OWN, BoxBoat.TODAY).crew())
        .toList();
  }

  @Test
  void no_pair_is_tried_where_one_thing_is_enough() {
    Report report = inspected(bare().claimed("bow", BOW).proven("stern", STERN));
    assertThat(pieces(report)).noneMatch(p -> p.deed() instanceof Deed.DeedPair);
  }

  private static AdviceCandidate candidate(Deed deed, Effort effort, int people, boolean right) {
    return new AdviceCandidate(
        new AdvicePiece(
            deed, effort, people, 10, 10, Optional.empty(), List.of(), List.of(), List.of()),
        null,
        right);
  }

  @Test
  void what_puts_right_comes_first_by_ease_and_then_what_buys_most() {
    Deed test = new Deed.ProveChambers(List.of(new Deed.ProvenChamber("bow", false)), false);
    Deed foam = new Deed.AddFoam(0.05, "in the stern", List.of(), false);
    Deed move = new Deed.MoveKit("battery", Deed.Near.UNDER, "thwart", 1, true);
    Deed leave = new Deed.LeaveKit("cool box", Deed.Drive.NONE, "");
    Deed leaveDrive = new Deed.LeaveKit("battery", Deed.Drive.STOPS, "motor");
    List<AdviceCandidate> inOrder =
        List.of(
            candidate(leave, Effort.NONE, 0, true),
            candidate(test, Effort.AN_HOUR, 0, true),
            candidate(leaveDrive, Effort.NONE, 1, true),
            candidate(move, Effort.AN_AFTERNOON, 0, true),
            candidate(foam, Effort.AN_AFTERNOON, 2, true),
            candidate(foam, Effort.AN_AFTERNOON, 2, false),
            candidate(test, Effort.AN_HOUR, 1, false),
            candidate(foam, Effort.AN_AFTERNOON, 1, false));
    List<AdviceCandidate> shuffled = new ArrayList<>(inOrder);
    Collections.reverse(shuffled);
    shuffled.sort(AdviceOrder.FIRST_TOLD_FIRST);
    assertThat(shuffled).containsExactlyElementsOf(inOrder);
  }
}
