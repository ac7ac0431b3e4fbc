package thwartwise.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import thwartwise.boat.Craft;
import thwartwise.checks.Trial;
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
  private final FormulaCaps caps;
  private final CrewSearch search;
  private final Judge judge;
  private final double design;

  Limits(Judge judge, RuleSet rules, List<CapacityFigure> figures) {
    this.judge = judge;
    this.craft = judge.craft();
    this.rules = rules;
    this.figures = figures;
    this.caps = new FormulaCaps(figures, craft.boat().kitMass());
    this.search = new CrewSearch(judge, rules);
    this.design = rules.value("design-person");
  }

  /** The crew that the other figures are drawn for: the recommended one, or one light person. */
  record Crew(int people, double each, List<Seating> seatings) {}

  /** Adults of the design mass, published formulas included. */
  int people() {
    return Math.min(search.people(), caps.people(design));
  }

  Crew crew(int people) {
    if (people > 0) {
      return new Crew(people, design, search.allowed(people, design));
    }
    double light = Math.floor(Math.min(search.eachUpTo(1), caps.room()));
    return light >= rules.value("lone-person")
        ? new Crew(1, light, search.allowed(1, light))
        : new Crew(0, 0, search.allowed(0, 0));
  }

  /** Why nobody is recommended, not even one light person; empty when somebody is. */
  List<String> nobodyBecause() {
    boolean adult =
        search.emptyBoatMeets() && caps.room() >= design && !search.allowed(1, design).isEmpty();
    Crew crew = adult ? new Crew(1, design, List.of()) : crew(0);
    return crew.people() > 0 ? List.of() : reasons(0, crew, List.of());
  }

  Recommendation recommendation(List<String> outside) {
    int people = people();
    Crew crew = crew(people);
    Amounts amounts = amounts(people, crew);
    boolean withheld = !outside.isEmpty() || crew.people() == 0;
    Amounts told = withheld ? Amounts.NOTHING : amounts;
    return new Recommendation(
        told.people(),
        told.crew(),
        told.load(),
        told.extra(),
        design,
        search.staysUpWith(),
        search.holdsUpWhenSwamped(),
        ifClaimedChambersProve(),
        governedBy(people),
        nextPersonBreaks(people),
        withheld ? List.of() : search.excluded(people, design),
        withheld ? List.of() : crewLimits(people, amounts.room()),
        withheld,
        reasons(people, crew, outside),
        withheld ? List.of() : margins(crew));
  }

  /** The figures of the recommendation alone, which cost a part of the work. */
  Amounts amounts() {
    int people = people();
    return amounts(people, crew(people));
  }

  private Amounts amounts(int people, Crew crew) {
    if (crew.people() == 0) {
      return Amounts.NOTHING;
    }
    double kit = craft.boat().kitMass();
    double load = Math.floor(load(people, crew, kit));
    double room = Math.max(0, load - kit);
    double extra = Math.max(0, room - crew.people() * crew.each());
    double crewMass = Math.min(crewMass(people, crew), room);
    return new Amounts(people, Math.floor(crewMass), load, Math.floor(extra), room);
  }

  private List<Margin> margins(Crew crew) {
    List<Trial> trials =
        crew.seatings().stream().flatMap(s -> judge.trials(s, crew.each()).stream()).toList();
    return judge.margins(trials).stream()
        .sorted(Comparator.comparingDouble(Margin::share))
        .toList();
  }

  private double crewMass(int people, Crew crew) {
    if (people == 0) {
      return crew.each();
    }
    return Math.min(people * search.eachUpToKeepingSeats(people), caps.room());
  }

  /**
   * The whole load. Where rules leave fewer people than our own search, not more than with any of
   * the larger crews: people a rule keeps ashore must not come back as cargo.
   */
  private double load(int people, Crew crew, double kit) {
    double least = load(crew, kit);
    for (int n = people + 1; n <= search.people(); n++) {
      least = Math.min(least, load(crew(n), kit));
    }
    return least;
  }

  private double load(Crew crew, double kit) {
    return crew.people() == 0 ? 0 : crew.people() * crew.each() + kit + extra(crew, kit);
  }

  /** Mass besides the crew and the kit listed that may lie anywhere along the floor, kg. */
  private double extra(Crew crew, double kit) {
    if (crew.people() == 0) {
      return 0;
    }
    double carried =
        new LoadSearch(judge, search.seatings(crew.people(), crew.each()), crew.each()).extra();
    return Math.max(0, Math.min(carried, caps.load() - kit - crew.people() * crew.each()));
  }

  private int ifClaimedChambersProve() {
    boolean anyClaimed =
        craft.spaces().stream().anyMatch(s -> s.counting().ifProven() > s.counting().share());
    if (!anyClaimed) {
      return people();
    }
    return new Limits(new Judge(craft.withClaimsProven(), rules), rules, figures).people();
  }

  /**
   * For each number of people how heavy each may be. More people than adults are recommended are
   * told of one more at most, and of others only where each may be as heavy as somebody who may go
   * alone: nobody is to read leave for a crowd of small children out of it.
   *
   * @param room mass of people that the whole load leaves, kg
   */
  private List<Recommendation.CrewLimit> crewLimits(int people, double room) {
    List<Recommendation.CrewLimit> limits = new ArrayList<>();
    double all = Math.min(room, caps.room());
    for (int n = 1; n <= Math.min(search.room(), caps.heads()); n++) {
      double each = Math.floor(Math.min(each(n, people), all / n));
      double least = rules.value(n <= people + 1 ? "lightest-person" : "lone-person");
      if (!(each >= least)) {
        return limits;
      }
      limits.add(
          new Recommendation.CrewLimit(n, each, search.excluded(n, n <= people ? design : each)));
    }
    return limits;
  }

  private double each(int n, int people) {
    return n <= people ? search.eachUpToKeepingSeats(people) : search.eachUpTo(n);
  }

  private String governedBy(int people) {
    if (people < search.people()) {
      return caps.lowest(design);
    }
    if (people == search.room()) {
      return "no place for another person";
    }
    double breaksAt = Math.max(search.eachUpTo(people + 1) + 1, rules.value("lightest-person"));
    return Breaks.of(judge, people + 1, breaksAt).map(Breaks::first).orElse("");
  }

  private List<String> nextPersonBreaks(int people) {
    if (people < search.people()) {
      return List.of(caps.lowest(design));
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
