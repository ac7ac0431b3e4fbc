package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.loadcase.LoadedBoat;

/** Seams of the box of {@link OnPaper} that let water in. */
class LeakingSeamsTest {
  private static final LeakingSeams CHECK = new LeakingSeams(RULES);

  /** Litres in the first half hour, seam by seam. */
  private static LoadedBoat leaking(double chine, double keel) {
    Boat boat =
        OnPaper.boat(100)
            .boat()
            .withOutfit(
                Outfit.NOT_STATED
                    .with(new SeamLeak("port chine", chine / 1000, 1800))
                    .with(new SeamLeak("keel", keel / 1000, 1800)));
    return trial(boat, person(80, 0.3));
  }

  @Test
  void a_tight_boat_and_one_nobody_watched_are_not_asked() {
    assertThat(CHECK.readings(trial(OnPaper.boat(100), person(80, 0.3)))).isEmpty();
    assertThat(CHECK.readings(leaking(0, 0))).isEmpty();
  }

  // A bailer of five litres, 0.6 full, 20 strokes a minute: 60 litres a minute.
  @Test
  void what_puts_the_first_edge_under_is_bailed_at_sixty_litres_a_minute() {
    Boat boat = OnPaper.boat(100).boat().withBailer(0.005);
    LoadedBoat loaded = trial(boat, person(80, 0.3));
    Finding bailed = findings(new BilgeBailing(RULES), loaded).get(0);
    Finding under = findings(new WaterInTheBilge(RULES), loaded).get(0);
    assertThat(value(bailed)).isCloseTo(value(under) / 0.060 * 60, within(1e-6));
    assertThat(bailed.limit()).isEqualTo(20 * 60);
    LoadedBoat can = trial(OnPaper.boat(100).boat(), person(80, 0.3));
    assertThat(value(findings(new BilgeBailing(RULES), can).get(0)))
        .isCloseTo(2.5 * value(bailed), within(1e-6));
  }

  // Six litres in half an hour are 0.2 a minute: 40 litres take 200 minutes.
  @Test
  void forty_litres_are_in_after_their_time() {
    Finding leak = findings(CHECK, leaking(4.5, 1.5)).get(0);
    assertThat(value(leak)).isCloseTo(200 * 60, within(1e-6));
    assertThat(leak.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(leak.note()).isInstanceOf(Note.SeamsLeak.class);
    Note.SeamsLeak note = (Note.SeamsLeak) leak.note();
    assertThat(note.worst()).isEqualTo("port chine");
    assertThat(note.worstShare()).isCloseTo(0.75, within(1e-12));
  }

  // Twenty litres in half an hour fill forty in exactly the hour that is asked.
  @Test
  void a_boat_that_takes_in_more_than_twenty_litres_in_half_an_hour_falls_short() {
    assertThat(findings(CHECK, leaking(19, 0.9)).get(0).outcome()).isEqualTo(Outcome.MEETS);
    assertThat(findings(CHECK, leaking(19, 1.1)).get(0).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // An open box of the same shape with nobody in it never sinks of its own and comes back until an
  // edge is under; twice the leak is half the time.
  @Test
  void at_the_mooring_half_the_leak_lasts_twice_as_long() {
    List<Finding> slow = findings(CHECK, leaking(4, 2));
    List<Finding> fast = findings(CHECK, leaking(8, 4));
    assertThat(slow.get(1).question().check()).isEqualTo(CheckId.LEAK_AT_THE_MOORING);
    assertThat(value(slow.get(1))).isCloseTo(2 * value(fast.get(1)), within(1e-6));
    assertThat(value(slow.get(1))).isGreaterThan(value(slow.get(0)));
  }
}
