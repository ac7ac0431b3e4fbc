package thwartwise.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Craft;
import thwartwise.boat.Place;
import thwartwise.boat.Posture;
import thwartwise.checks.Trial;
import thwartwise.files.RuleSetFile;
import thwartwise.geometry.Span;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** Two equal seats along the sides: who sits on one of them alone heels the boat. */
class SideSeatsRecommendedTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final Place PORT = seat("port side seat", new Span(0.28, 0.40));
  private static final Place STARBOARD = seat("starboard side seat", new Span(-0.40, -0.28));

  private static Place seat(String name, Span across) {
    return new Place(name, new Span(1.0, 1.9), across, 0.25, 2, Posture.SITTING);
  }

  private static Boat skiff(Place... places) {
    return PlainHulls.skiff().withPlaces(List.of(places));
  }

  private static Recommendation of(Boat boat) {
    return Inspection.of(boat, RuleBook.of(RULES), PlainHulls.TODAY).recommendation();
  }

  // The same two people were told "up to 99 kg each", both on one seat, when a place had no side.
  @Test
  void two_adults_on_one_side_seat_are_excluded_or_not_recommended() {
    Recommendation r = of(skiff(PORT, STARBOARD));
    for (String side : List.of(PORT.name(), STARBOARD.name())) {
      boolean allowed =
          r.crewLimits().stream().anyMatch(limit -> limit.people() == 2)
              && !r.excludedSeatings().contains(List.of(side, side));
      assertThat(allowed).as("two on the %s: %s", side, r.crewLimits()).isFalse();
    }
  }

  @Test
  void two_adults_on_the_port_seat_lay_the_boat_over() {
    Craft craft = Craft.of(skiff(PORT, STARBOARD), PlainHulls.TODAY);
    Judge judge = new Judge(craft, RULES);
    assertThat(judge.meetsAll(new Seating(List.of(2, 0)), 95)).isFalse();
    List<Trial> trials = judge.trials(new Seating(List.of(2, 0)), 95);
    assertThat(judge.notMet(trials))
        .extracting(b -> b.reading().check())
        .contains("freeboard at rest");
  }

  @Test
  void the_boat_in_a_mirror_gets_the_mirrored_answer() {
    Place bench = seat("bench", new Span(0.28, 0.40));
    Recommendation one = of(skiff(bench, middle()));
    Recommendation other = of(skiff(mirrored(bench), middle()));
    assertThat(one.withheld()).isFalse();
    assertThat(other.people()).isEqualTo(one.people());
    assertThat(other.crew()).isEqualTo(one.crew());
    assertThat(other.load()).isEqualTo(one.load());
    assertThat(sorted(other)).isEqualTo(sorted(one)).isNotEmpty();
  }

  private static Place middle() {
    return new Place("middle thwart", 2.2, 0.25, 0.40, 1);
  }

  private static Place mirrored(Place p) {
    return new Place(p.name(), p.along(), p.across().mirrored(), p.z(), p.people(), p.posture());
  }

  private static Set<String> sorted(Recommendation r) {
    return r.excludedSeatings().stream()
        .map(s -> s.stream().sorted().collect(Collectors.joining(" + ")))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
