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
 * A table of all stations typed at once. Each figure becomes one answer that can be changed later;
 * the questions of the walk check it as if it had been typed there.
 */
record TableInput(Walk walk) {
  static final String WORD = "table";
  private static final String WHERE = "hull.stations";
  private static final int FEWEST_CELLS = 3;

  private static final String NOTHING = " Nothing of the table was taken.";

  /** Whether this line begins a table. */
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

  /**
   * The answers of the table, for a boat with equal sides. If the sides differ, starboard is asked
   * for afterwards.
   */
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

  /** Answers whether a station is plumb. The walk asks this of the two ends only. */
  private static List<Answer> raked(Map<String, TypedCell> cells) {
    return cells.entrySet().stream()
        .filter(cell -> cell.getKey().endsWith(".upright"))
        .filter(cell -> cell.getValue().typed().equals("no"))
        .map(cell -> new Answer(cell.getKey(), "no"))
        .toList();
  }

  /** The provisional answer to a question between two figures; the person answers it later. */
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
