package thwartwise.inspection;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Role;
import thwartwise.crew.NamedPerson;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * Seats named people the plain way: every order of them on every choice of seats, side by side at a
 * place in every order, every mixture of lightest and heaviest, every check asked in full. Shares
 * nothing with the search but the checks.
 */
public final class SeatingByForce {
  private final BoatModel model;
  private final RuleSet rules;
  private final List<Check> checks;
  private final Map<String, Double> known = new HashMap<>();
  private final Map<List<Integer>, Boolean> may = new HashMap<>();

  public SeatingByForce(BoatModel model, RuleSet rules) {
    this.model = model;
    this.rules = rules;
    this.checks =
        CautiousChecks.of(rules).stream().filter(c -> c.role() == Role.LIMITS_CREW).toList();
  }

  /** For each member the number of a place. */
  private List<List<Integer>> ways(int people) {
    List<List<Integer>> ways = List.of(List.of());
    for (int i = 0; i < people; i++) {
      List<List<Integer>> more = new ArrayList<>();
      for (List<Integer> way : ways) {
        for (int p = 0; p < model.boat().places().size(); p++) {
          int here = p;
          if (way.stream().filter(q -> q == here).count() < model.boat().places().get(p).people()) {
            more.add(Stream.concat(way.stream(), Stream.of(p)).toList());
          }
        }
      }
      ways = more;
    }
    return ways;
  }

  /** Least margin over mixtures, orders on each place, and both allowances. */
  public double margin(List<NamedPerson> members, List<Integer> way) {
    return known.computeIfAbsent(members + " " + way, k -> work(members, way));
  }

  private double work(List<NamedPerson> members, List<Integer> way) {
    double least = Double.POSITIVE_INFINITY;
    for (List<Body> aboard : loads(members, way)) {
      LoadedBoat trial = LoadedBoat.of(model, aboard);
      for (Allowance allowance : List.of(Allowance.NONE, Allowance.of(rules, model))) {
        for (Check check : checks) {
          for (CheckReading r : check.readings(trial.under(allowance))) {
            least = Math.min(least, r.margin().room() / Math.max(0.05, Math.abs(r.limit())));
          }
        }
      }
    }
    return least;
  }

  /** Each once: the order of people on different places is no other load. */
  private Set<List<Body>> loads(List<NamedPerson> members, List<Integer> way) {
    Set<List<Body>> loads = new LinkedHashSet<>();
    for (List<Integer> order : orders(members.size())) {
      masses(members).forEach(masses -> loads.add(bodies(way, order, masses)));
    }
    return loads;
  }

  private List<Body> bodies(List<Integer> way, List<Integer> order, List<Double> masses) {
    List<Body> bodies = new ArrayList<>();
    for (int p = 0; p < model.boat().places().size(); p++) {
      int here = p;
      Place place = model.boat().places().get(p);
      List<Integer> side = order.stream().filter(i -> way.get(i) == here).toList();
      for (int n = 0; n < side.size(); n++) {
        double y = place.across().to() * (2.0 * n + 1 - side.size()) / side.size();
        double mass = masses.get(side.get(n));
        bodies.add(Body.seated("somebody", mass, place, y, model.boat().hull().floor()));
      }
    }
    return bodies;
  }

  private static List<List<Integer>> orders(int people) {
    List<List<Integer>> orders = List.of(List.of());
    for (int n = 0; n < people; n++) {
      List<List<Integer>> longer = new ArrayList<>();
      for (List<Integer> order : orders) {
        for (int at = 0; at <= order.size(); at++) {
          List<Integer> next = new ArrayList<>(order);
          next.add(at, n);
          longer.add(next);
        }
      }
      orders = longer;
    }
    return orders;
  }

  private static List<List<Double>> masses(List<NamedPerson> members) {
    List<List<Double>> all = List.of(List.of());
    for (NamedPerson member : members) {
      List<List<Double>> more = new ArrayList<>();
      for (List<Double> masses : all) {
        for (double mass : List.of(member.lightest(), member.heaviest())) {
          more.add(Stream.concat(masses.stream(), Stream.of(mass)).toList());
        }
      }
      all = more.stream().distinct().toList();
    }
    return all;
  }

  public double best(List<NamedPerson> members) {
    return ways(members.size()).stream()
        .mapToDouble(w -> margin(members, w))
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** The crew, as numbers in the list, and every smaller one find seats. */
  boolean mayGo(List<NamedPerson> all, List<Integer> crew) {
    Boolean before = may.get(crew);
    if (before != null) {
      return before;
    }
    boolean answer = best(crew.stream().map(all::get).toList()) >= 0;
    for (Integer one : crew) {
      answer &= mayGo(all, crew.stream().filter(i -> !i.equals(one)).toList());
    }
    may.put(crew, answer);
    return answer;
  }

  /** Largest first, those named first before others. */
  public List<NamedPerson> largest(List<NamedPerson> all) {
    List<Integer> best = List.of();
    for (int bits = (1 << all.size()) - 1; bits > 0; bits--) {
      List<Integer> crew = new ArrayList<>();
      for (int i = 0; i < all.size(); i++) {
        // The first named has the highest bit, so of crews as large the greater number is first.
        if ((bits >> (all.size() - 1 - i) & 1) == 1) {
          crew.add(i);
        }
      }
      if (crew.size() > best.size() && mayGo(all, crew)) {
        best = crew;
      }
    }
    return best.stream().map(all::get).toList();
  }
}
