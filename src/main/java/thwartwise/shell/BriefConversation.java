package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** Asks a few questions that are answered in one go; no answer is saved before the end. */
final class BriefConversation {
  private final Conversation conversation;
  private final Walk walk;
  private List<Answer> answers = List.of();
  private List<String> shownHow = List.of();
  private boolean stopped;

  BriefConversation(Conversation conversation, Walk walk) {
    this.conversation = conversation;
    this.walk = walk;
  }

  /** The answers, and the boat to which they lead when none is missing. */
  record Ended(List<Answer> answers, Optional<Boat> boat) {}

  Ended asked() {
    while (!stopped) {
      Step step = walk.next(answers);
      if (step instanceof Step.Done done) {
        return new Ended(answers, Optional.of(done.boat()));
      }
      ask(((Step.Ask) step).question());
    }
    return new Ended(answers, Optional.empty());
  }

  private void ask(Question question) {
    // The instructions are printed once for questions that are answered alike.
    if (!question.how().equals(shownHow)) {
      conversation.print("");
      question.how().forEach(this::say);
      shownHow = question.how();
    }
    List<String> likely =
        Stream.concat(question.choices().stream(), Walk.WORDS.stream()).distinct().toList();
    conversation.ask(question.prompt(), likely).ifPresentOrElse(this::take, this::leave);
  }

  private void leave() {
    // The line of the prompt has no end of its own then.
    conversation.print("");
    stopped = true;
  }

  private void take(String typed) {
    Reply reply = walk.take(answers, typed);
    if (reply instanceof Reply.Accepted accepted) {
      answers = accepted.answers();
      say("  " + accepted.understood());
    } else if (reply instanceof Reply.WentBack back) {
      answers = back.answers();
      say(back.note());
    } else if (reply instanceof Reply.Refused refused) {
      say(refused.reason());
    } else if (reply instanceof Reply.Listed listed) {
      say(listed.text());
    } else if (reply instanceof Reply.Explained explained) {
      say(explained.text());
    } else if (reply instanceof Reply.Stopped) {
      stopped = true;
    }
  }

  private void say(String text) {
    conversation.print(TerminalLines.fitted(text));
  }
}
