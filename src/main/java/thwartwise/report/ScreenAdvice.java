package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.advice.AdvicePiece;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;
import thwartwise.record.InspectionRecord;
import thwartwise.report.Screen.ScreenDetail;
import thwartwise.report.Screen.ScreenLines;

/** The things to do first, each with its gain and effort. */
final class ScreenAdvice {
  private static final String LABEL = "First:";

  /** The greatest number on the screen; more is for the page. */
  private static final int MOST = 3;

  private ScreenAdvice() {}

  static void write(
      ScreenLines lines, InspectionRecord inspection, ScreenDetail detail, UnitFormat units) {
    List<AdvicePiece> pieces =
        AdviceSection.first(inspection.report().advice()).stream().limit(detail.pieces()).toList();
    List<String> all = new ArrayList<>();
    List<String> toPutRight = ChecklistWords.toPutRight(inspection);
    toPutRight.stream().limit(MOST).forEach(words -> all.add(Sentence.of(words)));
    if (KneeDeepTrial.isAskedOf(inspection)) {
      all.add(Sentence.of(KneeDeepTrial.named()));
    }
    pieces.forEach(piece -> all.add(words(piece, detail, units)));
    int shownPieces = toPutRight.isEmpty() ? all.size() : Math.min(all.size(), MOST);
    for (int i = 0; i < shownPieces; i++) {
      lines.add(i == 0 ? LABEL : "", (i + 1) + ". ", all.get(i));
    }
  }

  private static String words(AdvicePiece piece, ScreenDetail detail, UnitFormat units) {
    return Sentence.of(DeedWords.of(piece.deed(), units).deed())
        + " "
        + Sentence.of(buys(piece, detail.gains(), units) + costs(piece, detail.prices()));
  }

  private static String buys(AdvicePiece piece, boolean all, UnitFormat units) {
    List<String> gains = new ArrayList<>();
    if (piece.people() > 0) {
      gains.add(FigureText.adults(piece.people()));
    }
    if (piece.crew() > 0) {
      gains.add(units.mass(piece.crew(), Side.DOWN) + " of people");
    }
    if (piece.load() > 0) {
      gains.add(units.mass(piece.load(), Side.DOWN) + " in all");
    }
    List<String> words = new ArrayList<>();
    if (!gains.isEmpty()) {
      words.add("gains " + Sentence.list(all ? gains : gains.subList(0, 1)));
    }
    if (!piece.corrects().isEmpty()) {
      words.add("puts right what falls short today");
    }
    if (piece.load() < 0) {
      words.add("costs " + units.mass(-piece.load(), Side.UP) + " of the total load");
    }
    return String.join("; ", words);
  }

  /** The effort; without room for it, the page is named. */
  private static String costs(AdvicePiece piece, boolean whole) {
    String effort = "; " + EffortWords.of(piece.effort());
    List<String> worse =
        piece.worse().stream()
            .map(w -> w.question().subject())
            .distinct()
            .map(CheckWords::subject)
            .toList();
    if (worse.isEmpty() && piece.forbiddenAfterwards().isEmpty()) {
      return effort;
    }
    if (!whole) {
      return effort + "; the page says what gets worse";
    }
    return effort
        + (worse.isEmpty() ? "" : "; worse after it: " + Sentence.list(worse))
        + (piece.forbiddenAfterwards().isEmpty()
            ? ""
            : "; forbidden then: "
                + Sentence.list(
                    piece.forbiddenAfterwards().stream().map(CheckWords::subject).toList()));
  }
}
