package thwartwise.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.AdviceReading;
import thwartwise.inspection.AdviceWorse;
import thwartwise.inspection.Recommendation;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** One piece of advice in sentences: what it buys, what it moves, what it costs. */
final class AdviceWords {
  private AdviceWords() {}

  /**
   * @param crew what is recommended without it
   */
  static String[] told(AdvicePiece piece, Recommendation crew) {
    List<String> sentences = new ArrayList<>();
    sentences.add(piece.deed());
    sentences.add(buys(piece, crew));
    piece.moved().map(AdviceWords::moved).ifPresent(sentences::add);
    sentences.add(piece.how());
    sentences.add("Effort: " + piece.effort().words());
    sentences.addAll(piece.cautions());
    sentences.addAll(costs(piece));
    return sentences.toArray(String[]::new);
  }

  /** The deed and what it buys, for the list of what to do first. */
  static String[] first(AdvicePiece piece, Recommendation crew) {
    List<String> sentences = new ArrayList<>(List.of(piece.deed(), buys(piece, crew)));
    if (!costs(piece).isEmpty()) {
      sentences.add("It has its price: see what could be changed, below");
    }
    return sentences.toArray(String[]::new);
  }

  private static String buys(AdvicePiece piece, Recommendation crew) {
    List<String> gains = new ArrayList<>();
    if (piece.people() > 0) {
      gains.add(FigureText.adults(piece.people()) + " more" + nearly(crew));
    }
    if (piece.crew() > 0) {
      gains.add(FigureText.with(FigureText.down(piece.crew(), 0), "kg") + " more of people");
    }
    if (piece.load() > 0) {
      gains.add(FigureText.with(FigureText.down(piece.load(), 0), "kg") + " more in all");
    }
    String buys = gains.isEmpty() ? "" : "It buys " + Sentence.list(gains);
    String less =
        piece.load() < 0
            ? "; the load in all is "
                + FigureText.with(FigureText.up(-piece.load(), 0), "kg")
                + " less than now, because weight besides people is reckoned where it stands worst"
            : "";
    String right =
        piece.putsRight().isEmpty()
            ? ""
            : (buys.isEmpty() ? "It" : ", and it")
                + " puts right what holds it back as loaded today ("
                + Subjects.listed(piece.putsRight())
                + ")";
    return buys + less + right;
  }

  /** The step from a little less than an adult to an adult is next to none in kilograms. */
  private static String nearly(Recommendation crew) {
    return crew.nearlyOneMore()
        .map(limit -> " (where now " + CrewSection.heads(limit) + " may go)")
        .orElse("");
  }

  private static String moved(AdviceReading reading) {
    return "With "
        + reading.crew()
        + ", "
        + reading.check()
        + " goes from "
        + figure(reading, reading.before())
        + " to "
        + figure(reading, reading.after())
        + "; at "
        + (reading.atLeast() ? "least " : "most ")
        + limit(reading)
        + (reading.atLeast() ? " is needed" : " is allowed");
  }

  private static String figure(AdviceReading reading, OptionalDouble value) {
    if (value.isEmpty() || turnsOver(reading, value.getAsDouble())) {
      return "turning over";
    }
    double shown = reading.unit().shown(value.getAsDouble());
    int decimals = reading.unit().decimals();
    return FigureText.with(
        reading.atLeast() ? FigureText.down(shown, decimals) : FigureText.up(shown, decimals),
        reading.unit().word());
  }

  private static boolean turnsOver(AdviceReading reading, double value) {
    return reading.unit() == Unit.DEGREE && value > Math.PI / 2;
  }

  private static String limit(AdviceReading reading) {
    double shown = reading.unit().shown(reading.limit());
    int decimals = reading.unit().decimals();
    return FigureText.with(
        reading.atLeast() ? FigureText.up(shown, decimals) : FigureText.down(shown, decimals),
        reading.unit().word());
  }

  /**
   * What the larger crew must not do, and what is worse for the same people, loading by loading.
   */
  private static List<String> costs(AdvicePiece piece) {
    List<String> costs = new ArrayList<>();
    if (!piece.thenNobody().isEmpty()) {
      costs.add(
          "With so many aboard nobody does what fewer could: " + Sentence.list(piece.thenNobody()));
    }
    Map<String, List<AdviceWorse>> byLoading = new LinkedHashMap<>();
    piece
        .worse()
        .forEach(w -> byLoading.computeIfAbsent(w.loading(), l -> new ArrayList<>()).add(w));
    byLoading.forEach((loading, worse) -> costs.add(worse(loading, worse)));
    return costs;
  }

  private static String worse(String loading, List<AdviceWorse> worse) {
    Map<String, Outcome> bySubject = new LinkedHashMap<>();
    worse.forEach(w -> bySubject.merge(w.subject(), w.after(), Outcome::worse));
    Map<Outcome, List<String>> byOutcome = new EnumMap<>(Outcome.class);
    bySubject.forEach(
        (subject, after) -> byOutcome.computeIfAbsent(after, o -> new ArrayList<>()).add(subject));
    return "With the same people aboard ("
        + loading
        + ") it makes worse: "
        + String.join("; ", byOutcome.entrySet().stream().map(AdviceWords::fallen).toList());
  }

  private static String fallen(Map.Entry<Outcome, List<String>> fallen) {
    return Sentence.list(fallen.getValue()) + " (then: " + fallen.getKey().word() + ")";
  }
}
