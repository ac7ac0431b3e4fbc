package thwartwise.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import thwartwise.boat.Craft;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.RuleSet;

/**
 * Puts the recommendation together: our own search, the published formulas that apply, and the
 * lowest of them.
 */
final class Limits {
  private final Craft craft;
  private final RuleSet rules;
  private final List<CapacityFigure> figures;
  private final CrewSearch search;
  private final Judge judge;
  private final double design;

  Limits(Judge judge, RuleSet rules, List<CapacityFigure> figures) {
    this.judge = judge;
    this.craft = judge.craft();
    this.rules = rules;
    this.figures = figures;
    this.search = new CrewSearch(judge, rules);
    this.design = rules.value("design-person");
  }

  /** The crew that the other figures are drawn for: the recommended one, or one light person. */
  record Crew(int people, double each, List<Seating> seatings) {}

  /** Adults of the design mass, published formulas included. */
  int people() {
    return (int) Math.min(search.people(), Math.floor(formulaRoom() / design));
  }

  Crew crew(int people) {
    if (people > 0) {
      return new Crew(people, design, search.allowed(people, design));
    }
    double light = Math.floor(Math.min(search.eachUpTo(1), formulaRoom()));
    return light >= rules.value("lone-person")
        ? new Crew(1, light, search.allowed(1, light))
        : new Crew(0, 0, search.allowed(0, 0));
  }

  Recommendation recommendation(List<String> outside) {
    int people = people();
    Crew crew = crew(people);
    double kit = craft.boat().kitMass();
    double extra = extra(crew, kit);
    double load = crew.people() == 0 ? 0 : crew.people() * crew.each() + kit + extra;
    double crewMass = Math.min(crewMass(people, crew), Math.max(0, load - kit));
    boolean withheld = !outside.isEmpty() || crew.people() == 0;
    return new Recommendation(
        withheld ? 0 : people,
        withheld ? 0 : Math.floor(crewMass),
        withheld ? 0 : Math.floor(load),
        withheld ? 0 : Math.floor(extra),
        design,
        search.staysUpWith(),
        search.holdsUpWhenSwamped(),
        ifClaimedChambersProve(),
        governedBy(people),
        nextPersonBreaks(people),
        withheld ? List.of() : search.excluded(people, design),
        withheld ? List.of() : crewLimits(people, crewMass),
        withheld,
        reasons(people, crew, outside));
  }

  private double crewMass(int people, Crew crew) {
    if (people == 0) {
      return crew.each();
    }
    return Math.min(people * search.eachUpToKeepingSeats(people), formulaRoom());
  }

  /** Mass besides the crew and the kit listed that may lie anywhere along the floor, kg. */
  private double extra(Crew crew, double kit) {
    if (crew.people() == 0) {
      return 0;
    }
    double carried =
        new LoadSearch(judge, search.seatings(crew.people(), crew.each()), crew.each()).extra();
    return Math.max(0, Math.min(carried, formulaLoad() - kit - crew.people() * crew.each()));
  }

  private int ifClaimedChambersProve() {
    boolean anyClaimed =
        craft.spaces().stream().anyMatch(s -> s.counting().ifProven() > s.counting().share());
    if (!anyClaimed) {
      return people();
    }
    return new Limits(new Judge(craft.withClaimsProven(), rules), rules, figures).people();
  }

  private List<Recommendation.CrewLimit> crewLimits(int people, double crewMass) {
    List<Recommendation.CrewLimit> limits = new ArrayList<>();
    double keepingSeats = people > 0 ? search.eachUpToKeepingSeats(people) : 0;
    for (int n = 1; n <= Math.min(people + 1, search.room()); n++) {
      double each = n <= people ? keepingSeats : search.eachUpTo(n);
      double held = Math.floor(Math.min(each, crewMass / n));
      if (held >= rules.value("lightest-person")) {
        limits.add(
            new Recommendation.CrewLimit(n, held, search.excluded(n, n <= people ? design : held)));
      }
    }
    return limits;
  }

  /** Mass of people the published formulas that apply leave, kg. */
  private double formulaRoom() {
    double persons =
        figures.stream()
            .filter(f -> f.applies() && f.capsPeople())
            .mapToDouble(CapacityFigure::mass)
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return Math.max(0, Math.min(persons, formulaLoad() - craft.boat().kitMass()));
  }

  private double formulaLoad() {
    return figures.stream()
        .filter(f -> f.applies() && !f.capsPeople())
        .mapToDouble(CapacityFigure::mass)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  private String governedBy(int people) {
    if (people < search.people()) {
      return lowestFormula();
    }
    if (people == search.room()) {
      return "no place for another person";
    }
    double breaksAt = Math.max(search.eachUpTo(people + 1) + 1, rules.value("lightest-person"));
    return Breaks.of(judge, people + 1, breaksAt).map(Breaks::first).orElse("");
  }

  private String lowestFormula() {
    return figures.stream()
        .filter(CapacityFigure::applies)
        .min(Comparator.comparingDouble(this::roomUnder))
        .map(CapacityFigure::formula)
        .orElse("");
  }

  private double roomUnder(CapacityFigure figure) {
    return figure.capsPeople() ? figure.mass() : figure.mass() - craft.boat().kitMass();
  }

  private List<String> nextPersonBreaks(int people) {
    if (people < search.people()) {
      return List.of(lowestFormula());
    }
    if (people == search.room()) {
      return List.of("no place for another person");
    }
    return Breaks.of(judge, people + 1, design).map(Breaks::words).orElse(List.of());
  }

  private List<String> reasons(int people, Crew crew, List<String> outside) {
    List<String> reasons = new ArrayList<>(outside);
    if (!search.emptyBoatMeets()) {
      Breaks.of(judge, 0, 0)
          .ifPresent(
              b -> b.words().forEach(w -> reasons.add("the empty boat already falls short; " + w)));
    } else if (people == 0 && crew.people() == 1) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "no adult of %.0f kg, but one person up to %.0f kg",
              design,
              crew.each()));
    } else if (search.room() == 0) {
      reasons.add("no place to sit was given, so nobody can be placed");
    } else if (people == 0) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "not one person meets every check, from an adult of %.0f kg down to %.0f kg",
              design,
              rules.value("lone-person")));
    }
    return reasons;
  }
}
