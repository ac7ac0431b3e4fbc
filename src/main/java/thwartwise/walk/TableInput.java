package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import thwartwise.measure.Reading;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;
import thwartwise.walk.questions.BasicQuestions;
import thwartwise.walk.questions.HullQuestions;
import thwartwise.walk.stations.StationTable;
import thwartwise.walk.stations.StationTable.TypedCell;
import thwartwise.walk.stations.TableSketch;

/**
 * All stations typed at once, as a table. Each figure becomes one answer, so that one can be
 * changed later; the questions of the walk read it, and refuse or doubt it as they would when
 * typed.
 */
record TableInput(Walk walk) {
  static final String WORD = "table";
  private static final String WHERE = "hull.stations";
  private static final int FEWEST_CELLS = 3;

  private static final String NOTHING = " Nothing of the table was taken.";

  /** Whether a table begins with this line. */
  static boolean begins(String question, String typed) {
    return question.equals(WHERE)
        && (typed.strip().toLowerCase(Locale.ROOT).equals(WORD)
            || typed.strip().split("[\\s;,|]+").length >= FEWEST_CELLS);
  }

  Reply proposed(List<Answer> answers, String text) {
    if (!(walk.next(answers) instanceof Step.Ask ask) || !ask.question().key().equals(WHERE)) {
      return new Reply.Refused(
          "A table of stations is taken where it is asked how many stations there are.");
    }
    Replay given = new Replay(answers);
    QuantityQuestions quantities = new QuantityQuestions(new BasicQuestions(given).units());
    Reading<StationTable> read =
        StationTable.of(text, given.ask(HullQuestions.length(quantities)), quantities::show);
    return read instanceof Reading.Understood<StationTable> understood
        ? proposed(answers, understood.value())
        : new Reply.Refused(read.refusal().orElseThrow() + NOTHING);
  }

  /** Asked as if the sides were alike; should they not be, starboard is asked afterwards. */
  private Reply proposed(List<Answer> answers, StationTable table) {
    Map<String, TypedCell> cells = table.answers();
    List<Answer> kept = new ArrayList<>(answers);
    kept.addAll(raked(cells));
    List<String> doubts = new ArrayList<>();
    List<Answer> sofar = List.copyOf(kept);
    while (walk.next(sofar) instanceof Step.Ask ask) {
      Question question = ask.question();
      Optional<TypedCell> cell = Optional.ofNullable(cells.get(question.key()));
      Optional<String> typed = cell.map(TypedCell::typed).or(() -> between(question));
      if (typed.isEmpty()) {
        break;
      }
      Reply reply = walk.take(sofar, typed.get());
      if (reply instanceof Reply.Refused refused) {
        if (refused.insisted().isEmpty()) {
          return new Reply.Refused(where(cell) + refused.reason() + NOTHING);
        }
        doubts.add(question.repeat(refused.reason()));
        reply = walk.take(sofar, refused.insisted().get());
      }
      sofar = ((Reply.Accepted) reply).answers();
      cell.ifPresent(c -> kept.add(new Answer(question.key(), c.typed())));
    }
    return new Reply.Proposed(List.copyOf(kept), shown(table, doubts));
  }

  /** Only of the ends it is asked whether they are plumb; of a station between it is heeded. */
  private static List<Answer> raked(Map<String, TypedCell> cells) {
    return cells.entrySet().stream()
        .filter(cell -> cell.getKey().endsWith(".upright"))
        .filter(cell -> cell.getValue().typed().equals("no"))
        .map(cell -> new Answer(cell.getKey(), "no"))
        .toList();
  }

  /** What is asked between the figures and has its own answer later. */
  private static Optional<String> between(Question question) {
    if (question.key().equals("hull.alike")) {
      return Optional.of("yes");
    }
    return question.key().startsWith("hull.outOfLine.") ? Optional.of("keep") : Optional.empty();
  }

  private static String where(Optional<TypedCell> cell) {
    return cell.filter(c -> c.line() > 0)
        .map(c -> "Line %s, column %s: ".formatted(c.line(), c.column()))
        .orElse("");
  }

  private static List<String> shown(StationTable table, List<String> doubts) {
    List<String> shown = new ArrayList<>(new TableSketch(table).lines());
    if (!doubts.isEmpty()) {
      shown.add("Looks unlikely, and is asked again if you take the table:");
      doubts.forEach(d -> shown.addAll(Question.wrapped("- " + d)));
    }
    return shown;
  }
}
