package thwartwise.inspection;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.checks.Check;
import thwartwise.checks.CheckReading;
import thwartwise.checks.FreeboardAtRest;
import thwartwise.checks.OneChamberLost;
import thwartwise.checks.StiffOffTheMiddle;
import thwartwise.checks.SwampedLevel;
import thwartwise.checks.SwampedLift;
import thwartwise.checks.ThreeFifthsToOneSide;
import thwartwise.crew.Seating;
import thwartwise.hull.UnusableBoat;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * An estimate for a boat that is not fully measured: a few checks, not a recommendation. Everybody
 * sits in one of the seatings that trim the boat least; one that meets is enough, as in the
 * recommendation.
 *
 * @param freeboard of the boat with nobody aboard, of its lowest edge, m; below zero when that is
 *     under water
 * @param carried number of adults; empty until a place to sit is known
 */
public record QuickInspection(double freeboard, Optional<Carried> carried) {
  /** The greatest number of people tried. */
  private static final int MOST = 8;

  /** The number of seatings tried; a line between two questions cannot wait for all. */
  private static final int TRIED = 24;

  /**
   * Adults of the design mass, after the allowance.
   *
   * @param dry with freeboard for them, at rest, three fifths of the way to one side, and stiff a
   *     little off the middle
   * @param swamped with lift to spare for them, whichever chamber is lost, and level with them in
   *     it
   */
  public record Carried(int dry, int swamped) {}

  /** Empty where the measurements contradict each other or the boat has no stable equilibrium. */
  public static Optional<QuickInspection> of(Boat boat, RuleSet rules, LocalDate today) {
    try {
      return of(BoatModel.of(boat, today), rules);
    } catch (UnusableBoat contradiction) {
      return Optional.empty();
    }
  }

  private static Optional<QuickInspection> of(BoatModel model, RuleSet rules) {
    List<CheckReading> empty = new FreeboardAtRest(rules).readings(LoadedBoat.of(model, List.of()));
    return empty.get(0).value().stream()
        .boxed()
        .findFirst()
        .map(freeboard -> new QuickInspection(freeboard, carried(model, rules)));
  }

  private static Optional<Carried> carried(BoatModel model, RuleSet rules) {
    if (model.boat().places().isEmpty()) {
      return Optional.empty();
    }
    List<Check> dry =
        List.of(
            new FreeboardAtRest(rules),
            new ThreeFifthsToOneSide(rules),
            new StiffOffTheMiddle(rules, false));
    List<Check> swamped =
        List.of(new SwampedLift(rules), new OneChamberLost(rules), new SwampedLevel(rules));
    return Optional.of(new Carried(most(model, rules, dry), most(model, rules, swamped)));
  }

  /** The greatest number that meets together with every smaller number. */
  private static int most(BoatModel model, RuleSet rules, List<Check> checks) {
    int room = model.boat().places().stream().mapToInt(Place::people).sum();
    int people = 0;
    while (people < Math.min(MOST, room) && meets(model, rules, checks).test(people + 1)) {
      people++;
    }
    return meets(model, rules, checks).test(0) ? people : 0;
  }

  private static Predicate<Integer> meets(BoatModel model, RuleSet rules, List<Check> checks) {
    double design = rules.value("design-person");
    List<Allowance> allowances = List.of(Allowance.of(rules, model), Allowance.NONE);
    return people ->
        levelSeatings(model, people).stream()
            .map(s -> s.bodies(model, Collections.nCopies(people, design)))
            .map(crew -> LoadedBoat.of(model, crew))
            .anyMatch(
                loadedBoat ->
                    allowances.stream()
                        .map(loadedBoat::under)
                        .flatMap(t -> checks.stream().flatMap(c -> c.readings(t).stream()))
                        .allMatch(CheckReading::met));
  }

  /** The seatings with the people nearest to the middle of the boat. */
  private static List<Seating> levelSeatings(BoatModel model, int people) {
    List<Place> places = model.boat().places();
    double middle = model.form().length() / 2;
    return Seating.of(people, places).stream()
        .sorted(Comparator.comparingDouble(s -> Math.abs(meanX(s, places) - middle)))
        .limit(TRIED)
        .toList();
  }

  private static double meanX(Seating seating, List<Place> places) {
    return IntStream.range(0, places.size())
            .mapToDouble(i -> seating.counts().get(i) * places.get(i).x())
            .sum()
        / Math.max(1, seating.people());
  }
}
