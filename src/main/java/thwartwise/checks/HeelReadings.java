package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Equilibria;
import thwartwise.loadcase.FarthestOff;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.LowestEdge;
import thwartwise.loadcase.StreamHead;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Readings of every check that moves people: a pose exists, heel is within the offset-load limit,
 * and some freeboard is left; the worst of all the ways the move can be made.
 */
final class HeelReadings {
  private final RuleSet rules;
  private final double share;
  private final StreamHead head;

  HeelReadings(RuleSet rules) {
    this(rules, 1);
  }

  /** The readings of a boat one of whose ends meets a current. */
  HeelReadings(RuleSet rules, StreamHead head) {
    this(rules, 1, head);
  }

  /**
   * @param share of the offset-load limit that the heel may reach
   */
  HeelReadings(RuleSet rules, double share) {
    this(rules, share, StreamHead.NONE);
  }

  private HeelReadings(RuleSet rules, double share, StreamHead head) {
    this.rules = rules;
    this.share = share;
    this.head = head;
  }

  /** Two readings, heel and freeboard left; none for a boat without people to move. */
  List<CheckReading> readings(CheckId check, List<LoadedBoat> ways, String... things) {
    List<CheckReading> heels = new ArrayList<>();
    List<CheckReading> freeboards = new ArrayList<>();
    for (LoadedBoat way : FarthestOff.of(ways)) {
      if (way.isOutdoneAfloat()) {
        continue;
      }
      Equilibria rest = way.atRest();
      heels.add(heel(CheckQuestion.of(check, Measure.HEEL, things), way, rest));
      freeboards.add(freeboard(CheckQuestion.of(check, Measure.FREEBOARD, things), way, rest));
      if (way.isHurried() && isAnyNotMet(heels) && isAnyNotMet(freeboards)) {
        break;
      }
    }
    List<CheckReading> worst = new ArrayList<>();
    heels.stream().min(CheckReading.WORST_FIRST).ifPresent(worst::add);
    freeboards.stream().min(CheckReading.WORST_FIRST).ifPresent(worst::add);
    return worst;
  }

  private static boolean isAnyNotMet(List<CheckReading> readings) {
    return readings.stream().anyMatch(r -> !r.met());
  }

  private CheckReading heel(CheckQuestion question, LoadedBoat way, Equilibria rest) {
    Limit base = rules.limit("offset-heel-base");
    OptionalDouble value = StableRest.greatest(rest, StableRest::heel);
    return new CheckReading(
        question,
        Margin.atMost(limit(base, way.model().form().length()), value, Unit.DEGREE),
        rest.assessed(),
        base.cited(),
        way.loadCase(),
        Note.of(rest));
  }

  private double limit(Limit base, double length) {
    return share * Math.toRadians(base.value() + Math.pow(24 - length, 3) / 600);
  }

  private CheckReading freeboard(CheckQuestion question, LoadedBoat way, Equilibria rest) {
    Limit limit = rules.limit("freeboard-heeled");
    LowestEdge lowest = LowestEdge.of(rest, way, head);
    return new CheckReading(
        question,
        Margin.atLeast(limit.value(), lowest.height(), Unit.METRE),
        lowest.assessed(),
        limit.cited(),
        way.loadCase(),
        Note.of(lowest));
  }
}
