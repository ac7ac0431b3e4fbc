package thwartwise.shell;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.PointQuestion;
import thwartwise.files.boat.BoatFile;
import thwartwise.measure.NameReader;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.page.LineWrap;
import thwartwise.page.TextForm;

/**
 * The conversation of "look". Each answer is written into the boat file before the next question,
 * so that leaving and resuming need nothing else.
 */
final class LookConversation {
  private static final String PROMPT = "yes, no, n/a or Enter (why, back, list, leave):";
  private static final String NOTE = "What is wrong? A note, or Enter:";
  private static final int LONGEST_NAME = 60;
  private static final int LONGEST_NOTE = 200;

  private final Conversation conversation;
  private final LocalDate today;
  private final Path file;
  private final List<Checklist> lists;
  private final boolean all;

  LookConversation(
      Conversation conversation, LocalDate today, Path file, List<Checklist> lists, boolean all) {
    this.conversation = conversation;
    this.today = today;
    this.file = file;
    this.lists = lists;
    this.all = all;
  }

  /** The boat with the answers, as it is saved. */
  Boat asked(Boat boat, Optional<String> by) {
    List<PointQuestion> questions = PointQuestion.of(lists, boat);
    List<PointQuestion> open = questions.stream().filter(q -> all || asksAgain(q, boat)).toList();
    wrapped(
        PrintableText.of(boat.name())
            + ": "
            + questions.size()
            + " points concern this boat, "
            + open.size()
            + " to be looked at now.");
    Optional<String> who = open.isEmpty() ? by : by.or(this::askedWho);
    if (who.isEmpty()) {
      return boat;
    }
    ask(open, who.get());
    Boat kept = kept(fresh -> PointQuestion.withAll(fresh, questions, who.get(), today));
    summary(kept, questions.size());
    return kept;
  }

  /** A fault is asked about each time, because somebody may have repaired it. */
  private boolean asksAgain(PointQuestion question, Boat boat) {
    return question.isDue(boat, today)
        || question.answerOf(boat).filter(PointAnswer::isFault).isPresent();
  }

  private Optional<String> askedWho() {
    Optional<String> typed = conversation.ask("Who looks?").filter(who -> !who.isBlank());
    return typed.isEmpty() ? Optional.empty() : read(LONGEST_NAME, typed.get()).or(this::askedWho);
  }

  private void ask(List<PointQuestion> open, String by) {
    int at = 0;
    int shown = -1;
    while (at < open.size()) {
      if (shown != at) {
        show(open, at);
        shown = at;
      }
      Optional<String> typed = conversation.ask(PROMPT).map(String::strip);
      if (typed.isEmpty() || typed.get().equalsIgnoreCase("leave")) {
        return;
      }
      switch (typed.get().toLowerCase(Locale.ROOT)) {
        case "why" -> wrapped("Why: " + open.get(at).point().why() + ".");
        case "list" -> list(open, at);
        case "back" -> {
          if (at == 0) {
            wrapped("This is the first one.");
          }
          at = Math.max(0, at - 1);
        }
        default -> at = answered(open.get(at), typed.get(), by) ? at + 1 : at;
      }
    }
  }

  private void show(List<PointQuestion> open, int at) {
    PointQuestion question = open.get(at);
    conversation.print("");
    if (at == 0 || !open.get(at - 1).system().equals(question.system())) {
      conversation.print(PrintableText.of(question.system()).toUpperCase(Locale.ROOT));
    }
    String thing = question.item().isBlank() ? "" : " (" + question.item() + ")";
    wrapped((at + 1) + "/" + open.size() + "  " + question.point().look() + thing + ".");
    if (!question.point().how().isBlank()) {
      wrapped("How: " + question.point().how() + ".");
    }
    question
        .answerOf(BoatFile.read(file))
        .flatMap(LookConversation::before)
        .ifPresent(this::wrapped);
  }

  /**
   * The meaning of Enter: a fault stays as it was answered, and any other answer becomes not looked
   * at.
   */
  private static Optional<String> before(PointAnswer answer) {
    String who = "On " + answer.date() + " " + answer.by() + " found it ";
    String note = answer.note().isBlank() ? "" : ": " + answer.note();
    return switch (answer.condition()) {
      case NOT_LOOKED_AT -> Optional.empty();
      case NOT_AS_IT_SHOULD_BE ->
          Optional.of(who + "not as it should be" + note + ". Enter leaves that.");
      case AS_IT_SHOULD_BE ->
          Optional.of(who + "as it should be" + note + ". Enter: not looked at since.");
      case DOES_NOT_APPLY ->
          Optional.of(
              "On "
                  + answer.date()
                  + " "
                  + answer.by()
                  + " said it does not apply"
                  + note
                  + ". Enter: not looked at since.");
    };
  }

