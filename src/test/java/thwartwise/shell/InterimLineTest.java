package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.measure.UnitSystem;
import thwartwise.record.SampleBoats;
import thwartwise.walk.InterimSummary;
import thwartwise.walk.engine.ReplayResult.PartialBoat;

class InterimLineTest {
  private static final Boat BOAT = SampleBoats.plain();

  private static Optional<PartialBoat> known(Boat boat) {
    return Optional.of(new PartialBoat(boat, UnitSystem.METRIC));
  }

  /** Tells how many pieces of kit there are. */
  private static Optional<String> kit(PartialBoat known) {
    return Optional.of("kit: " + known.boat().kit().size());
  }

  /** A question never waits longer than a blink; a test does. */
  private static List<String> awaited(InterimLine line) throws InterruptedException {
    for (int i = 0; i < 50; i++) {
      List<String> due = line.due();
      if (!due.isEmpty()) {
        return due;
      }
      Thread.sleep(20);
    }
    return List.of();
  }

  @Test
  void the_first_line_says_what_such_lines_are() throws Exception {
    try (InterimLine line = new InterimLine(InterimLineTest::kit)) {
      line.known(known(BOAT));
      assertThat(awaited(line)).containsExactly(InterimSummary.FIRST, "kit: 2");
      line.known(known(BOAT.withKit(List.of())));
      assertThat(awaited(line)).containsExactly("kit: 0");
    }
  }

  @Test
  void the_same_is_not_said_twice() throws Exception {
    try (InterimLine line = new InterimLine(known -> Optional.of("still afloat"))) {
      line.known(known(BOAT));
      assertThat(awaited(line)).hasSize(2);
      line.known(known(BOAT));
      assertThat(line.due()).isEmpty();
      line.known(known(BOAT.withKit(List.of())));
      assertThat(line.due()).isEmpty();
    }
  }

  @Test
  void where_nothing_is_known_or_something_goes_wrong_nothing_is_said() {
    Function<PartialBoat, Optional<String>> wrong =
        known -> {
          throw new IllegalStateException("no such boat");
        };
    try (InterimLine line = new InterimLine(wrong)) {
      line.known(Optional.empty());
      assertThat(line.due()).isEmpty();
      line.known(known(BOAT));
      assertThat(line.due()).isEmpty();
      assertThat(line.due()).isEmpty();
    }
  }

  @Test
  void what_is_not_ready_holds_up_no_question_and_is_said_later() throws Exception {
    CountDownLatch ready = new CountDownLatch(1);
    Function<PartialBoat, Optional<String>> slow =
        known -> {
          try {
            ready.await();
          } catch (InterruptedException stopped) {
            return Optional.empty();
          }
          return kit(known);
        };
    try (InterimLine line = new InterimLine(slow)) {
      line.known(known(BOAT));
      assertThat(line.due()).isEmpty();
      ready.countDown();
      assertThat(awaited(line)).containsExactly(InterimSummary.FIRST, "kit: 2");
    }
  }
}
