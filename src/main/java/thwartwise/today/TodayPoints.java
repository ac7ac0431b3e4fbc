package thwartwise.today;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import thwartwise.boat.Boat;
import thwartwise.checks.CheckId;
import thwartwise.checks.Outcome;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.report.CheckWords;
import thwartwise.today.TodayVerdict.Point;

/**
 * The ten points of today, each two lines at most; figures that need more room stand above them
 * all. Sources: classes of life jackets, EN ISO 12402-4 and -5 (READ); swimmers, UK youth activity
 * rules (READ); cold water below 15 degrees, lifeboat and paddling bodies (READ).
 */
record TodayPoints(
    Report report, Boat boat, LocalDate day, UnitFormat units, TodayFigures figures) {
  private static final Set<CheckId> CLIMBING_IN =
      EnumSet.of(CheckId.CLIMBING_IN_OVER_THE_SIDE, CheckId.CLIMBING_IN_OVER_THE_STERN);

  TodayPoints(Report report, Boat boat, LocalDate day) {
    this(report, boat, day, new UnitFormat(boat.units()), new TodayFigures(report, boat));
  }

  List<Point> all() {
    return List.of(
        people(),
        load(),
        told(),
        jackets(),
        swimmers(),
        water(),
        cold(),
        closed(),
        ashore(),
        backIn());
  }

  /** The people. A trial counts only for the people who took part in it. */
  private Point people() {
    String together = mass(report.recommendation().crew(), Side.DOWN);
    return report.observedTrial(boat, day).isPresent()
        ? new Point(
            "People",
            "Do only those go who sat in it in today's trial, dressed as then, each on the same"
                + " seat, each within the weights above?",
            "The trial showed nobody else held up, and no other seat",
            "leave the others ashore, or repeat the trial with them")
        : new Point(
            "People",
            "Was everyone weighed, dressed, jacket on: each within the weights above, all together"
                + " within "
                + together
                + "?",
            figures.people() + ". A guess is mostly too light",
            "weigh everyone as they go afloat, and leave people ashore until they are within it");
  }

  private Point load() {
    return new Point(
        "Load",
        "Is the load within "
            + mass(report.recommendation().load(), Side.DOWN)
            + " with the people: the kit where it was listed, and no more besides than stands"
            + " above?",
        "The load is " + figures.load() + ". Weight that nobody counted lowers every edge",
        "weigh what goes aboard, leave the rest ashore, and stow the kit where the file has it");
  }

  private Point told() {
    return new Point(
        "Told",
        "Was everyone told their seat, what nobody does in this boat, and to stay with it, hold"
            + " on and call if it fills?",
        "Seats: " + figures.seats() + ". Nobody does: " + String.join("; ", figures.acts()),
        "read seats and the rest aloud before anybody steps in; have each say where they sit and"
            + " who holds whom");
  }

  private Point jackets() {
    return new Point(
        "Jackets",
        "Has everyone a jacket on, of their size, fastened: 100\u00a0N for children and who cannot"
            + " swim, 50\u00a0N only for swimmers over "
            + units.either("25 kg", () -> mass(25, Side.UP))
            + " near help?",
        "Nobody puts one on in the water. 100\u00a0N is EN ISO 12402-4, 50\u00a0N is EN ISO"
            + " 12402-5: it stands on the label",
        "find the right jackets, or leave people without one ashore");
  }

  private Point swimmers() {
    return new Point(
        "Swimmers",
        "Is it known who cannot swim "
            + units.distance(50, Side.UP)
            + " in these clothes and float five minutes: at most one, or an adult for each?",
        "A person who cannot swim needs somebody to hold them",
        "ask and try it in standing depth; count everybody who is not sure as a non-swimmer");
  }

  private Point water() {
    return new Point(
        "Water",
        "Is the water no rougher than stands above, now and by the forecast? Do all go ashore"
            + " at many white caps (force 4), thunder or fog?",
        "The figures hold for no rougher water than this: " + figures.water(),
        "look at the water and the forecast for the whole time out, agree on what ends it; go"
            + " where it is calmer, or state these waters in the boat file and inspect again");
  }

  private Point cold() {
    String said =
        boat.waters()
            .temperature()
            .map(t -> " (the file says " + degrees(t, Side.DOWN, "degrees") + ")")
            .orElse("");
    return new Point(
        "Cold",
        "Is everyone dressed for being in the water"
            + said
            + ", and if it is below "
            + degrees(15, Side.UP, "degrees Celsius")
            + ", does nobody go alone?",
        "Cold water takes the breath first and the strength next",
        "take the temperature; dress for the water and not for the air, or stay ashore");
  }

  private String degrees(double celsius, Side side, String metric) {
    return units.either(
        String.format(Locale.ROOT, "%.0f ", Math.floor(celsius)) + metric,
        () -> units.temperature(celsius, side));
  }

  private Point closed() {
    String shut =
        figures.closedOpenings().isEmpty()
            ? "every bung in and every hatch shut"
            : "all shut that stands above";
    String bailer =
        boat.bailer()
            .map(v -> "a bailer of " + units.volume(v, Side.UP))
            .orElse("a bailer or bucket");
    return new Point(
        "Closed",
        "Is "
            + shut
            + ", "
            + bailer
            + " tied on, and nothing repaired, added or soaked since it was measured?",
        (figures.closedOpenings().isEmpty() ? "" : figures.closedOpenings() + ". ")
            + "An open hole fills the boat while everybody looks ahead",
        "close it and tie the bailer on; after any change inspect again");
  }

  private static Point ashore() {
    return new Point(
        "Ashore",
        "Does somebody ashore know who goes, where and when you are due, and who comes for you,"
            + " in what, if the boat fills?",
        "Nobody looks for people who are not missed",
        "tell somebody who stays ashore, with a time and a telephone number, and name who comes,"
            + " in what, and how long that takes; without an answer stay by the bank");
  }

  private Point backIn() {
    String not =
        report.findings().stream()
            .filter(f -> CLIMBING_IN.contains(f.question().check()) && f.outcome() != Outcome.MEETS)
            .map(f -> CheckWords.subject(f.question().subject()))
            .distinct()
            .collect(Collectors.joining(" or "));
    return new Point(
        "Back in",
        "Was it tried how somebody in the water gets back in or out"
            + (not.isEmpty() ? "" : ", without " + not)
            + "?",
        "A person who cannot get back in goes cold in the water",
        "try it in shallow water with somebody standing by; without a way back aboard stay within"
            + " wading depth");
  }

  private String mass(double kilograms, Side side) {
    return units.mass(kilograms, side);
  }
}
