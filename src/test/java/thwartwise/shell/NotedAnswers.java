package thwartwise.shell;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/**
 * What somebody types at the questions of a walk, a line {@code key | typed} each. Several lines of
 * one key are typed one after the other: a slip, a word such as why, then the answer. A question
 * that is not noted is left at Enter, so that a new one shows in the text and breaks nothing else.
 */
final class NotedAnswers {
  private final Map<String, Queue<String>> noted = new HashMap<>();

  NotedAnswers(String lines) {
    for (String line : lines.strip().split("\n")) {
      String[] cells = line.split("\\|", 2);
      noted
          .computeIfAbsent(cells[0].strip(), key -> new ArrayDeque<>())
          .add(cells.length > 1 ? cells[1].strip() : "");
    }
  }

  /** Line by line as they are typed at this walk, to its end. */
  List<String> typedAt(Walk walk) {
    List<String> lines = new ArrayList<>();
    List<Answer> answers = List.of();
    Optional<Reply.Refused> asked = Optional.empty();
    while (walk.next(answers) instanceof Step.Ask ask) {
      String typed = at(ask.question().key());
      lines.add(typed);
      Optional<String> meant =
          typed.equals("keep")
              ? asked.flatMap(Reply.Refused::insisted)
              : typed.equals("yes") ? asked.flatMap(Reply.Refused::meant) : Optional.empty();
      Reply reply = walk.take(answers, meant.orElse(typed));
      asked = Optional.empty();
      if (reply instanceof Reply.Accepted accepted) {
        answers = accepted.answers();
      } else if (reply instanceof Reply.WentBack back) {
        answers = back.answers();
      } else if (reply instanceof Reply.Refused refused) {
        asked = Optional.of(refused);
        if (typed.isEmpty()) {
          throw new AssertionError("Note what is typed at " + ask.question().key());
        }
      }
    }
    return lines;
  }

  private String at(String key) {
    String typed = noted.getOrDefault(key.replaceFirst("#.*", ""), new ArrayDeque<>()).poll();
    return typed == null ? "" : typed;
  }
}
