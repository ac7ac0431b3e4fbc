package thwartwise.shell;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.files.Workspace;
import thwartwise.walk.Answer;

/** Offers the unfinished walks of a folder before a new one is begun. */
final class DraftChoice {
  private static final String NAME_QUESTION = "name";

  private final Conversation conversation;
  private final Workspace workspace;
  private final LocalDateTime now;

  DraftChoice(Conversation conversation, Workspace workspace, LocalDateTime now) {
    this.conversation = conversation;
    this.workspace = workspace;
    this.now = now;
  }

  /** The draft to go on with, old or new; empty when the person left. */
  Optional<Draft> choose() {
    List<Draft> kept = Draft.in(workspace);
    if (kept.isEmpty()) {
      return Optional.of(fresh());
    }
    conversation.say("Walks kept here that are not finished:");
    IntStream.range(0, kept.size()).forEach(i -> conversation.say(row(i + 1, kept.get(i))));
    return chosen(kept);
  }

  private Optional<Draft> chosen(List<Draft> kept) {
    while (true) {
      Optional<String> typed = conversation.ask(prompt(kept.size()));
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      Optional<Draft> draft = named(typed.get().strip().toLowerCase(Locale.ROOT), kept);
      if (draft.isPresent()) {
        return draft;
      }
      conversation.say("Type one of the numbers above, or new.");
    }
  }

  private Optional<Draft> named(String typed, List<Draft> kept) {
    if (typed.equals("new")) {
      return Optional.of(fresh());
    }
    String number = typed.isEmpty() || typed.equals("yes") ? "1" : typed;
    return IntStream.rangeClosed(1, kept.size())
        .filter(i -> number.equals(Integer.toString(i)))
        .mapToObj(i -> kept.get(i - 1))
        .findFirst();
  }

  private Draft fresh() {
    return Draft.begunAt(now, workspace);
  }

  private static String prompt(int count) {
    String numbers = count == 1 ? "1" : "1 to " + count;
    return "Go on with which? " + numbers + ", or new for another boat [Enter: 1]:";
  }

  private static String row(int number, Draft draft) {
    List<Answer> answers = draft.answers();
    String size = answers.size() == 1 ? "1 answer" : answers.size() + " answers";
    return "  " + number + ". " + boatName(answers) + ", " + size;
  }

  private static String boatName(List<Answer> answers) {
    return answers.stream()
        .filter(answer -> answer.question().equals(NAME_QUESTION))
        .findFirst()
        .map(answer -> thwartwise.measure.Quoted.of(answer.typed().strip()))
        .orElse("a boat without a name yet");
  }
}
