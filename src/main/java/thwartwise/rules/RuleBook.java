package thwartwise.rules;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.measure.UnitSystem;
import thwartwise.measure.UnitText;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.Formula.FormulaMethod;
import thwartwise.rules.RuleSet.RuleSetFormula;

/**
 * Our own set, whose limits the checks use, and every other available set. The others can tighten
 * our limits, cap people and load by their formulas, or be shown next to the answer; they can never
 * raise it.
 */
public record RuleBook(RuleSet base, List<RuleSet> others) {

  public RuleBook {
    others = List.copyOf(others);
  }

  public static RuleBook of(RuleSet own) {
    return new RuleBook(own, List.of());
  }

  /** With every source in these units. */
  public RuleBook in(UnitSystem units) {
    return new RuleBook(base.in(units), others.stream().map(set -> set.in(units)).toList());
  }

  /** With more sets after the present ones. */
  public RuleBook and(List<RuleSet> more) {
    List<RuleSet> all = new ArrayList<>(others);
    all.addAll(more);
    return new RuleBook(base, all);
  }

  /** Our own limits, tightened by every set that applies to this boat and takes part. */
  public RuleSet inForce(BoatModel model) {
    return tightened(tightening(model));
  }

  /**
   * Our own limits under every proper subset of those sets, each once; empty when none tightens.
   */
  public Set<RuleSet> lessStrict(BoatModel model) {
    List<RuleSet> sets = tightening(model);
    Set<RuleSet> found = new LinkedHashSet<>();
    for (int chosen = 0; chosen < (1 << sets.size()) - 1; chosen++) {
      int bits = chosen;
      found.add(
          tightened(
              IntStream.range(0, sets.size())
                  .filter(i -> (bits >> i & 1) == 1)
                  .mapToObj(sets::get)
                  .toList()));
    }
    return found;
  }

  private RuleSet tightened(List<RuleSet> sets) {
    RuleSet limits = base;
    for (RuleSet set : sets) {
      for (String name : new TreeSet<>(set.limits().keySet())) {
        limits = limits.tightened(name, named(set, set.limit(name)));
      }
    }
    return limits;
  }

  /** The page must name the rule that governs. */
  private static Limit named(RuleSet set, Limit limit) {
    return new Limit(
        limit.value(),
        limit.unit(),
        limit.basis(),
        set.name() + ": " + limit.source(),
        limit.stricter());
  }

  /** The boat as rules see it; the figures of our own set tell a canoe from a dinghy. */
  public static RatedBoat rated(BoatModel model, RuleSet own, List<Body> crew) {
    return new RatedBoat(model, Canoe.kind(model.form(), own), crew);
  }

  /** Why our own set, whose checks everything rests on, does not cover this boat. */
  public Optional<ExcludedUse.NotCovered> notCovered(BoatModel model) {
    return base.applies()
        .mismatch(rated(model, base, List.of()))
        .map(
            why ->
                new ExcludedUse.NotCovered(
                    others.stream().noneMatch(s -> applies(s, model)),
                    why,
                    UnitText.of(base.source()).in(model.boat().units()).words()));
  }

  /** The sets whose limits are in force because they are stricter than ours, by name. */
  public List<RuleSet> tightening(BoatModel model) {
    return others.stream()
        .filter(s -> s.takesPart() && applies(s, model))
        .filter(s -> s.limits().keySet().stream().anyMatch(n -> tightens(s, n)))
        .toList();
  }

  /** The sets that apply to this boat and tighten nothing. */
  public List<RuleSet> alternatives(BoatModel model) {
    List<RuleSet> tightening = tightening(model);
    return others.stream().filter(s -> applies(s, model) && !tightening.contains(s)).toList();
  }

  private boolean tightens(RuleSet set, String limit) {
    return base.limit(limit).stricter().isStricter(set.value(limit), base.value(limit));
  }

  private boolean applies(RuleSet set, BoatModel model) {
    return set.applies().mismatch(rated(model, base, List.of())).isEmpty();
  }

  /**
   * The figures that depend on the boat alone: caps on people, load and motor, and stated limits.
   */
  public List<CapacityFigure> figures(BoatModel model) {
    RatedBoat boat = rated(model, base, List.of());
    List<CapacityFigure> all = new ArrayList<>();
    for (RuleSet set : others) {
      Optional<ScopeMismatch> outside = set.applies().mismatch(boat);
      if (outside.isPresent()) {
        all.add(outside(set, outside.get()));
      } else {
        set.formulas().stream()
            .filter(f -> f.formula().reach() != Formula.Reach.WITH_THE_CREW)
            .forEach(f -> all.addAll(figures(set, f, f.formula().working(), boat)));
        new TreeSet<>(set.limits().keySet()).forEach(name -> all.add(limit(set, name)));
      }
    }
    return all;
  }

  /**
   * The figures that need the recommended crew or a trial with the checks.
   *
   * @param tried formulas that need the checks, by name
   */
  public List<CapacityFigure> figures(
      BoatModel model, List<Body> crew, Map<String, FormulaMethod> tried) {
    RatedBoat boat = rated(model, base, crew);
    List<CapacityFigure> all = new ArrayList<>();
    for (RuleSet set : others) {
      if (applies(set, model)) {
        set.formulas().stream()
            .filter(f -> f.formula().reach() == Formula.Reach.WITH_THE_CREW)
            .forEach(
                f -> {
                  FormulaMethod own = f.formula().working();
                  all.addAll(figures(set, f, tried.getOrDefault(f.formula().name(), own), boat));
                });
      }
    }
    return all;
  }

  private static List<CapacityFigure> figures(
      RuleSet set, RuleSetFormula formula, FormulaMethod working, RatedBoat boat) {
    return working.of(boat, formula.parameters()).stream()
        .map(w -> w.called(formula.title()))
        .map(w -> figure(set, formula, w))
        .toList();
  }

  private static CapacityFigure figure(RuleSet set, RuleSetFormula formula, FormulaResult worked) {
    return new CapacityFigure(
        set.name(),
        worked.title(),
        formula.title().isBlank() && formula.formula().namesRegulation(),
        standing(set.takesPart() && formula.takesPart(), worked),
        worked.caps(),
        worked.value(),
        worked.persons(),
        worked.has(),
        formula.cited(),
        worked.note());
  }

  private static FigureStatus standing(boolean takesPart, FormulaResult worked) {
    if (worked.caps() == CapKind.NOTHING) {
      return FigureStatus.DOES_NOT_APPLY;
    }
    return takesPart ? FigureStatus.TAKES_PART : FigureStatus.BESIDE;
  }

  private static CapacityFigure outside(RuleSet set, ScopeMismatch why) {
    return new CapacityFigure(
        set.name(),
        "",
        FigureStatus.DOES_NOT_APPLY,
        CapKind.NOTHING,
        Double.NaN,
        OptionalInt.empty(),
        OptionalDouble.empty(),
        "",
        new FormulaNote.OutOfScope(why));
  }

  private CapacityFigure limit(RuleSet set, String name) {
    Limit limit = set.limit(name);
    return new CapacityFigure(
        set.name(),
        name,
        set.takesPart() ? FigureStatus.TAKES_PART : FigureStatus.BESIDE,
        CapKind.LIMIT,
        limit.value(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        limit.cited(),
        new FormulaNote.ComparedLimit(
            limit.value(), base.value(name), limit.unit(), tightens(set, name)));
  }
}
