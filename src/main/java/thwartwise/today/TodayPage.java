package thwartwise.today;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import thwartwise.crew.Recommendation;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.LineWrap;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.TextForm;
import thwartwise.record.InspectionRecord;
import thwartwise.report.CrewWords;
import thwartwise.report.Disclaimer;
import thwartwise.report.ObservedTrialWords;
import thwartwise.report.ReaderUnits;
import thwartwise.report.TimestampText;
import thwartwise.report.Verdict;
import thwartwise.today.TodayVerdict.Figures;
import thwartwise.today.TodayVerdict.Point;

/** The text before, between and after today's questions, at most 80 columns. */
public final class TodayPage {
  public static final String NOT_TODAY = "Not today.";
  public static final String NOTHING_AGAINST =
      "Nothing found against it today within the limits of this inspection.";

  private TodayPage() {}

  /** A point and its answer, in words. */
  public record Answered(Point point, boolean yes, String words) {}

  /** The findings, and the figures that the questions speak of. */
  public static String opening(InspectionRecord inspection) {
    Page page = new Page();
    Recommendation crew = inspection.report().recommendation();
    UnitFormat units = ReaderUnits.of(inspection.boat());
    page.title("Going today? " + inspection.boat().name());
    page.paragraph(
        Verdict.of(inspection.report()).words(),
        "Worked out on " + TimestampText.of(inspection.date()));
    if (!crew.withheld()) {
      page.paragraph(
          "People up to "
              + units.mass(crew.crew(), Side.DOWN)
              + " in all"
              + ", load up to "
              + units.mass(crew.load(), Side.DOWN)
              + ": "
              + FigureText.adults(crew.people())
              + " of "
              + units.mass(crew.adult(), Side.UP),
          CrewWords.nearly(crew, units).orElse(""));
      page.paragraph(
          ObservedTrialWords.of(inspection).orElse(""),
          ObservedTrialWords.bounds(inspection).orElse(""));
    }
    return (page + read(TodayVerdict.of(inspection).figures())).stripTrailing();
  }

  /** The figures, each behind its label, to be read aloud. */
  private static String read(List<Figures> figures) {
    String label = "%-" + (LABEL - 1) + "s ";
    return figures.isEmpty()
        ? ""
        : figures.stream()
            .flatMap(
                f ->
                    LineWrap.lines(
                        Sentence.of(f.words()),
                        String.format(Locale.ROOT, label, f.label() + ":"),
                        " ".repeat(LABEL),
                        WIDTH)
                        .stream())
            .collect(Collectors.joining("\n", "\nTo be read aloud:\n", ""));
  }

  /** One question with its number, to stand above the prompt. */
  public static String question(int number, int of, Point point) {
    String start = number + " of " + of + ". ";
    return String.join("\n", LineWrap.lines(point.question(), start, "   ", TextForm.WIDTH));
  }

  /** The reason for a question, and what to do if the answer is not yes. */
  public static String why(Point point) {
    return Sentence.joined(
        List.of(point.why(), "Anything but yes to all of it is an open point: " + point.todo()));
  }

  private static final int WIDTH = TextForm.WIDTH;

  /** The width of the labels. */
  private static final int LABEL = 8;

  /** The end of the page when the inspection itself says no. */
  public static String held(TodayVerdict today) {
    return new Page().paragraph(NOT_TODAY).points(today.held()).toString();
  }

  public static String ending(List<Answered> answers) {
    List<Answered> open = answers.stream().filter(answer -> !answer.yes()).toList();
    Page page = new Page();
    if (open.isEmpty()) {
      page.paragraph(NOTHING_AGAINST);
    } else {
      page.paragraph(NOT_TODAY);
      open.forEach(answer -> page.point(open(answer)));
    }
    return page.points(CAUTIONS).toString();
  }

  private static String[] open(Answered answer) {
    return new String[] {
      Sentence.capital(answer.words()) + ": " + answer.point().question(),
      "So " + answer.point().todo()
    };
  }

  private static final List<String> CAUTIONS =
      List.of(
          Disclaimer.LAST_WORD,
          Disclaimer.NO_PLATE,
          "Never rely on this list alone: with any doubt stay ashore");

  /** The text to be saved: everything asked and answered. */
  public static String savedText(
      InspectionRecord inspection, List<Answered> answers, String ending) {
    Page page = new Page();
    for (Answered answer : answers) {
      page.point(answer.point().question(), "Answer: " + answer.words());
    }
    return opening(inspection) + "\n\n" + page + "\n" + ending;
  }
}
