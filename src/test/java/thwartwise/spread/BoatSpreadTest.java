package thwartwise.spread;

import static thwartwise.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Progress;
import thwartwise.boat.Boat;
import thwartwise.crew.Lazy;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.inspection.PlainHulls;
import thwartwise.inspection.QuickAnswer;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

class BoatSpreadTest {
  private static final RuleBook BOOK = RuleBook.of(RuleSetFile.cautiousDefault());
  private static final RuleSet SPREADS = RuleSetFile.measuringSpreads();

  private static BoatSpread of(Boat boat, RuleSet spreads) {
    return Inspection.spreadOf(boat, BOOK, spreads, Set.of(), PlainHulls.TODAY, Progress.UNHEARD)
        .orElseThrow();
  }

  private static RuleSet with(String way, double value) {
    Map<String, Limit> all = new LinkedHashMap<>(SPREADS.limits());
    Limit limit = SPREADS.limit(way);
    all.put(way, new Limit(value, limit.unit(), limit.basis(), limit.source()));
    return new RuleSet("test", "1", "", all);
  }

  @Test
  void a_boat_with_room_to_spare_is_sure_and_never_more_than_recommended() {
    BoatSpread pram = PRAM.get().spread();
    int recommended = QuickAnswer.of(PlainHulls.pram(), BOOK, PlainHulls.TODAY).people();
    assertThat(pram.recommended()).isEqualTo(recommended).isEqualTo(1);
    assertThat(pram.isSure()).isTrue();
    assertThat(pram.isLowered()).isFalse();
    assertThat(pram.share(1)).isGreaterThan(0.99);
    assertThat(pram.share(9)).as("of a crew nobody looked at").isZero();
    assertThat(pram.figures()).isNotEmpty().allMatch(f -> f.share() >= pram.share(1));
    assertThat(pram.figures())
        .as("no range is narrower than two spreads to either side")
        .allMatch(f -> f.range().length() >= 4 * f.spread() * (1 - 1e-9));
    assertThat(PRAM.get().steps()).as("evaluations told of").isEqualTo(PRAM.get().total());
    assertThat(PRAM.get().total()).as("two an input and one").isEqualTo(2 * pram.inputs() + 1);
  }

  /** Nobody knows how high the weight of this hull lies: by half a metre either way. */
  @Test
  void a_boat_of_which_too_little_is_known_is_not_sure_and_says_what_to_measure() {
    BoatSpread pram = of(PlainHulls.pram(), with("centre-height-estimated", 1.0));

    assertThat(pram.share(1)).isLessThan(BoatSpread.ENOUGH);
    assertThat(pram.recommended()).isZero();
    assertThat(pram.isLowered()).isTrue();
    assertThat(pram.again().get(0).kind()).isEqualTo(InputKind.HULL_CENTRE_HEIGHT);
    assertThat(pram.again().get(0).people()).isEqualTo(1);
  }

  /** Moved by fifty metres either way the weight lies outside the boat: there is no figure left. */
  @Test
  void figures_that_no_boat_drawn_has_are_not_known_and_nobody_is_sure() {
    BoatSpread pram = of(PlainHulls.pram(), with("centre-estimated", 50));

    assertThat(pram.recommended()).isZero();
    assertThat(pram.asLoaded()).anyMatch(f -> !f.isKnown());
  }

  @Test
  void the_answer_is_the_same_whatever_the_number_of_threads() {
    BoatSpread one = inPoolOf(1).spread();
    BoatSpread many = PRAM.get().spread();

    assertThat(many.chances()).isEqualTo(one.chances());
    assertThat(many.figures()).isEqualTo(one.figures());
  }

  /** The pram's spread, with the steps that were reported and how many there were to be. */
  private record CountedSpread(BoatSpread spread, int steps, int total) {
    static CountedSpread of(Boat boat) {
      AtomicInteger steps = new AtomicInteger();
      AtomicInteger total = new AtomicInteger();
      Progress counted =
          (stage, done, of) -> {
            if (stage == Progress.Stage.SPREAD) {
              steps.accumulateAndGet(done, Math::max);
              total.set(of);
            }
          };
      BoatSpread spread =
          Inspection.spreadOf(boat, BOOK, SPREADS, Set.of(), PlainHulls.TODAY, counted)
              .orElseThrow();
      return new CountedSpread(spread, steps.get(), total.get());
    }
  }

  /** In a pool of five threads. */
  private static final Supplier<CountedSpread> PRAM = Lazy.of(() -> inPoolOf(5));

  private static CountedSpread inPoolOf(int threads) {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return CompletableFuture.supplyAsync(() -> CountedSpread.of(PlainHulls.pram()), pool).join();
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void a_boat_in_which_nobody_is_recommended_is_told_of_with_one_adult() {
    BoatSpread bare = of(PlainHulls.pram().withChambers(List.of()), SPREADS);

    assertThat(bare.recommended()).isZero();
    assertThat(bare.isLowered()).isFalse();
    assertThat(bare.share(1)).as("a pram without any lift when swamped").isZero();
  }

  @Test
  void a_boat_that_cannot_be_judged_has_no_spread() {
    assertThat(
            Inspection.spreadOf(
                TextbookBox.weighing(80),
                BOOK,
                SPREADS,
                Set.of(),
                PlainHulls.TODAY,
                Progress.UNHEARD))
        .as("a box is no boat that is covered")
        .isEmpty();
  }
}
