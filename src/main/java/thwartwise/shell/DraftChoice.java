package thwartwise.shell;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import thwartwise.archive.DraftLock;
import thwartwise.archive.Workspace;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.measure.YesOrNo;
import thwartwise.walk.PreviousBoats;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** Offers the unfinished walks of a folder before a new one is begun. */
final class DraftChoice {
  private static final String NAME_QUESTION = "name";
  private static final Pattern DROP = Pattern.compile("drop\\s+(\\d{1,4})");

  private final Conversation conversation;
  private final Workspace workspace;
  private final LocalDateTime now;

  DraftChoice(Conversation conversation, Workspace workspace, LocalDateTime now) {
    this.conversation = conversation;
    this.workspace = workspace;
    this.now = now;
  }

  /** A draft that no other terminal works on while the lock is held. */
  record LockedDraft(Draft draft, DraftLock lock) implements AutoCloseable {
    @Override
    public void close() {
      lock.close();
    }
  }

  /** The draft to continue, old or new; empty when the person left. */
  Optional<LockedDraft> choose() {
    workspace.damagedDrafts().forEach(conversation::print);
    while (true) {
      List<Draft> kept = Draft.in(workspace);
      if (kept.isEmpty()) {
        return held(fresh());
      }
      list(kept);
      Optional<Draft> chosen = chosen(kept);
      if (chosen.isEmpty()) {
        return Optional.empty();
      }
      Optional<LockedDraft> held = held(chosen.get());
      if (held.isPresent()) {
        return held;
      }
      look(chosen.get());
    }
  }

  private void list(List<Draft> kept) {
    conversation.print("Walks kept here that are not finished:");
    IntStream.range(0, kept.size()).forEach(i -> conversation.print(row(i + 1, kept.get(i))));
  }

  private Optional<LockedDraft> held(Draft draft) {
    return draft.lock().map(lock -> new LockedDraft(draft, lock));
  }

  /**
   * Shows the answers of a walk that is open in another terminal. Two terminals writing one walk
   * would undo each other's answers.
   */
  private void look(Draft draft) {
    conversation.print("That walk is open in another terminal. From here you may only look:");
    if (Walk.on(now.toLocalDate(), PreviousBoats.NONE, RuleSetFile.cautiousDefault())
            .take(draft.answers(), "list")
        instanceof Reply.Listed listed) {
      conversation.print(listed.text());
    }
    conversation.print("Close it there, or begin another.");
    conversation.print("");
  }

  private Optional<Draft> chosen(List<Draft> kept) {
    while (true) {
      Optional<String> typed = conversation.ask(prompt(kept.size()));
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      String word = typed.get().strip().toLowerCase(Locale.ROOT);
      Optional<Draft> draft = named(word, kept);
      if (draft.isPresent()) {
        return draft;
      }
      if (!dropped(word, kept)) {
        conversation.print("Type one of the numbers above, new, or drop and a number.");
      } else if (Draft.in(workspace).size() < kept.size()) {
        return Draft.in(workspace).isEmpty() ? Optional.of(fresh()) : again();
      }
    }
  }

  private Optional<Draft> again() {
    List<Draft> left = Draft.in(workspace);
    list(left);
    return chosen(left);
  }

  private Optional<Draft> named(String typed, List<Draft> kept) {
    if (typed.equals("new")) {
      return Optional.of(fresh());
    }
    return numbered(typed.isEmpty() || YesOrNo.isYes(typed) ? "1" : typed, kept);
  }

  private static Optional<Draft> numbered(String number, List<Draft> kept) {
    return IntStream.rangeClosed(1, kept.size())
        .filter(i -> number.equals(Integer.toString(i)))
        .mapToObj(i -> kept.get(i - 1))
        .findFirst();
  }

  /** Whether the line was about deleting a draft, done or not. */
  private boolean dropped(String typed, List<Draft> kept) {
    Matcher drop = DROP.matcher(typed);
    Optional<Draft> draft = drop.matches() ? numbered(drop.group(1), kept) : Optional.empty();
    draft.ifPresent(this::drop);
    return draft.isPresent();
  }

  private void drop(Draft draft) {
    Optional<LockedDraft> held = held(draft);
    if (held.isEmpty()) {
      look(draft);
      return;
    }
    try (LockedDraft one = held.get()) {
      dropIfSure(one.draft());
    }
  }

  private void dropIfSure(Draft draft) {
    String question = "Throw away what was answered for " + boatName(draft.answers()) + "?";
    Optional<String> sure = conversation.ask(question + " (yes, no) [Enter: no]:");
    if (sure.filter(YesOrNo::isYes).isPresent()) {
      draft.delete();
      conversation.print("Thrown away.");
    } else {
      conversation.print("Kept.");
    }
  }

  private Draft fresh() {
    return Draft.startedAt(now, workspace);
  }

  private static String prompt(int count) {
    String numbers = count == 1 ? "1" : "1 to " + count;
    return "Go on with which? " + numbers + ", new for another boat, or drop 1 [Enter: 1]:";
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
        .map(answer -> thwartwise.measure.PrintableText.excerpt(answer.typed().strip()))
        .orElse("a boat without a name yet");
  }
}
