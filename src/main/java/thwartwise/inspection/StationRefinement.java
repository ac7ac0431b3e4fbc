package thwartwise.inspection;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.boat.Assumption;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.loadcase.Allowance;
import thwartwise.rules.RuleSet;

/**
 * The place where one more measured station would gain most, and the chamber volume that could then
 * count.
 */
final class StationRefinement {
  /** A smaller gain is not worth the measurement, m³. */
  private static final double LEAST = 0.001;

  private final BoatModel model;
  private final RuleSet rules;
  private final List<Station> stations;

  private StationRefinement(BoatModel model, RuleSet rules) {
    this.model = model;
    this.rules = rules;
    this.stations = model.boat().hull().stations();
  }

  /** Empty where the gain is too small. */
  static Optional<Assumption> of(BoatModel model, RuleSet rules) {
    return new StationRefinement(model, rules).gain();
  }

  private Optional<Assumption> gain() {
    int at = isLongStretch() ? longest() : swellsMost();
    double worth = straightened(at) + takenOffLess();
    return worth < LEAST ? Optional.empty() : Optional.of(gain(at, worth));
  }

  /** The longer of two stretches where as much is missing. */
  private int swellsMost() {
    int at = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i + 1 < stations.size(); i++) {
      double worth = straightened(i);
      if (worth > most + LEAST || worth > most - LEAST && length(i) > length(at)) {
        at = i;
        most = Math.max(most, worth);
      }
    }
    return at;
  }

  private int longest() {
    return IntStream.range(0, stations.size() - 1)
        .boxed()
        .max(Comparator.comparingDouble(model.boat().hull()::stretch))
        .orElseThrow();
  }

  private Assumption gain(int stretch, double worth) {
    return new Assumption.StationGain(
        stations.get(stretch).name(),
        stations.get(stretch + 1).name(),
        worth,
        isLastOfFew() || isLongStretch());
  }

  /**
   * The volume of chambers there beyond straight lines, as far as it is missing from what counts.
   */
  private double straightened(int stretch) {
    Box there = new Box(new Span(x(stretch), x(stretch + 1)), Span.ALL, Span.ALL);
    return model.spaces().stream()
        .filter(s -> s.counting().ifProven() > 0)
        .filter(s -> s.box().overlaps(there))
        .mapToDouble(s -> Math.min(missing(s), missing(s, s.box().common(there))))
        .filter(missing -> missing > 0)
        .sum();
  }

  private double missing(Space space) {
    double faired = space.solid().volume();
    double couldCount = Math.min(faired, space.part().measuredVolume().orElse(faired));
    return couldCount - space.straight();
  }

  private double missing(Space space, Box part) {
    return space.solid().within(part).volume()
        - model.form().straightInside().within(part).volume();
  }

  /**
   * Whether one station more gives enough of them, close enough to each other for the usual
   * allowance.
   */
  private double takenOffLess() {
    double less =
        Allowance.withEnoughStations(rules).volumeFactor()
            - Allowance.of(rules, model).volumeFactor();
    double counted =
        model.spaces().stream().mapToDouble(s -> s.counting().share() * s.solid().volume()).sum();
    return isLastOfFew() || isLongStretch() ? less * counted : 0;
  }

  /** Whether, with more than few stations, the larger allowance comes from one long stretch. */
  private boolean isLongStretch() {
    return stations.size() > rules.value("few-stations") && Allowance.isGuessed(rules, model);
  }

  private boolean isLastOfFew() {
    return stations.size() == rules.value("few-stations");
  }

  private double length(int stretch) {
    return x(stretch + 1) - x(stretch);
  }

  /** The x of a slanting station is that of its middle. */
  private double x(int station) {
    return stations.get(station).port().stream().mapToDouble(Vector3::x).average().orElseThrow();
  }
}
