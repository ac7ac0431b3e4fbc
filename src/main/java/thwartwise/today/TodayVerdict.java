package thwartwise.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.boat.Opening;
import thwartwise.boat.TrialSeen;
import thwartwise.checks.CheckId;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.UntriedAct;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.QuantityText;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.report.CheckWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.RefusalWords;

/**
 * What must be answered with yes before somebody goes afloat today, drawn from what the inspection
 * found and from the waters. It asks what no inspection can see.
 *
 * @param held why nobody goes whatever is answered; empty when the questions decide
 * @param points in the order of a morning at the slipway
 */
public record TodayVerdict(List<String> held, List<Point> points) {
  private static final Set<CheckId> CLIMBING_IN =
      EnumSet.of(CheckId.CLIMBING_IN_OVER_THE_SIDE, CheckId.CLIMBING_IN_OVER_THE_STERN);

  /**
   * One point.
   *
   * @param question to be answered with yes, no or don't know
   * @param todo what to do about it when the answer is not yes
   */
  public record Point(String question, String todo) {}

  public TodayVerdict {
    held = List.copyOf(held);
    points = List.copyOf(points);
  }

  /**
   * @param day of the inspection; a trial counts on its own day alone
   */
  public static TodayVerdict of(Report report, Boat boat, LocalDate day) {
    List<String> held = held(report, new UnitFormat(boat.units()));
    return new TodayVerdict(held, held.isEmpty() ? points(report, boat, day) : List.of());
  }

  private static List<String> held(Report report, UnitFormat units) {
    Recommendation r = report.recommendation();
    if (!r.withheld() && (r.people() > 0 || !r.crewLimits().isEmpty())) {
      return whateverTheLoading(report, units);
    }
    return r.reasons().isEmpty()
        ? List.of("no crew meets every check that limits the crew")
        : RefusalWords.of(r.reasons(), units);
  }

  /** The file's own loading can be left; what holds back another one cannot. */
  private static List<String> whateverTheLoading(Report report, UnitFormat units) {
    return report.findings().stream()
        .filter(Finding::holdsBack)
        .filter(f -> f.loadCase().kind() != LoadCase.Kind.AS_LOADED)
        .map(
            f ->
                CheckWords.of(f.question())
                    + ": "
                    + f.outcome().word()
                    + " ("
                    + LoadCaseWords.of(f.loadCase(), units)
                    + ")")
        .toList();
  }

  private static List<Point> points(Report report, Boat boat, LocalDate day) {
    Recommendation r = report.recommendation();
    List<Point> points = new ArrayList<>();
    UnitFormat units = new UnitFormat(boat.units());
    points.add(weighed(r, units));
    points.add(load(r, units));
    points.add(seats(report, boat));
    report.trialSeen(boat, day).ifPresent(seen -> points.add(asSeen(seen)));
    points.add(acts(report));
    points.addAll(PeopleAfloat.points(units));
    points.addAll(WatersToday.points(report, boat.waters(), units));
    points.add(closed(boat));
    points.add(backIn(report));
    points.add(
        new Point(
            "Does everyone know: if it swamps, stay with the boat, hold on and call?",
            "say it aloud to everyone, and who holds whom"));
    return points;
  }

  private static Point weighed(Recommendation r, UnitFormat units) {
    String each =
        r.crewLimits().stream()
            .map(
                l ->
                    QuantityText.people(l.people())
                        + " up to "
                        + kg(l.eachUpTo(), units)
                        + each(l.people()))
            .collect(Collectors.joining("; "));
    int most = r.crewLimits().stream().mapToInt(Recommendation.CrewLimit::people).max().orElse(0);
    return new Point(
        String.format(
            Locale.ROOT,
            "Was everyone weighed dressed, jacket on, and within %s in all: %s, and never more than"
                + " %s?",
            kg(r.crew(), units),
            each,
            QuantityText.people(most)),
        "weigh everyone as they go afloat, and leave people ashore until they are within it");
  }

  private static Point asSeen(TrialSeen seen) {
    return new Point(
        "Do only those go who sat in it in the trial in knee-deep water, "
            + QuantityText.people(seen.people())
            + ", each on the seat of then ("
            + String.join(", ", seen.seats())
            + ")?",
        "leave whoever was not in the trial ashore, or do the trial again with them");
  }

