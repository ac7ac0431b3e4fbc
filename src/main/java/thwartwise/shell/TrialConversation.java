package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** Asks what was seen today of a boat full of water in knee-deep water. */
final class TrialConversation {
  private final Conversation conversation;
  private final Walk walk;

  TrialConversation(Conversation conversation, Walk walk) {
    this.conversation = conversation;
    this.walk = walk;
  }

  /** The boat with what was seen; empty when the other side left before all was told. */
  Optional<Boat> asked() {
    List<Answer> answers = List.of();
    List<String> shown = List.of();
    while (true) {
      Step step = walk.next(answers);
      if (step instanceof Step.Done done) {
        return Optional.of(done.boat());
      }
      Question question = ((Step.Ask) step).question();
      if (!question.how().equals(shown)) {
        // Whoever says "level" has to know what counts as level.
        question.how().forEach(conversation::say);
        shown = question.how();
      }
      Optional<String> typed = conversation.ask(question.prompt());
      if (typed.isEmpty()) {
        conversation.say("");
        return Optional.empty();
      }
      Reply reply = walk.take(answers, typed.get());
      if (reply instanceof Reply.Stopped) {
        return Optional.empty();
      }
      answers = told(reply, answers);
    }
  }

  private List<Answer> told(Reply reply, List<Answer> before) {
    if (reply instanceof Reply.Accepted accepted) {
      conversation.say(accepted.understood());
      return accepted.answers();
    }
    if (reply instanceof Reply.WentBack back) {
      conversation.say(back.note());
      return back.answers();
    }
    if (reply instanceof Reply.Refused refused) {
      conversation.say(refused.reason());
    } else if (reply instanceof Reply.Listed listed) {
      conversation.say(listed.text());
    } else if (reply instanceof Reply.Explained explained) {
      conversation.say(explained.text());
    }
    return before;
  }
}
