package thwartwise.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.CheckWords;
import thwartwise.checks.LoadCaseWords;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.AdviceReading;
import thwartwise.inspection.AdviceWorse;
import thwartwise.inspection.Recommendation;
import thwartwise.loadcase.LoadCase.Kind;
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
    DeedWords words = DeedWords.of(piece.deed());
    sentences.add(words.deed());
    sentences.add(buys(piece, crew));
    piece.moved().map(AdviceWords::moved).ifPresent(sentences::add);
    sentences.add(words.how());
    sentences.add("Effort: " + EffortWords.of(piece.effort()));
    sentences.addAll(words.cautions());
    sentences.addAll(costs(piece));
    return sentences.toArray(String[]::new);
  }

  /** The deed and what it buys, for the list of what to do first. */
  static String[] first(AdvicePiece piece, Recommendation crew) {
    List<String> sentences =
        new ArrayList<>(List.of(DeedWords.of(piece.deed()).deed(), buys(piece, crew)));
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
        + LoadCaseWords.crew(reading.crew())
        + ", "
        + CheckWords.of(reading.question())
        + " goes from "
        + figure(reading.before())
        + " to "
        + figure(reading.after())
        + "; at "
        + (reading.before().atLeast() ? "least " : "most ")
        + MarginWords.limit(reading.before())
        + (reading.before().atLeast() ? " is needed" : " is allowed");
  }

  private static String figure(Margin margin) {
    return margin.value().isEmpty() || margin.turnsOver()
        ? "turning over"
        : MarginWords.value(margin);
  }

  /**
   * What the larger crew must not do, and what is worse for the same people, loading by loading.
   */
  private static List<String> costs(AdvicePiece piece) {
    List<String> costs = new ArrayList<>();
    if (!piece.thenNobody().isEmpty()) {
      costs.add(
          "With so many aboard nobody does what fewer could: "
              + Sentence.list(piece.thenNobody().stream().map(CheckWords::subject).toList()));
    }
    Map<Kind, List<AdviceWorse>> byLoading = new LinkedHashMap<>();
    piece
        .worse()
        .forEach(w -> byLoading.computeIfAbsent(w.loading(), l -> new ArrayList<>()).add(w));
    byLoading.forEach((loading, worse) -> costs.add(worse(loading, worse)));
    return costs;
  }

  private static String worse(Kind loading, List<AdviceWorse> worse) {
    Map<Subject, Outcome> bySubject = new LinkedHashMap<>();
    worse.forEach(w -> bySubject.merge(w.question().subject(), w.after(), Outcome::worse));
    Map<Outcome, List<String>> byOutcome = new EnumMap<>(Outcome.class);
    bySubject.forEach(
        (subject, after) ->
            byOutcome
                .computeIfAbsent(after, o -> new ArrayList<>())
                .add(CheckWords.subject(subject)));
    return "With the same people aboard ("
        + LoadCaseWords.kind(loading)
        + ") it makes worse: "
        + String.join("; ", byOutcome.entrySet().stream().map(AdviceWords::fallen).toList());
  }

  private static String fallen(Map.Entry<Outcome, List<String>> fallen) {
    return Sentence.list(fallen.getValue()) + " (then: " + fallen.getKey().word() + ")";
  }
}
