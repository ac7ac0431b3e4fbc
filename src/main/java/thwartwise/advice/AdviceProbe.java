package thwartwise.advice;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Seating;

/**
 * The crews that just do not fit today. A change that brings none of them nearer is not worth a
 * whole search.
 */
final class AdviceProbe {
  /** The number of the next crew's seatings considered, those that come nearest. */
  private static final int NEAREST = 2;

  /** Heavier than those that fit, kg. */
  private static final double HEAVIER = 3;

  /** No reading counts for more than this multiple of its limit. */
  private static final double MOST = 3;

  private final InspectedBoat today;
  private final double adult;
  private final List<Shortfall> crews;

  /** A number of people of one mass in a seating. */
  private record Crew(Seating seating, double each) {}

  /** How far a crew falls short in the boat of today. */
  private record Shortfall(Crew crew, double by) {
    static Shortfall of(InspectedBoat today, Crew crew) {
      return new Shortfall(crew, shortfall(today, crew));
    }
  }

  private AdviceProbe(InspectedBoat today, double adult, List<Shortfall> crews) {
    this.today = today;
    this.adult = adult;
    this.crews = crews;
  }

  static AdviceProbe of(InspectedBoat today, double adult) {
    Limits.Crew fits = today.limits().crew(today.limits().people());
    List<Shortfall> crews = new ArrayList<>();
    int next = today.limits().people() + 1;
    Seating.of(next, today.model().boat().places()).stream()
        .map(s -> Shortfall.of(today, new Crew(s, adult)))
        .sorted(Comparator.comparingDouble(Shortfall::by))
        .limit(NEAREST)
        .forEach(crews::add);
    if (fits.people() > 0) {
      heavier(today, fits).ifPresent(crews::add);
    }
    return new AdviceProbe(today, adult, crews);
  }

  private static Optional<Shortfall> heavier(InspectedBoat today, Limits.Crew fits) {
    double each =
        today.recommendation().crewLimits().stream()
            .filter(limit -> limit.people() == fits.people())
            .mapToDouble(Recommendation.CrewLimit::massLimit)
            .findFirst()
            .orElse(fits.each());
    return fits.seatings().stream()
        .map(s -> Shortfall.of(today, new Crew(s, each + HEAVIER)))
        .max(Comparator.comparingDouble(Shortfall::by));
  }

  /**
   * The effect of a changed boat on these crews.
   *
   * @param nearer by how much less they fall short; zero or less is no gain
   * @param anyFits whether one of them is within its limits then
   */
  record Gain(double nearer, boolean anyFits) {
    static final Gain NONE = new Gain(0, false);
  }

  Gain gain(InspectedBoat changed) {
    double nearer = 0;
    boolean fits = false;
    for (Shortfall crew : crews) {
      double left = shortfall(changed, crew.crew);
      nearer += crew.by - left;
      fits |= left == 0;
    }
    return new Gain(nearer, fits);
  }

  private static double shortfall(InspectedBoat boat, Crew crew) {
    return readings(boat, crew).stream().mapToDouble(AdviceProbe::shortfall).sum();
  }

  private static List<CheckReading> readings(InspectedBoat boat, Crew crew) {
    List<Double> masses = Collections.nCopies(crew.seating().people(), crew.each());
    return boat.limitingReadings(crew.seating(), masses);
  }

  private static double shortfall(CheckReading reading) {
    double scale = Math.max(Math.abs(reading.limit()), 0.05);
    return Math.max(0, Math.min(MOST, -reading.margin().room() / scale));
  }

  /**
   * The reading that prevents most today, then and now: of the next crew as the changed boat seats
   * it first, or, where it seats none, of the one that comes nearest.
   */
  Optional<AdviceReading> moved(InspectedBoat changed) {
    int next = today.limits().people() + 1;
    Optional<Seating> seated =
        changed.limits().people() < next ? Optional.empty() : changed.limits().firstSeating(next);
    return seated
        .map(s -> new Crew(s, adult))
        .or(
            () ->
                crews.stream()
                    .map(Shortfall::crew)
                    .min(Comparator.comparingDouble(c -> shortfall(changed, c))))
        .flatMap(c -> moved(c, changed));
  }

  private Optional<AdviceReading> moved(Crew crew, InspectedBoat changed) {
    List<CheckReading> after = readings(changed, crew);
    return readings(today, crew).stream()
        .filter(r -> !r.met())
        .max(Comparator.comparingDouble(AdviceProbe::shortfall))
        .map(before -> reading(crew, before, twin(before, after)));
  }

  private static OptionalDouble twin(CheckReading before, List<CheckReading> after) {
    return after.stream()
        .filter(r -> question(r).equals(question(before)))
        .map(CheckReading::value)
        .findFirst()
        .orElse(OptionalDouble.empty());
  }

  private static CheckQuestion question(CheckReading reading) {
    return AdviceComparison.whicheverChamber(reading.question());
  }

  private AdviceReading reading(Crew crew, CheckReading before, OptionalDouble after) {
    return new AdviceReading(
        before.question(),
        crew.seating().crew(today.model(), crew.each(), Packing.SPREAD),
        before.margin(),
        after);
  }
}
