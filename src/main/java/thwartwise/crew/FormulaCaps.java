package thwartwise.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.FormulaNote;

/**
 * The caps of published rules on people and load; the lowest of those that take part counts. A
 * rule's own count of people caps the number only: it was rounded, so it is never converted back to
 * kilograms.
 *
 * @param kit mass of the kit listed, kg, which a cap on the whole load must also hold
 */
public record FormulaCaps(List<CapacityFigure> figures, double kit) {

  public FormulaCaps {
    figures = figures.stream().filter(CapacityFigure::takesPart).toList();
  }

  /** A copy with one more cap on the whole load, kg. */
  FormulaCaps and(String name, double load) {
    List<CapacityFigure> more = new ArrayList<>(figures);
    more.add(
        new CapacityFigure(
            "",
            name,
            FigureStatus.TAKES_PART,
            CapKind.LOAD,
            load,
            OptionalInt.empty(),
            OptionalDouble.empty(),
            "",
            FormulaNote.NONE));
    return new FormulaCaps(more, kit);
  }

  /** The mass of people that the rules leave, kg. */
  double room() {
    return Math.max(0, Math.min(least(CapKind.PEOPLE, CapacityFigure::value), load() - kit));
  }

  /** The mass of everything not built in, kg. */
  double load() {
    return least(CapKind.LOAD, CapacityFigure::value);
  }

  /** The greatest number of people of any mass. */
  int heads() {
    return figures.stream()
        .filter(f -> f.persons().isPresent())
        .mapToInt(f -> f.persons().getAsInt())
        .min()
        .orElse(Integer.MAX_VALUE);
  }

  /** The number of adults of the design mass for whom all rules leave room. */
  int people(double design) {
    return (int) Math.min(heads(), Math.floor(room() / design));
  }

  /** The formula that leaves room for the fewest of these adults; empty when none caps any. */
  Optional<LimitingFactor.ByFormula> lowest(double design) {
    return figures.stream()
        .min(Comparator.comparingDouble(f -> adults(f, design)))
        .map(
            f -> new LimitingFactor.ByFormula(f.namesRegulation() ? "" : f.ruleSet(), f.formula()));
  }

  private double adults(CapacityFigure figure, double design) {
    double byMass =
        switch (figure.caps()) {
          case PEOPLE -> figure.value() / design;
          case LOAD -> (figure.value() - kit) / design;
          default -> Double.POSITIVE_INFINITY;
        };
    return Math.min(byMass, figure.persons().orElse(Integer.MAX_VALUE));
  }

  private double least(CapKind caps, ToDoubleFunction<CapacityFigure> number) {
    return of(caps).mapToDouble(number).min().orElse(Double.POSITIVE_INFINITY);
  }

  private Stream<CapacityFigure> of(CapKind caps) {
    return figures.stream().filter(f -> f.caps() == caps);
  }
}
