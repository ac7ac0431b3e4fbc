package thwartwise.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.crew.Recommendation;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** One piece of advice in sentences: what it gains, what else changes, what it costs. */
final class AdviceWords {
  private AdviceWords() {}

  /**
   * How to do it and what it costs.
   *
   * @param gains whether to name the gain, which the first pieces have done already
   * @param said methods and cautions that were given already and need not be repeated
   */
  static String[] phrases(AdvicePiece piece, boolean gains, Set<String> said, UnitFormat units) {
    List<String> sentences = new ArrayList<>();
    DeedWords words = DeedWords.of(piece.deed(), units);
    sentences.add(words.deed());
    sentences.add(gains ? Sentence.capital(buys(piece, units)) : "");
    piece.moved().map(moved -> moved(moved, units)).ifPresent(sentences::add);
    sentences.add("Effort: " + EffortWords.of(piece.effort()));
    List<String> how =
        Stream.concat(Stream.of(words.how()), words.cautions().stream()).filter(said::add).toList();
    sentences.addAll(how);
    sentences.add(how.size() <= words.cautions().size() ? "The rest as above" : "");
    sentences.addAll(costs(piece));
    return sentences.toArray(String[]::new);
  }

  /** The change and its gain, for the list of what to do first. */
  static String[] first(AdvicePiece piece, Recommendation crew, UnitFormat units) {
    return new String[] {
      DeedWords.of(piece.deed(), units).deed()
          + ": "
          + buys(piece, units)
          + nearly(piece, crew, units),
      costs(piece).isEmpty() ? "" : "The sheet about changes says what gets worse"
    };
  }

  private static String buys(AdvicePiece piece, UnitFormat units) {
    List<String> gains = new ArrayList<>();
    if (piece.people() > 0) {
      gains.add(FigureText.adults(piece.people()) + " more");
    }
    if (piece.crew() > 0) {
      gains.add(units.mass(piece.crew(), Side.DOWN) + " more of people");
    }
    if (piece.load() > 0) {
      gains.add(units.mass(piece.load(), Side.DOWN) + " more in all");
    }
    List<String> all = new ArrayList<>();
    if (!gains.isEmpty()) {
      all.add(Sentence.list(gains));
    }
    if (piece.load() < 0) {
      all.add(
          units.mass(-piece.load(), Side.UP)
              + " less in all, because extra weight counts at its worst place");
    }
    if (!piece.corrects().isEmpty()) {
      all.add(
          "puts right what falls short as loaded today ("
              + Subjects.listed(piece.corrects())
              + ")");
    }
    return String.join("; ", all);
  }

  /**
   * What may go without the change, because the step from a little less than an adult to an adult
   * is only a few kilograms.
   */
  private static String nearly(AdvicePiece piece, Recommendation crew, UnitFormat units) {
    return crew.nearlyOneMore()
        .filter(limit -> piece.people() > 0)
        .map(limit -> "; without it, " + CrewWords.heads(limit, units) + " may go")
        .orElse("");
  }

  private static String moved(AdviceReading reading, UnitFormat units) {
    return "With "
        + LoadCaseWords.crew(reading.crew(), units)
        + ", "
        + CheckWords.of(reading.question())
        + ": from "
        + figure(reading.before(), units)
        + " to "
        + figure(reading.after(), units)
        + ", limit "
        + MarginWords.limit(reading.before(), units);
  }

  private static String figure(Margin margin, UnitFormat units) {
    return margin.value().isEmpty() || margin.turnsOver()
        ? "rolling over"
        : MarginWords.value(margin, units);
  }

  /**
   * What the larger crew must not do, and what is worse for the same people, load case by load
   * case.
   */
  private static List<String> costs(AdvicePiece piece) {
    List<String> costs = new ArrayList<>();
    if (!piece.forbiddenAfterwards().isEmpty()) {
      costs.add(
          "Forbidden with the larger crew: "
              + Sentence.list(
                  piece.forbiddenAfterwards().stream().map(CheckWords::subject).toList()));
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
        + ") these get worse: "
        + String.join("; ", byOutcome.entrySet().stream().map(AdviceWords::fallen).toList());
  }

  private static String fallen(Map.Entry<Outcome, List<String>> fallen) {
    return Sentence.list(fallen.getValue()) + " (then: " + fallen.getKey().word() + ")";
  }

  /** Questions in a list: the common subject of several stands once, before a colon. */
  static final class Subjects {
    private Subjects() {}

    static String listed(List<CheckQuestion> questions) {
      Map<Subject, Set<String>> measures = new LinkedHashMap<>();
      for (CheckQuestion question : questions) {
        Set<String> named =
            measures.computeIfAbsent(question.subject(), s -> new LinkedHashSet<>());
        String measure = CheckWords.measure(question);
        if (!measure.isEmpty()) {
          named.add(measure);
        }
      }
      return String.join(
          "; ", measures.entrySet().stream().map(e -> words(e.getKey(), e.getValue())).toList());
    }

    private static String words(Subject subject, Set<String> measures) {
      String words = CheckWords.subject(subject);
      return measures.isEmpty() ? words : words + ": " + Sentence.list(List.copyOf(measures));
    }
  }
}
