package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MethodEvidence;
import thwartwise.checks.Margin;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.FigureSpread;
import thwartwise.spread.InputKind;
import thwartwise.spread.Remeasurement;

/** How sure the answer is, on one screen: fewer people, the figures behind it, what to measure. */
public final class SpreadPage {
  /** The number of figures shown, the least sure first. */
  private static final int FIGURES = 3;

  private final Boat boat;
  private final UnitFormat units;
  private final Page page = new Page();

  private final Set<InputKind> better;

  private SpreadPage(Boat boat, Set<InputKind> better) {
    this.boat = boat;
    this.better = better;
    this.units = ReaderUnits.of(boat);
  }

  /**
   * The page.
   *
   * @param spread empty where nothing is recommended
   * @param better kinds of measurement that were taken with more care
   */
  public static String of(Boat boat, Optional<BoatSpread> spread, Set<InputKind> better) {
    SpreadPage page = new SpreadPage(boat, better);
    page.page.title(boat.name() + ": how sure the answer is");
    spread
        .filter(s -> s.recommended() > 0)
        .ifPresentOrElse(page::answer, () -> page.nothing(spread));
    return page.page.toString();
  }

  private void nothing(Optional<BoatSpread> spread) {
    page.paragraph(
        "Nobody is recommended in this boat, so there is no answer to be sure of",
        "Type inspect for the reasons");
    spread.filter(BoatSpread::isLowered).ifPresent(s -> page.paragraph(words(s).lowered()));
    spread.filter(s -> !s.again().isEmpty()).ifPresent(this::again);
  }

  private void answer(BoatSpread spread) {
    page.paragraph(people(spread));
    page.gap().table(figures(spread)).gap();
    again(spread);
    page.paragraph(
        measured()
            + " a mass may be off by "
            + percent(spread.unsaid().massFactor() - 1)
            + ", a chamber by "
            + percent(1 - spread.unsaid().volumeFactor())
            + ", edges and seats by "
            + units.label(spread.unsaid().freeboardLoss())
            + " (one standard deviation, judgement)");
    page.paragraph(
        "Kilograms for each number of people and each seating are reported as far as 95 of 100 boats"
            + " carry them",
        "Waves, wind and what people do are not in it; it never allows more than inspect",
        Disclaimer.LAST_WORD);
  }

  private String measured() {
    List<String> said = new ArrayList<>();
    List<MeasuringMethod> counting = new MethodEvidence(boat).counting();
    if (!counting.isEmpty()) {
      said.add("As said: " + Sentence.list(MethodWords.of(counting)));
    }
    if (!better.isEmpty()) {
      said.add(
          "Measured with care: "
              + Sentence.list(better.stream().sorted().map(InputWords::name).toList()));
    }
    return said.isEmpty() ? "Nobody said how it was measured:" : String.join(". ", said) + ". Else";
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private String[] people(BoatSpread spread) {
    SpreadWords words = words(spread);
    String first =
        words.recommended()
            + (spread.recommended() > 0 && spread.isAdults()
                ? " of " + units.mass(spread.each(), Side.DOWN)
                : "")
            + " recommended; "
            + words.fewer();
    return spread.isLowered() ? new String[] {first, words.lowered()} : new String[] {first};
  }

  private SpreadWords words(BoatSpread spread) {
    return new SpreadWords(boat, spread, units);
  }

  private Table figures(BoatSpread spread) {
    List<Table.Column> columns =
        List.of(
            new Table.Column("With " + FigureText.adults(spread.recommended()), 26),
            new Table.Column("From", 9),
            new Table.Column("Middle", 9),
            new Table.Column("To", 9),
            new Table.Column("Limit", 9),
            new Table.Column("Met in", 10));
    List<List<String>> rows = new ArrayList<>();
    spread.figures().stream().limit(FIGURES).forEach(f -> rows.add(row(f)));
    return Table.close(columns, rows);
  }

  private List<String> row(FigureSpread figure) {
    Margin margin = figure.margin();
    String name = CheckWords.of(figure.question());
    if (!figure.isKnown() || margin.value().isEmpty()) {
      return List.of(name, "lost one spread away");
    }
    double value = margin.value().getAsDouble();
    Side middle = margin.atLeast() ? Side.DOWN : Side.UP;
    Side limit = margin.atLeast() ? Side.UP : Side.DOWN;
    return List.of(
        name,
        shown(margin, figure.range().low(), Side.DOWN),
        shown(margin, value, middle),
        shown(margin, figure.range().high(), Side.UP),
        shown(margin, margin.limit(), limit),
        (int) Math.floor(100 * figure.share() + 1e-9) + " of 100");
  }

  private String shown(Margin margin, double si, Side side) {
    return FigureWords.shown(si, margin.unit(), side, units);
  }

  private void again(BoatSpread spread) {
    if (spread.again().isEmpty()) {
      page.paragraph("No single measurement would make it much surer");
    }
    for (Remeasurement again : spread.again()) {
      page.point(
          "Worth ten minutes: "
              + InputWords.betterWay(again, boat)
              + " (it makes up "
              + percent(again.share())
              + " of the spread of: "
              + CheckWords.of(again.governs())
              + ")",
          words(spread).gain(again.people()));
    }
  }
}
