package thwartwise.shell;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.measure.YesOrNo;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;
import thwartwise.walk.engine.WalkSection.WalkPosition;

/**
 * Asks the questions of the walk one by one. Every accepted answer is on disk before the next
 * question appears, so a closed terminal loses nothing.
 */
final class WalkConversation {
  private static final String NOTHING_YET = "Stopped. Nothing was answered yet.";

  private final Conversation conversation;
  private final Walk walk;
  private final Draft draft;
  private final InterimLine running;
  private List<Answer> answers;
  private final Set<List<String>> shownHow = new HashSet<>();
  private int section;
  private Optional<String> shownNote = Optional.empty();
  private String shownWhere = "";
  private String alone = "";
  private Optional<Reply.Refused> asked = Optional.empty();
  private Optional<String> fromFile = Optional.empty();
  private boolean stopped;

  WalkConversation(Conversation conversation, Walk walk, Draft draft, InterimLine running) {
    this.running = running;
    this.conversation = conversation;
    this.walk = walk;
    this.draft = draft;
    this.answers = draft.answers();
    if (walk.next(answers) instanceof Step.Done) {
      reopen();
    }
  }

  /** A table of stations, to be offered when the stations are asked for. */
  WalkConversation withTable(Optional<String> text) {
    fromFile = text;
    return this;
  }

  /** Asks the last question again, so that a finished walk can still be corrected. */
  void reopen() {
    take("back");
  }

  /** The boat as measured, or empty when the person left the walk. */
  Optional<Boat> boat() {
    while (!stopped) {
      Optional<Boat> boat = advance();
      if (boat.isPresent()) {
        return boat;
      }
    }
    return Optional.empty();
  }

  private Optional<Boat> advance() {
    Step step = walk.next(answers);
    if (step instanceof Step.Done done) {
      note(done.note());
      return Optional.of(done.boat());
    }
    Step.Ask ask = (Step.Ask) step;
    note(ask.note());
    if (fromFile.isPresent() && walk.takesTable(answers)) {
      String text = fromFile.get();
      fromFile = Optional.empty();
      table(text);
      return Optional.empty();
    }
    running.due().forEach(this::say);
    introduce(ask);
    where(ask);
    conversation
        .ask(prompt(ask.question()), likely(ask.question()))
        .ifPresentOrElse(typed -> received(ask.question(), typed), this::stop);
    return Optional.empty();
  }

  private String prompt(Question question) {
    return isAlone(question) ? question.alone() : question.prompt();
  }

  private boolean isAlone(Question question) {
    return question.key().equals(alone);
  }

  /** Enter at the prompt of a row: its values are asked one by one. */
  private void received(Question question, String typed) {
    if (typed.isBlank() && question.enterAsksAlone() && !isAlone(question)) {
      alone = question.key();
      return;
    }
    received(typed);
  }

  private static List<String> likely(Question question) {
    return Stream.concat(question.choices().stream(), Walk.WORDS.stream()).toList();
  }

  /** A repeated question does not repeat the same note. */
  private void note(Optional<String> note) {
    if (!note.equals(shownNote)) {
      note.ifPresent(this::say);
      shownNote = note;
    }
  }

  /** A repeated question does not repeat the same place in the walk. */
  private void where(Step.Ask ask) {
    if (!ask.question().key().equals(shownWhere)) {
      ask.position().map(WalkPosition::words).ifPresent(this::say);
      shownWhere = ask.question().key();
    }
  }

  /**
   * The instructions are printed once in a section for questions that are measured alike; why
   * repeats them.
   */
  private void introduce(Step.Ask ask) {
    int now = ask.position().map(WalkPosition::number).orElse(section);
    if (now != section) {
      shownHow.clear();
      section = now;
    }
    if (!ask.question().how().isEmpty() && shownHow.add(ask.question().how())) {
      say("");
      ask.question().how().forEach(this::say);
    }
  }

