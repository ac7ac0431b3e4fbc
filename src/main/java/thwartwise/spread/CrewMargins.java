package thwartwise.spread;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.checks.Role;
import thwartwise.crew.Lazy;
import thwartwise.hull.UnusableBoat;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;
import thwartwise.uncertainty.MeasurementModel;

/**
 * The margin of each figure, for some crews, as a function of the measurements. Without an
 * equilibrium a margin is infinitely negative; for contradictory measurements there is none (NaN).
 */
final class CrewMargins implements MeasurementModel {
  private final Boat boat;
  private final BoatModel model;
  private final Set<Asked> asked;
  private final List<SpreadInput> inputs;
  private final List<Figure> figures;
  private final int people;
  private final CaseFigures known;

  /** The figures of the boat as measured. */
  private final BalanceCache measured = new BalanceCache();

  /** A check asked of a crew. */
  record Asked(CrewCase crew, Check check) {
    // The rules in a check, the same for all, take longer to hash than to compare.
    @Override
    public int hashCode() {
      return 31 * crew.hashCode() + check.getClass().hashCode();
    }
  }

  /** One figure of one crew, as measured, with the check that asks for it. */
  record Figure(Asked asked, CheckQuestion question, Margin margin) {
    CrewCase crew() {
      return asked.crew;
    }

    boolean limitsCrew() {
      return asked.check.role() == Role.LIMITS_CREW;
    }

    /**
     * Whether it is of the same measure as one that was asked of the same crew. Another chamber may
     * be the worst to lose; things that are asked one by one stay separate.
     */
    boolean isOf(Figure other) {
      return question.asks(other.question.check(), other.question.measure())
          && (limitsCrew() || question.equals(other.question));
    }
  }

  /**
   * @param known of the same boat under the same rules
   */
  CrewMargins(
      Boat boat,
      BoatModel model,
      RuleSet rules,
      List<SpreadInput> inputs,
      List<CrewCase> cases,
      CaseFigures known) {
    this.boat = boat;
    this.model = model;
    List<Check> checks = CautiousChecks.of(rules, model);
    this.asked =
        cases.stream()
            .distinct()
            .flatMap(
                crew ->
                    checks.stream()
                        .filter(check -> crew.asked().contains(check.role()))
                        .map(check -> new Asked(crew, check)))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    this.inputs = inputs;
    this.known = known;
    this.people = room(boat);
    this.figures =
        figures(VariedBoat.asMeasured(boat, people), measured).values().stream()
            .flatMap(List::stream)
            .toList();
  }

  /** The greatest number of people in any of its crews. */
  private static int room(Boat boat) {
    return Math.max(boat.aboard().size(), boat.places().stream().mapToInt(Place::people).sum());
  }

  List<Figure> figures() {
    return figures;
  }

  /** Of each case the least of its rooms, of what was returned by {@link #results}. */
  double[] leastOfEach(List<CrewCase> cases, double[] rooms) {
    return cases.stream().mapToDouble(crew -> least(crew, rooms)).toArray();
  }

  private double least(CrewCase crew, double[] rooms) {
    return IntStream.range(0, rooms.length)
        .filter(i -> figures.get(i).crew().equals(crew))
        .mapToDouble(i -> rooms[i])
        .min()
        .orElse(0);
  }

  @Override
  public double[] results(double[] values) {
    VariedBoat varied = VariedBoat.asMeasured(boat, people).at(inputs, values);
    double[] rooms = new double[figures.size()];
    try {
      Map<Asked, List<Figure>> found = figures(varied, measured.moved());
      Arrays.setAll(rooms, i -> room(figures.get(i), found.get(figures.get(i).asked)));
    } catch (UnusableBoat contradiction) {
      Arrays.fill(rooms, Double.NaN);
    }
    return rooms;
  }

  private static double room(Figure wanted, List<Figure> found) {
    return found.stream()
        .filter(f -> f.isOf(wanted))
        .mapToDouble(f -> f.margin.room())
        .min()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** All that is asked of one boat, in order. */
  private Map<Asked, List<Figure>> figures(VariedBoat varied, BalanceCache balances) {
    Map<Asked, List<Figure>> found = known.of(varied);
    Supplier<BoatModel> built = Lazy.of(() -> varied.model(boat, model));
    Map<CrewCase, LoadedBoat> loaded = new HashMap<>();
    Map<Asked, List<Figure>> all = new LinkedHashMap<>();
    for (Asked one : asked) {
      List<Figure> figures = found.get(one);
      if (figures == null) {
        LoadedBoat aboard =
            loaded.computeIfAbsent(
                one.crew, crew -> begun(crew.aboard(built.get(), varied.people()), balances));
        figures = figures(one, aboard);
        found.put(one, figures);
      }
      all.put(one, figures);
    }
    return all;
  }

  /** The searches of the boat as measured begin upright, and those of the others at their ends. */
  private static LoadedBoat begun(LoadedBoat loaded, BalanceCache balances) {
    LoadedBoat remembering = loaded.remembering(balances);
    return balances.isOfMovedBoat() ? remembering : remembering.fromUpright();
  }

  private static List<Figure> figures(Asked asked, LoadedBoat loaded) {
    return asked.check().confirmedReadings(loaded).stream()
        .map(reading -> new Figure(asked, reading.question(), reading.margin()))
        .toList();
  }
}
