package thwartwise.inspection;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import thwartwise.TestThread;
import thwartwise.boat.Boat;
import thwartwise.crew.Lazy;
import thwartwise.crew.Recommendation;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.rules.RuleBook;

/**
 * Reports on boats that several tests ask about, each worked out once a run and without advice. For
 * reading only.
 */
public final class InspectedBoats {
  private static final RuleBook OWN = RuleBook.of(RuleSetFile.cautiousDefault());
  private static final RuleBook SHIPPED = RuleSetFile.bundledRuleBook();

  private static final Map<Boat, Supplier<Report>> UNDER_SHIPPED = new ConcurrentHashMap<>();

  private static final Map<Boat, Supplier<Recommendation>> RECOMMENDED = new ConcurrentHashMap<>();

  private InspectedBoats() {}

  /** A recommendation under our own rule set, without the findings, which take as long again. */
  public static Recommendation recommendedUnderOwn(Boat boat) {
    return RECOMMENDED
        .computeIfAbsent(
            boat, b -> Lazy.of(() -> QuickAnswer.recommended(b, OWN, PlainHulls.TODAY)))
        .get();
  }

  /** Under every rule set that comes with the program. */
  public static Report underShipped(Boat boat) {
    return UNDER_SHIPPED.computeIfAbsent(boat, InspectedBoats::inspected).get();
  }

  /** A test of another boat need not wait until this one is worked out. */
  private static Supplier<Report> inspected(Boat boat) {
    return Lazy.of(
        () -> TestThread.of(() -> Inspection.withoutAdvice(boat, SHIPPED, PlainHulls.TODAY)));
  }
}
