package thwartwise.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.HullCorrection;
import thwartwise.boat.HullWeight;
import thwartwise.boat.Kit;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.boat.ReadingLabel;
import thwartwise.boat.ReadingLabel.FloatedState;
import thwartwise.boat.ReadingLabel.ReadingPoint;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.proof.HullFit;
import thwartwise.proof.ProofAssessment;
import thwartwise.proof.ProofComparison;
import thwartwise.proof.RollComparison;

/** The text before a proof afloat, and its result, on one screen. */
public final class ProofPage {
  public static final String WITHDRAWN = "The recommendation is withdrawn";
  private static final double INCH = 0.0254;

  private static final List<ReadingPoint> RAILS =
      List.of(ReadingPoint.BOW, ReadingPoint.STERN, ReadingPoint.PORT, ReadingPoint.STARBOARD);

  private final UnitFormat units;
  private final Optional<Boat> kept;
  private final Page page = new Page();

  private ProofPage(Boat boat, Optional<Boat> kept) {
    this.kept = kept;
    this.units = ReaderUnits.of(boat);
  }

  /** Cautions, and what to have at hand. */
  public static String opening(Boat boat) {
    Page page = new Page();
    page.title(boat.name() + ": a proof afloat");
    page.points(CAUTIONS);
    page.paragraph(
        toHand(boat),
        boat.kit().isEmpty()
            ? "No kit is listed, so none is aboard"
            : "Kit listed: " + Sentence.list(boat.kit().stream().map(Kit::name).toList()));
    return page.toString();
  }

  /** What is needed besides the boat. */
  public static String toHand(Boat boat) {
    return "To hand: steel tape, a watch, "
        + (boat.units().isMetric() ? "10 to 20 kg" : "20 to 40 lb")
        + " of water or sand that was weighed, paper";
  }

  public static final List<String> CAUTIONS =
      List.of(
          "Calm water no deeper than an adult's waist, over a firm bottom; no wind",
          "A line from the boat to somebody ashore; a life jacket on everybody near the water",
          "No more people sit in it than were recommended; in doubt nobody does",
          "Stop when an edge comes near the water, or the boat does not come back by itself",
          "Last, if you like, full of water in knee-deep water: battery, motor and electronics"
              + " ashore first; the page of the boat tells it step by step");

  /**
   * The result.
   *
   * @param assessed empty where nothing could be compared
   * @param seen what was observed in the flooded boat
   * @param kept the boat with the proof; empty where it could not be saved
   */
  public static String of(
      Boat boat,
      AfloatProof proof,
      Optional<ProofAssessment> assessed,
      Optional<ObservedTrial> seen,
      Optional<Boat> kept) {
    ProofPage page = new ProofPage(boat, kept);
    page.title(boat, proof);
    assessed.ifPresentOrElse(page::answer, () -> page.nothing(proof));
    seen.ifPresent(trial -> page.page.paragraph(ObservedTrialWords.any(boat, trial)));
    return page.page.toString();
  }

  /** The same proof next to the boat as it is measured now, without readings of its own. */
  public static String again(Boat boat, ProofAssessment assessed, Boat kept) {
    ProofPage page = new ProofPage(boat, Optional.of(kept));
    page.title(boat, assessed.proof());
    page.answer(assessed);
    page.page.paragraph(OF_THAT_DAY);
    return page.page.toString();
  }

  private static final String OF_THAT_DAY =
      "The readings are of that day. Whether the boat was measured again since or changed, they do"
          + " not say, so they correct nothing of its hull";

  private void title(Boat boat, AfloatProof proof) {
    page.title(
        boat.name()
            + ": proof afloat of "
            + TimestampText.day(proof.date())
            + ", by "
            + proof.by());
  }

  private void nothing(AfloatProof proof) {
    page.paragraph(
        proof.hasReadings()
            ? "As it was measured, the boat comes to no rest with what was aboard, so nothing can"
                + " be compared"
            : "No rail was read, so nothing was compared",
        "It proves nothing",
        kept.isPresent() ? "" : NOTHING_KEPT);
  }

  private void answer(ProofAssessment assessed) {
    if (assessed.comparison().agrees()) {
      page.paragraph("The boat floats as it was measured, within what its measurements may be off");
    } else {
      outside(assessed);
    }
    page.gap().table(readings(assessed)).gap();
    page.paragraph(heels(assessed));
    page.paragraph(distances(assessed.comparison()));
    assessed.fit().ifPresent(fit -> fitted(fit, assessed.mayBeOff()));
    assessed.roll().ifPresent(this::roll);
    page.paragraph(
        assessed.comparison().agrees() ? counting() : NOBODY_GOES,
        kept.isPresent() ? KEPT : NOT_KEPT,
        assessed.comparison().agrees() ? "" : TELL);
  }

  /** What counts of the hull from now on. */
  private String counting() {
    return kept.flatMap(HullCorrection::of)
        .map(correction -> ProofWords.counting(correction, units))
        .orElse("");
  }

  private static final String NOBODY_GOES =
      "Nobody goes until it is measured again, or a later proof that reads as much agrees";
  private static final String TELL =
      "Records and pages made before still show the old answer, so tell all who use it";
  private static final String KEPT = "It is kept with the boat";
  private static final String NOT_KEPT =
      "The boat file was changed meanwhile, so it is not kept: prove the boat again";
  private static final String NOTHING_KEPT = "Nothing is kept";

