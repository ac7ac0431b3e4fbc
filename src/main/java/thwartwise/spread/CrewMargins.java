package thwartwise.spread;

import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Place;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Margin;
import thwartwise.checks.Role;
import thwartwise.crew.Lazy;
import thwartwise.hull.UnusableBoat;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;
import thwartwise.uncertainty.MeasurementModel;

/**
 * How far inside its limit each figure comes out, for some crews, as a function of what was
 * measured. Without a state of rest a figure is endlessly far outside; of measurements that
 * contradict each other there is none (NaN).
 */
final class CrewMargins implements MeasurementModel {
  private final Boat boat;
  private final BoatModel model;
  private final List<Check> checks;
  private final List<SpreadInput> inputs;
  private final List<Figure> figures;
  private final List<CrewCase> cases;
  private final int people;
  private final CaseFigures known;

  /** One figure of one crew, as measured. */
  record Figure(CrewCase crew, Role role, CheckQuestion question, Margin margin) {
    boolean limitsCrew() {
      return role == Role.LIMITS_CREW;
    }

    /**
     * Of the same crew and measure; which chamber is the worst to lose may be another one, and of
     * things that are asked one by one each stays by itself.
     */
    boolean isOf(Figure other) {
      return crew.equals(other.crew)
          && question.asks(other.question.check(), other.question.measure())
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
    this.known = known;
    this.boat = boat;
    this.model = model;
    this.inputs = inputs;
    this.cases = cases;
    this.checks = CautiousChecks.of(rules, model);
    this.people = room(boat);
    this.figures = figures(VariedBoat.asMeasured(boat, people));
  }

  /** As many as any of its crews could be. */
  private static int room(Boat boat) {
    return Math.max(boat.aboard().size(), boat.places().stream().mapToInt(Place::people).sum());
  }

  List<Figure> figures() {
    return figures;
  }

  @Override
  public double[] results(double[] values) {
    VariedBoat varied = VariedBoat.asMeasured(boat, people).at(inputs, values);
    double[] rooms = new double[figures.size()];
    try {
      List<Figure> found = figures(varied);
      Arrays.setAll(rooms, i -> room(figures.get(i), found));
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

  private List<Figure> figures(VariedBoat varied) {
    Supplier<BoatModel> built = Lazy.of(() -> varied.model(boat, model));
    BalanceCache balances = new BalanceCache();
    return cases.stream()
        .flatMap(
            crew ->
                known.of(varied, crew, () -> figures(crew, varied, built.get(), balances)).stream())
        .toList();
  }

  private List<Figure> figures(
      CrewCase crew, VariedBoat varied, BoatModel at, BalanceCache balances) {
    return figures(crew, crew.aboard(at, varied.people()), balances).toList();
  }

  private Stream<Figure> figures(CrewCase crew, LoadedBoat loaded, BalanceCache balances) {
    LoadedBoat remembering = loaded.remembering(balances);
    return checks.stream()
        .filter(check -> crew.asked().contains(check.role()))
        .flatMap(
            check ->
                check.confirmedReadings(remembering).stream()
                    .map(reading -> figure(crew, check.role(), reading)));
  }

  private static Figure figure(CrewCase crew, Role role, CheckReading reading) {
    return new Figure(crew, role, reading.question(), reading.margin());
  }
}
