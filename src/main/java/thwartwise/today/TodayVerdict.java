package thwartwise.today;

import java.time.LocalDate;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.checks.Finding;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.UnitFormat;
import thwartwise.record.InspectionRecord;
import thwartwise.report.CheckWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.RefusalWords;

/**
 * What must be answered with yes before somebody goes afloat today. It follows from the findings
 * and the waters and asks what no inspection can see.
 *
 * @param held why nobody goes whatever is answered; empty when the questions decide
 * @param figures what the questions speak of, to be read aloud before them
 * @param points in the order of a morning at the slipway
 */
public record TodayVerdict(List<String> held, List<Figures> figures, List<Point> points) {

  /**
   * Figures of one kind, stated once so that the questions can be short.
   *
   * @param label of at most six letters
   */
  public record Figures(String label, String words) {}

  /**
   * One point.
   *
   * @param name in a word or two
   * @param question to be answered with yes, no or don't know; two lines at most
   * @param why in a sentence
   * @param todo what to do about it when the answer is not yes
   */
  public record Point(String name, String question, String why, String todo) {}

  public TodayVerdict {
    held = List.copyOf(held);
    figures = List.copyOf(figures);
    points = List.copyOf(points);
  }

  public static TodayVerdict of(InspectionRecord inspection) {
    return of(inspection.report(), inspection.boat(), inspection.date().toLocalDate());
  }

  /**
   * The verdict.
   *
   * @param day of the inspection; a trial counts on its own day alone
   */
  public static TodayVerdict of(Report report, Boat boat, LocalDate day) {
    List<String> held = held(report, new UnitFormat(boat.units()));
    return held.isEmpty()
        ? new TodayVerdict(
            held, new TodayFigures(report, boat).all(), new TodayPoints(report, boat, day).all())
        : new TodayVerdict(held, List.of(), List.of());
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

  /**
   * The loading of the boat file can be changed on the day; what refuses another loading cannot.
   */
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
}
