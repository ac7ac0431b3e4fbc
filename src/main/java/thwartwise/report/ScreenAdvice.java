package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.checks.CheckWords;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.Report;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/** The things to do first, each with what it buys and costs. */
final class ScreenAdvice {
  private static final String LABEL = "First:";

  private ScreenAdvice() {}

  static void write(ScreenLines lines, Report report, ScreenDetail detail) {
    List<AdvicePiece> pieces =
        AdviceSection.first(report.advice()).stream().limit(detail.pieces()).toList();
    for (int i = 0; i < pieces.size(); i++) {
      AdvicePiece piece = pieces.get(i);
      String words =
          Sentence.of(DeedWords.of(piece.deed()).deed())
              + " "
              + Sentence.of(buys(piece, detail.gains()) + costs(piece, detail.prices()));
      lines.add(i == 0 ? LABEL : "", (i + 1) + ". ", words);
    }
  }

  private static String buys(AdvicePiece piece, boolean all) {
    List<String> gains = new ArrayList<>();
    if (piece.people() > 0) {
      gains.add(FigureText.adults(piece.people()) + " more");
    }
    if (piece.crew() > 0) {
      gains.add(kg(FigureText.down(piece.crew(), 0)) + " of people");
    }
    if (piece.load() > 0) {
      gains.add(kg(FigureText.down(piece.load(), 0)) + " in all");
    }
    List<String> words = new ArrayList<>();
    if (!gains.isEmpty()) {
      words.add("buys " + Sentence.list(all ? gains : gains.subList(0, 1)));
    }
    if (!piece.putsRight().isEmpty()) {
      words.add("puts right what holds it back today");
    }
    if (piece.load() < 0) {
      words.add("costs " + kg(FigureText.up(-piece.load(), 0)) + " of the load in all");
    }
    return String.join("; ", words);
  }

  /** A price that has no room is said to be on the page. */
  private static String costs(AdvicePiece piece, boolean whole) {
    String effort = "; " + EffortWords.of(piece.effort());
    List<String> worse =
        piece.worse().stream()
            .map(w -> w.question().subject())
            .distinct()
            .map(CheckWords::subject)
            .toList();
    if (worse.isEmpty() && piece.thenNobody().isEmpty()) {
      return effort;
    }
    if (!whole) {
      return effort + "; its price is on the page";
    }
    return effort
        + (worse.isEmpty() ? "" : "; worse then: " + Sentence.list(worse))
        + (piece.thenNobody().isEmpty()
            ? ""
            : "; then nobody does: "
                + Sentence.list(piece.thenNobody().stream().map(CheckWords::subject).toList()));
  }

  private static String kg(String figure) {
    return FigureText.with(figure, "kg");
  }
}
