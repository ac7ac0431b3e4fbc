package thwartwise.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** One run of the walk for the sheet: its questions in their order, with the known answers. */
final class SheetRun {
  private final Walk walk;
  private final Map<String, String> known;
  private final SheetTemplate template;
  private List<Answer> answers = List.of();

  private SheetRun(Walk walk, Map<String, String> known, SheetTemplate template) {
    this.walk = walk;
    this.known = known;
    this.template = template;
  }

  /**
   * A question that the walk asked.
   *
   * @param known the answer, printed even if the walk would refuse it; empty for a blank
   */
  record Asked(Question question, Optional<String> known) {}

  static List<Asked> of(Walk walk, Map<String, String> known, SheetTemplate template) {
    return new SheetRun(walk, known, template).run();
  }

  private List<Asked> run() {
    List<Asked> asked = new ArrayList<>();
    while (walk.next(answers) instanceof Step.Ask ask) {
      Question question = ask.question();
      Optional<String> typed = Optional.ofNullable(known.get(question.key()));
      boolean taken =
          typed.filter(this::isTaken).isPresent()
              || template.candidates(question).stream().anyMatch(this::isTaken);
      if (!taken) {
        throw new IllegalStateException("no answer fits the question " + question.key());
      }
      asked.add(new Asked(question, typed));
    }
    return asked;
  }

  /** Whether the walk accepts an answer, however unlikely. */
  private boolean isTaken(String typed) {
    Reply reply = walk.take(answers, typed);
    if (reply instanceof Reply.Refused refused && refused.insisted().isPresent()) {
      reply = walk.take(answers, refused.insisted().get());
    }
    if (reply instanceof Reply.Accepted accepted) {
      answers = accepted.answers();
      return true;
    }
    return false;
  }
}
