package thwartwise.today;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collector;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Opening;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.UntestedAct;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.inspection.Report;
import thwartwise.measure.QuantityText;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.report.CheckWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.WaterWords;
import thwartwise.rules.ValidWaters.WaterStatement;
import thwartwise.today.TodayVerdict.Figures;

/** The figures that today's questions speak of. */
final class TodayFigures {
  private static final int MOST_SEATINGS = 6;

  private static final Collector<CharSequence, ?, String> OF_MANY = Collectors.joining("; ");

  private final Report report;
  private final Boat boat;
  private final UnitFormat units;

  TodayFigures(Report report, Boat boat) {
    this.report = report;
    this.boat = boat;
    this.units = new UnitFormat(boat.units());
  }

  List<Figures> all() {
    List<Figures> all = new ArrayList<>();
    all.add(new Figures("People", people()));
    all.add(new Figures("Load", load()));
    all.add(new Figures("Seats", seats()));
    all.add(new Figures("Nobody", String.join("; ", acts())));
    all.add(new Figures("Water", water()));
    if (!closedOpenings().isEmpty()) {
      all.add(new Figures("Shut", closedOpenings()));
    }
    return all;
  }

  String people() {
    List<CrewLimit> limits = report.recommendation().crewLimits();
    int most = limits.stream().mapToInt(CrewLimit::people).max().orElse(0);
    return limits.stream().map(this::each).collect(OF_MANY)
        + "; never more than "
        + QuantityText.people(most)
        + ". Dressed, jacket on";
  }

  private String each(CrewLimit limit) {
    return QuantityText.people(limit.people())
        + " up to "
        + kg(limit.massLimit())
        + (limit.people() > 1 ? " each" : "");
  }

  String load() {
    Recommendation r = report.recommendation();
    boolean nothing = r.extra() < 1 && r.crewLimits().stream().noneMatch(l -> l.extraMass() >= 1);
    return "the kit listed, where the file has it, and "
        + (nothing
            ? "nothing besides"
            : "no more than " + besides(r) + " besides, low on the middle line");
  }

  /** The extra weight for each number of people, where the report gives it. */
  private String besides(Recommendation r) {
    boolean each = r.crewLimits().stream().noneMatch(l -> Double.isNaN(l.extraMass()));
    if (each && r.crewLimits().size() > 1) {
      return r.crewLimits().stream().map(this::besides).collect(Collectors.joining(", "));
    }
    String like = r.crewLimits().size() == 1 ? seatingNote(r.crewLimits().get(0)) : "";
    return kg(r.extra()) + like;
  }

  private String besides(CrewLimit limit) {
    return kg(limit.extraMass())
        + " with "
        + QuantityText.people(limit.people())
        + seatingNote(limit);
  }

  String seats() {
    Set<String> not = forbiddenSeatings(report.recommendation(), units);
    if (!report.isUnrestricted()) {
      not.add(LoadCaseWords.of(report.asLoaded().loadCase(), units));
    }
    return not.isEmpty()
        ? String.join(", ", boat.places().stream().map(p -> p.name()).toList())
        : "not like this: " + String.join("; ", not);
  }

  /** The forbidden acts. An act that was not assessed is not allowed either. */
  Set<String> acts() {
    Set<String> acts = new TreeSet<>();
    report.findings().stream()
        .filter(f -> f.role() == Role.FORBIDS_AN_ACT && f.outcome() != Outcome.MEETS)
        .map(f -> CheckWords.subject(f.question().subject()))
        .forEach(acts::add);
    Arrays.stream(UntestedAct.values()).map(CheckWords::of).forEach(acts::add);
    return acts;
  }

  String water() {
    return report.waters().stream()
            .filter(w -> w.kind() == WaterStatement.Kind.HOLDS_FOR)
            .map(w -> WaterWords.of(w, units))
            .findFirst()
            .orElse("sheltered, without waves")
        + "; and no weir within reach";
  }

  /** Each opening that something closes; blank when there is none. */
  String closedOpenings() {
    return boat.openings().stream()
        .filter(o -> o.closedBy().isPresent())
        .map(TodayFigures::closed)
        .collect(OF_MANY);
  }

  private static String closed(Opening opening) {
    return opening.name() + " (" + opening.closedBy().orElse("") + ")";
  }

  private String kg(double mass) {
    return units.mass(mass, Side.DOWN);
  }

  /** Seatings that are not allowed, short enough to be read aloud. */
  static Set<String> forbiddenSeatings(Recommendation r, UnitFormat units) {
    List<Integer> told = r.crewLimits().stream().map(CrewLimit::people).toList();
    Stream<String> byNumber = r.crewLimits().stream().flatMap(l -> seating(l, units));
    Stream<String> others =
        r.excludedSeatings().stream()
            .filter(s -> !told.contains(s.size()))
            .map(TodayFigures::seating);
    Set<String> all =
        Stream.concat(byNumber, others).collect(Collectors.toCollection(LinkedHashSet::new));
    if (all.size() <= MOST_SEATINGS) {
      return all;
    }
    Set<String> first =
        all.stream().limit(MOST_SEATINGS).collect(Collectors.toCollection(LinkedHashSet::new));
    first.add((all.size() - MOST_SEATINGS) + " more ways that the page names");
    return first;
  }

  /** Seatings that are not allowed from a mass up; lighter people may sit so. */
  private static Stream<String> seating(CrewLimit limit, UnitFormat units) {
    return limit.excludedSeatings().stream()
        .filter(s -> s.size() == limit.people())
        .map(s -> seating(s) + over(limit.upTo(s), units));
  }

  /** How they sit with extra weight; blank where it makes no difference. */
  static String seatingNote(CrewLimit limit) {
    return limit.extraSeating().isEmpty() ? "" : " (" + seating(limit.extraSeating()) + ")";
  }

  private static String over(OptionalDouble most, UnitFormat units) {
    return most.isEmpty() ? "" : " over " + units.mass(most.getAsDouble(), Side.DOWN);
  }

  private static String seating(List<String> seating) {
    Map<String, Integer> byPlace = new LinkedHashMap<>();
    seating.forEach(place -> byPlace.merge(place, 1, Integer::sum));
    return byPlace.entrySet().stream()
        .map(e -> QuantityText.people(e.getValue()) + " on " + e.getKey())
        .collect(Collectors.joining(" and "));
  }
}
