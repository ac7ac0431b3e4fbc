package thwartwise.spread;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Margin;
import thwartwise.checks.Role;
import thwartwise.hull.UnusableBoat;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;
import thwartwise.uncertainty.MeasurementModel;

/**
 * How far inside its limit each figure that limits crew comes out, for some crews, as a function of
 * what was measured. Without a state of rest a figure is endlessly far outside; of measurements
 * that contradict each other there is none (NaN).
 */
final class CrewMargins implements MeasurementModel {
  private final Boat boat;
  private final BoatModel model;
  private final List<Check> checks;
  private final List<SpreadInput> inputs;
  private final List<Figure> figures;
  private final List<CrewCase> cases;
  private final int people;

  /** One figure of one crew, as measured. */
  record Figure(CrewCase crew, CheckQuestion question, Margin margin) {
    /** Of the same crew and measure; which chamber is the worst to lose may be another one. */
    boolean isOf(Figure other) {
      return crew == other.crew && question.asks(other.question.check(), other.question.measure());
    }
  }

  private CrewMargins(CrewMargins all, Predicate<CrewCase> wanted) {
    this.boat = all.boat;
    this.model = all.model;
    this.checks = all.checks;
    this.inputs = all.inputs;
    this.cases = all.cases.stream().filter(wanted).toList();
    this.people = all.people;
    this.figures = all.figures.stream().filter(f -> wanted.test(f.crew())).toList();
  }

  CrewMargins(
      Boat boat, BoatModel model, RuleSet rules, List<SpreadInput> inputs, List<CrewCase> cases) {
    this.boat = boat;
    this.model = model;
    this.inputs = inputs;
    this.cases = cases;
    this.checks =
        CautiousChecks.of(rules, model).stream().filter(c -> c.role() == Role.LIMITS_CREW).toList();
    this.people = cases.stream().mapToInt(CrewCase::people).max().orElse(0);
    this.figures = figures(VariedBoat.asMeasured(boat, people), model);
  }

  List<Figure> figures() {
    return figures;
  }

  /** The same of some crews alone. */
  CrewMargins of(Predicate<CrewCase> wanted) {
    return new CrewMargins(this, wanted);
  }

  @Override
  public double[] results(double[] values) {
    VariedBoat varied = VariedBoat.asMeasured(boat, people).at(inputs, values);
    double[] rooms = new double[figures.size()];
    try {
      List<Figure> found = figures(varied, varied.model(boat, model));
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

  private List<Figure> figures(VariedBoat varied, BoatModel at) {
    BalanceCache balances = new BalanceCache();
    return cases.stream()
        .flatMap(c -> figures(c, c.aboard(at, varied.people()), balances))
        .toList();
  }

  private Stream<Figure> figures(CrewCase crew, LoadedBoat loaded, BalanceCache balances) {
    LoadedBoat remembering = loaded.remembering(balances);
    return checks.stream()
        .flatMap(check -> check.confirmedReadings(remembering).stream())
        .map(reading -> figure(crew, reading));
  }

  private static Figure figure(CrewCase crew, CheckReading reading) {
    return new Figure(crew, reading.question(), reading.margin());
  }
}