  /** After a doubtful answer yes takes what was probably meant, and keep what was typed. */
  private void received(String typed) {
    Optional<String> instead =
        YesOrNo.isYes(typed)
            ? asked.flatMap(Reply.Refused::meant)
            : asked
                .filter(refused -> typed.strip().equalsIgnoreCase("keep"))
                .flatMap(Reply.Refused::insisted);
    asked = Optional.empty();
    take(instead.orElse(typed));
  }

  private void take(String typed) {
    if (walk.isTable(answers, typed)) {
      new TablePaste(conversation)
          .rows(typed)
          .ifPresentOrElse(rows -> table(String.join("\n", rows)), this::stop);
      return;
    }
    Reply reply = walk.take(answers, typed);
    if (reply instanceof Reply.Accepted accepted) {
      keep(accepted.answers());
      say("  " + accepted.understood());
    } else if (reply instanceof Reply.WentBack back) {
      keep(back.answers());
      say(back.note());
    } else if (reply instanceof Reply.Refused refused) {
      refused(refused);
    } else if (reply instanceof Reply.Listed listed) {
      say(listed.text());
    } else if (reply instanceof Reply.Explained explained) {
      say(explained.text());
    } else if (reply instanceof Reply.Stopped said) {
      stop(said);
    }
  }

  /** Shows the table first; nothing of it is saved before a yes. */
  private void table(String text) {
    Reply reply = walk.table(answers, text);
    if (reply instanceof Reply.Refused refused) {
      refused(refused);
    } else if (reply instanceof Reply.Proposed proposed) {
      proposed.shown().forEach(this::say);
      boolean yes =
          conversation
              .ask("Is this your boat? yes takes the table (yes, no) [Enter: no]:")
              .filter(YesOrNo::isYes)
              .isPresent();
      say(yes ? TABLE_TAKEN : TABLE_LEFT);
      if (yes) {
        keep(proposed.answers());
      }
    }
  }

  private static final String TABLE_TAKEN =
      "  Taken. list shows every figure; change and its number mends one.";
  private static final String TABLE_LEFT = "  Nothing of the table was taken.";

  private void refused(Reply.Refused refused) {
    String yes = refused.meant().isPresent() ? "yes to take that" : "";
    String keep = refused.insisted().isPresent() ? "keep to leave it as typed" : "";
    String or = yes.isEmpty() || keep.isEmpty() ? "" : ", or ";
    String offer = yes + or + keep;
    String reason = refused.reason() + (offer.isEmpty() ? "" : " Type " + offer + ", or another.");
    say(reason);
    asked = Optional.of(refused);
  }

  private void keep(List<Answer> changed) {
    draft.save(changed);
    answers = changed;
    running.known(walk.partialBoat(answers));
  }

  private void stop() {
    take("stop");
  }

  private void stop(Reply.Stopped said) {
    say(answers.isEmpty() ? NOTHING_YET : said.text());
    stopped = true;
  }

  private void say(String text) {
    conversation.print(TerminalLines.fitted(text));
  }

  /** The rows of a table as they are pasted, line after line. */
  private record TablePaste(Conversation conversation) {
    private static final String END = "end";
    private static final String WORD = "table";
    private static final int MOST = 200;

    /**
     * Reads up to a line that says end, or two empty ones.
     *
     * @param first the line it began with: a row, or the word for a table
     * @return empty when the other side is gone
     */
    Optional<List<String>> rows(String first) {
      List<String> rows = new ArrayList<>();
      if (!first.strip().toLowerCase(Locale.ROOT).equals(WORD)) {
        rows.add(first);
      }
      conversation.print("Paste the rows here; end, or Enter twice, ends the table.");
      while (rows.size() <= MOST) {
        Optional<String> typed = conversation.ask("|");
        if (typed.isEmpty()) {
          return Optional.empty();
        }
        boolean blank = typed.get().isBlank();
        boolean twice = blank && !rows.isEmpty() && rows.get(rows.size() - 1).isBlank();
        if (twice || typed.get().strip().toLowerCase(Locale.ROOT).equals(END)) {
          return Optional.of(rows);
        }
        rows.add(typed.get());
      }
      return Optional.of(rows);
    }
  }
}
