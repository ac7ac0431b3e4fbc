package thwartwise.plausibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Craft;
import thwartwise.boat.Kept;
import thwartwise.files.RuleSetFile;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;

/** A tank across a box of 3 by 1.2 by 0.5 m, 1800 litres in all. */
class ChamberDoubtsTest {
  private static Boat tank(double length, double litres) {
    Box box = new Box(new Span(0, length), Span.ALL, Span.ALL);
    return BoxBoat.of(3, 1.2, 0.5)
        .hull(80, 0.2)
        .weightlessShell()
        .chamber(BoxBoat.proven("tank", box, Optional.of(litres / 1000)))
        .boat();
  }

  private static List<PlausibilityFinding> doubts(Boat boat) {
    return Plausibility.of(Craft.of(boat, BoxBoat.TODAY), RuleSetFile.cautiousDefault()).stream()
        .filter(f -> f.id().topic() == Topic.CHAMBER)
        .toList();
  }

  @Test
  void more_than_twice_what_its_walls_hold_withholds_the_answer() {
    assertThat(doubts(tank(0.5, 599))).isEmpty();
    PlausibilityFinding doubt = doubts(tank(0.5, 620)).get(0);
    assertThat(doubt.withholds()).isTrue();
    assertThat(doubt.words())
        .isEqualTo(
            "chamber \"tank\", litres poured into it: 620.0 litres, must not exceed 599.9 litres;"
                + " measure its walls, or pour again and count");
  }

  @Test
  void so_does_more_than_the_whole_boat_holds() {
    assertThat(doubts(tank(1.8, 1790))).isEmpty();
    assertThat(doubts(tank(1.8, 1830))).hasSize(1);
  }

  @Test
  void kept_with_a_reason_it_stands() {
    Boat kept = tank(0.5, 620).keeping(List.of(new Kept("chamber:tank", "poured twice")));
    assertThat(doubts(kept)).noneMatch(PlausibilityFinding::withholds);
  }
}