  private static String each(int people) {
    return people > 1 ? " each" : "";
  }

  private static Point load(Recommendation r, UnitFormat units) {
    return new Point(
        String.format(
            Locale.ROOT,
            "Is the load within %s, people, kit and all else, with the kit listed where the file has"
                + " it and no more than %s besides, low on the middle line?",
            kg(r.load(), units),
            besides(r, units)),
        "weigh what goes aboard, leave the rest ashore, and stow the kit where the file has it");
  }

  private static String alone(List<Recommendation.CrewLimit> limits) {
    return limits.size() == 1 ? SeatsToday.besidesLike(limits.get(0)) : "";
  }

  /** For each number of people where it was told so. */
  private static String besides(Recommendation r, UnitFormat units) {
    boolean each = r.crewLimits().stream().noneMatch(l -> Double.isNaN(l.extra()));
    return each && r.crewLimits().size() > 1
        ? r.crewLimits().stream()
            .map(
                l ->
                    kg(l.extra(), units)
                        + " with "
                        + QuantityText.people(l.people())
                        + SeatsToday.besidesLike(l))
            .collect(Collectors.joining(", "))
        : kg(r.extra(), units) + alone(r.crewLimits());
  }

  private static Point seats(Report report, Boat boat) {
    Set<String> not = SeatsToday.notLikeThis(report.recommendation(), new UnitFormat(boat.units()));
    if (!report.nothingHoldsBack()) {
      not.add(LoadCaseWords.of(report.asLoaded().loadCase(), new UnitFormat(boat.units())));
    }
    String places = String.join(", ", boat.places().stream().map(p -> p.name()).toList());
    return new Point(
        not.isEmpty()
            ? "Does everyone know their seat (" + places + ") and stay in it?"
            : "Does everyone know their seat, stay in it, and not like this: "
                + String.join("; ", not)
                + "?",
        "seat people as the page tells and have each of them say where they sit");
  }

  /** An act that was not assessed is not allowed either. */
  private static Point acts(Report report) {
    Set<String> acts = new TreeSet<>();
    report.findings().stream()
        .filter(f -> f.role() == Role.FORBIDS_AN_ACT && f.outcome() != Outcome.MEETS)
        .map(TodayVerdict::act)
        .forEach(acts::add);
    Arrays.stream(UntriedAct.values()).map(UntriedAct::words).forEach(acts::add);
    return new Point(
        "Was everyone told what nobody does in this boat: " + String.join("; ", acts) + "?",
        "read it aloud before anybody steps in");
  }

  private static String act(Finding finding) {
    return CheckWords.subject(finding.question().subject());
  }

  private static Point closed(Boat boat) {
    String shut =
        boat.openings().stream()
            .filter(o -> o.closedBy().isPresent())
            .map(o -> closed(o))
            .collect(Collectors.joining(", "));
    String bailer =
        boat.bailer()
            .map(v -> "a bailer of " + new UnitFormat(boat.units()).volume(v, Side.UP))
            .orElse("a bailer or bucket");
    return new Point(
        "Is "
            + (shut.isEmpty() ? "every bung in and every hatch shut" : shut)
            + ", "
            + bailer
            + " tied on, and nothing repaired, added or soaked since it was measured?",
        "close it and tie the bailer on; after any change inspect again");
  }

  private static String closed(Opening opening) {
    return opening.name() + " shut (" + opening.closedBy().orElse("") + ")";
  }

  private static Point backIn(Report report) {
    List<String> not =
        report.findings().stream()
            .filter(f -> CLIMBING_IN.contains(f.question().check()) && f.outcome() != Outcome.MEETS)
            .map(TodayVerdict::act)
            .distinct()
            .toList();
    return new Point(
        "Was it tried how somebody in the water gets back in or out"
            + (not.isEmpty() ? "" : ", without " + String.join(" or ", not))
            + "?",
        "try it in shallow water with somebody standing by; without a way back aboard stay within"
            + " wading depth");
  }

  private static String kg(double mass, UnitFormat units) {
    return units.mass(mass, Side.DOWN);
  }
}