  private boolean answered(PointQuestion question, String typed, String by) {
    int comma = typed.indexOf(',');
    String word = (comma < 0 ? typed : typed.substring(0, comma)).strip();
    String note = comma < 0 ? "" : typed.substring(comma + 1).strip();
    Reading<PointCondition> found = ConditionReader.read(word);
    found.refusal().ifPresent(why -> wrapped(PrintableText.excerpt(typed) + why));
    if (!(found instanceof Reading.Understood<PointCondition> condition)) {
      return false;
    }
    Optional<String> read = readNote(note);
    if (read.isEmpty()) {
      return false;
    }
    boolean bad = condition.value() == PointCondition.NOT_AS_IT_SHOULD_BE;
    keep(question, condition.value(), bad && note.isEmpty() ? askedNote() : read.get(), by);
    return true;
  }

  /** Asks for a note until it can be saved; Enter means no note. */
  private String askedNote() {
    Optional<String> read = Optional.empty();
    while (read.isEmpty()) {
      read = readNote(conversation.ask(NOTE).map(String::strip).orElse(""));
    }
    return read.get();
  }

  /** The note, blank for none; empty, with a message, when a file cannot hold it. */
  private Optional<String> readNote(String typed) {
    return typed.isEmpty() || typed.equals("-") ? Optional.of("") : read(LONGEST_NOTE, typed);
  }

  private Optional<String> read(int longest, String typed) {
    Reading<String> reading = new NameReader(longest).read(typed);
    reading.refusal().ifPresent(this::wrapped);
    return reading instanceof Reading.Understood<String> understood
        ? Optional.of(understood.value())
        : Optional.empty();
  }

  /** Not looking does not remove a fault that somebody found. */
  private void keep(PointQuestion question, PointCondition condition, String note, String by) {
    kept(
        fresh -> {
          boolean stays =
              condition == PointCondition.NOT_LOOKED_AT
                  && question.answerOf(fresh).filter(PointAnswer::isFault).isPresent();
          return stays
              ? fresh
              : PointQuestion.with(fresh, question.answered(condition, note, by, today, fresh));
        });
    if (condition == PointCondition.NOT_AS_IT_SHOULD_BE) {
      consequence(question);
    }
  }

  private void consequence(PointQuestion question) {
    List<String> words = new ArrayList<>();
    PointGravity gravity = question.point().gravity();
    words.add(
        switch (gravity) {
          case HOLDS_THE_LAUNCH -> "This holds the launch until it is put right.";
          case PUT_RIGHT_FIRST -> "To be put right before anybody goes.";
          case ADVICE -> "Noted.";
        });
    question.point().fact().ifPresent(fact -> words.add(effect(fact)));
    wrapped(String.join(" ", words));
  }

  private static String effect(BoatFact fact) {
    return switch (fact) {
      case CHAMBER_OPEN -> "The chamber counts as open: it fills.";
      case CHAMBER_LEAKS -> "The chamber counts as leaking: it fills.";
      case SEAL_CLAIMED -> "The chamber counts as claimed only, whatever its test showed.";
      case FOAM_LOOSE -> "The foam counts as loose, so it lifts nothing.";
      case KIT_LOOSE -> "It counts as loose: it slides to the low side.";
      case BUNG_LOST -> "The bung counts as lost, and the minutes until trouble count.";
      case STARTER_BATTERY -> "It counts as made to start an engine: a fifth of its charge counts.";
    };
  }

  /** Writes to the file as it is now, which another terminal may have changed. */
  private Boat kept(java.util.function.UnaryOperator<Boat> change) {
    Boat fresh = BoatFile.read(file);
    Boat changed = change.apply(fresh);
    if (!changed.equals(fresh)) {
      Workspace.rewrite(file, changed);
    }
    return changed;
  }

  private void list(List<PointQuestion> open, int at) {
    Boat boat = BoatFile.read(file);
    List<String> systems = open.stream().map(PointQuestion::system).distinct().toList();
    for (String system : systems) {
      List<PointQuestion> points = open.stream().filter(q -> q.system().equals(system)).toList();
      long left = points.stream().filter(q -> q.isDue(boat, today)).count();
      String here = system.equals(open.get(at).system()) ? "  <- here" : "";
      conversation.print(
          String.format(
              Locale.ROOT,
              "  %2d of %2d left  %s%s",
              left,
              points.size(),
              PrintableText.of(system),
              here));
    }
  }

  private void summary(Boat boat, int points) {
    List<PointAnswer> bad = boat.pointAnswers().stream().filter(PointAnswer::isFault).toList();
    long left = boat.pointAnswers().stream().filter(a -> a.isDue(boat, today)).count();
    conversation.print("");
    wrapped(
        left + " of " + points + " points not looked at, " + bad.size() + " not as it should be.");
    bad.stream().sorted(Comparator.comparing(PointAnswer::gravity)).forEach(this::listed);
    wrapped("The answers are in " + PrintableText.of(file.toString()) + ".");
    wrapped("\"inspect\" works the boat out again as it was found.");
  }

  private void listed(PointAnswer bad) {
    String words = bad.gravity().word() + ": " + bad.requirementOfItem();
    LineWrap.lines(words, "- ", "  ", TextForm.WIDTH).forEach(conversation::print);
  }

  private void wrapped(String words) {
    LineWrap.lines(words, "", "", TextForm.WIDTH).forEach(conversation::print);
  }
}