  private void outside(ProofAssessment assessed) {
    Optional<SuspectedMeasurement> suspect = assessed.outcome().suspect();
    page.paragraph(WITHDRAWN + ": the boat does not float as it was measured");
    page.paragraph(
        suspect
            .map(slip -> "Most likely wrong is " + ProofWords.slip(slip, units))
            .orElse("No single measurement explains it"),
        suspect
            .map(
                slip ->
                    "That explains "
                        + Math.round(100 * slip.explains())
                        + " of 100 parts of what was seen")
            .orElse("Measure the boat again"));
  }

  private Table readings(ProofAssessment assessed) {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column("Rail, " + unit() + ": read (worked out)", 30));
    for (ReadingPoint point : RAILS) {
      columns.add(new Table.Column(Sentence.capital(ProofWords.point(point)), 11));
    }
    List<List<String>> rows =
        Arrays.stream(FloatedState.values())
            .filter(state -> isRead(assessed, state))
            .map(state -> row(assessed, state))
            .toList();
    return Table.close(columns, rows);
  }

  private static String distances(ProofComparison comparison) {
    return "All together off by "
        + Rounding.up(comparison.distance(), 1)
        + ", of which the hull's weight explains "
        + Rounding.up(comparison.massDistance(), 1)
        + "; 95 of 100 boats measured like this stay under "
        + Rounding.down(comparison.limit(), 1)
        + " and "
        + Rounding.down(comparison.massLimit(), 1);
  }

  private static boolean isRead(ProofAssessment assessed, FloatedState state) {
    return assessed.labels().stream()
        .anyMatch(label -> label.state() == state && RAILS.contains(label.point()));
  }

  /** The heel to the side of the weight; inside, starboard down is positive. */
  private static String heels(ProofAssessment assessed) {
    List<String> heels = new ArrayList<>();
    for (int at = 0; at < assessed.labels().size(); at++) {
      ReadingLabel label = assessed.labels().get(at);
      if (label.point() == ReadingPoint.HEEL) {
        double predicted = assessed.predicted().get(at);
        double read = predicted + assessed.comparison().off().get(at);
        heels.add(
            String.format(
                Locale.ROOT,
                "%s %.1f (%.1f)",
                ProofWords.state(label.state()),
                Math.toDegrees(Math.abs(read)),
                Math.toDegrees(Math.abs(predicted))));
      }
    }
    return heels.isEmpty() ? "" : "Heel, degrees: read (worked out): " + String.join(", ", heels);
  }

  private List<String> row(ProofAssessment assessed, FloatedState state) {
    List<String> row = new ArrayList<>();
    row.add(ProofWords.state(state));
    for (ReadingPoint point : RAILS) {
      int at = assessed.labels().indexOf(new ReadingLabel(state, point));
      row.add(at < 0 ? "-" : reading(assessed, at));
    }
    return row;
  }

  private String reading(ProofAssessment assessed, int at) {
    double predicted = assessed.predicted().get(at);
    double read = predicted + assessed.comparison().off().get(at);
    return fine(read) + " (" + fine(predicted) + ")";
  }

  private String unit() {
    return units.system().isMetric() ? "mm" : "in";
  }

  private String fine(double metres) {
    return units.system().isMetric()
        ? Rounding.nearest(1000 * metres, 0)
        : Rounding.nearest(metres / INCH, 1);
  }

  private void fitted(HullFit fit, HullWeight stated) {
    List<Table.Column> columns =
        List.of(
            new Table.Column("Bare hull, what fits best", 30),
            new Table.Column("Before", 22),
            new Table.Column("After", 22));
    HullWeight before = fit.stated();
    HullWeight after = fit.fitted();
    HullWeight left = fit.spreads();
    page.table(
        Table.close(
            columns,
            List.of(
                List.of(
                    "weight", mass(before.mass(), stated.mass()), mass(after.mass(), left.mass())),
                List.of(
                    "its centre, from aft",
                    length(before.along(), stated.along()),
                    length(after.along(), left.along())),
                List.of(
                    "its centre, over the bottom",
                    length(before.height(), stated.height()),
                    length(after.height(), left.height())))));
    page.paragraph(
        "+- is one standard deviation",
        fit.massHeld()
            ? "The weight was corrected by no more than it may be off, though more would fit better"
            : "");
  }

  private String mass(double kilograms, double spread) {
    double unit = units.system().isMetric() ? 1 : UnitFormat.POUND;
    return withSpread(kilograms / unit, spread / unit, 1)
        + (units.system().isMetric() ? " kg" : " lb");
  }

  private String length(double metres, double spread) {
    return units.system().isMetric()
        ? withSpread(metres, spread, 2) + " m"
        : withSpread(metres / INCH, spread / INCH, 1) + " in";
  }

  private static String withSpread(double value, double spread, int decimals) {
    return Rounding.nearest(value, decimals) + " +- " + Rounding.up(spread, decimals);
  }

  private void roll(RollComparison roll) {
    page.paragraph(
        String.format(
            Locale.ROOT,
            "Roll: %.2f s a swing, %.2f to %.2f s expected%s",
            roll.measured(),
            Math.floor(100 * roll.least()) / 100,
            Math.ceil(100 * roll.most()) / 100,
            roll.agrees() ? "" : ": it does not agree, so look at the heights of weights again"),
        "A cross-check; it decides nothing");
  }
}
