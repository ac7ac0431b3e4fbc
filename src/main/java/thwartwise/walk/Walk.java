package thwartwise.walk;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.ObservedTrial;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.Reading;
import thwartwise.measure.UnknownAnswer;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.rules.RuleSet;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Replay.UnansweredQuestion;
import thwartwise.walk.engine.ReplayResult;
import thwartwise.walk.engine.ReplayResult.AcceptedAnswer;
import thwartwise.walk.engine.ReplayResult.PartialBoat;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.ProofQuestions;
import thwartwise.walk.questions.TrialQuestions;

/**
 * The conversation that measures a whole boat: a pure function of the answers given so far. The
 * same list of answers always leads to the same question or boat, so a list of answers is all that
 * has to be saved.
 */
public final class Walk {
  /** The text before question one. */
  public static final String OPENING = Introduction.TEXT;

  /** Commands that work at every question. */
  public static final List<String> WORDS = WordQuestions.OBEYED;

  /** No command of the walk is longer than this. */
  private static final int LONGEST_WORD = 20;

  private static final Pattern CHANGE = Pattern.compile("change\\s*(\\d{0,4})");

  private final Function<Replay, Boat> script;

  /**
   * The number of replays to remember. A row is read value by value, and each value asks about the
   * answers before it again.
   */
  private static final int REMEMBERED = 8;

  /**
   * The latest replays, newest first; every typed line needs the same ones several times. The list
   * is replaced as a whole, so threads may share it.
   */
  private volatile List<PastRun> past = List.of();

  private record PastRun(List<Answer> answers, ReplayResult played) {}

  private Walk(Function<Replay, Boat> script) {
    this.script = script;
  }

  /**
   * The walk of changes to a boat.
   *
   * @param today the day that the word {@code today} means; no test may have a later date
   * @param known the boats that may be chosen
   * @param own our own rule set, which decides what a measured boat can be
   */
  public static Walk on(LocalDate today, PreviousBoats known, RuleSet own) {
    return new Walk(new WalkModes(today, known, new PlausibleLimits(own))::boat);
  }

  /** The walk that asks for a trial in the flooded boat today and for nothing else. */
  public static Walk ofTrial(LocalDate today, Boat boat) {
    QuantityQuestions quantities = new QuantityQuestions(boat.units());
    return new Walk(
        replay ->
            boat.withObservedTrial(
                new TrialQuestions(replay, quantities, today, boat.places()).observedTrial()));
  }

  /** The walk that asks for readings of a boat afloat, and then for a trial in the flooded boat. */
  public static Walk ofProof(LocalDate today, Boat boat) {
    QuantityQuestions quantities = new QuantityQuestions(boat.units());
    return new Walk(
        replay -> {
          new ProofQuestions(replay, today, boat).proof();
          boolean wentBadly = boat.observedTrial().filter(ObservedTrial::failed).isPresent();
          return boat.places().isEmpty() || wentBadly
              ? boat
              : new TrialQuestions(replay, quantities, today, boat.places())
                  .observedTrial()
                  .map(seen -> boat.withObservedTrial(Optional.of(seen)))
                  .orElse(boat);
        });
  }

  /** The proof that the answers make, once all questions are answered. */
  public static AfloatProof proof(LocalDate today, Boat boat, List<Answer> answers) {
    return new ProofQuestions(new Replay(answers), today, boat).proof();
  }

  /** The questions of a script whose answers change nothing about the boat. */
  public static Walk asking(Boat boat, List<QuestionDefinition<?>> entries) {
    return new Walk(
        replay -> {
          entries.forEach(replay::ask);
          return boat;
        });
  }

  /** The next question, or the finished boat. */
  public Step next(List<Answer> answers) {
    ReplayResult played = play(answers);
    return played
        .open()
        .<Step>map(open -> new Step.Ask(open.entry().question(), misfit(open), played.position()))
        .orElseGet(() -> new Step.Done(played.boat().orElseThrow(), leftOver(played)));
  }

  /** The boat as far as these answers tell; empty before its hull is measured. */
  public Optional<PartialBoat> partialBoat(List<Answer> answers) {
    return play(answers).partialBoat();
  }

  /** Takes one typed line, which is an answer to the question of {@link #next} or a command. */
  public Reply take(List<Answer> answers, String typed) {
    ReplayResult played = play(answers);
    String word = typed.length() > LONGEST_WORD ? "" : typed.strip().toLowerCase(Locale.ROOT);
    Matcher change = CHANGE.matcher(word);
    if (change.matches()) {
      return change(played, change.group(1));
    }
    return switch (word) {
      case "back" -> back(played);
      case "list" -> new Reply.Listed(listed(played));
      case "help start" -> new Reply.Explained(Introduction.REST);
      case "why", "help", "?" -> new Reply.Explained(explained(played));
      case "show" -> new Reply.Explained(shown(played));
      case "skip" -> skipped(played);
      case "stop" -> new Reply.Stopped(stopped(played));
      default ->
          EnteredRows.reply(played, word)
              .or(() -> row(played, answers, typed).map(r -> r.apply(answers, typed)))
              .or(() -> same(played, word).map(s -> s.apply(answers)))
              .or(() -> thing(played, typed).map(more -> take(more, typed)))
              .orElseGet(() -> answered(played, typed));
    };
  }

  /**
   * The answer that the first value of a row implies: a name implies that there is another thing, a
   * figure or yes or no of a station that it has no name, and a mass that the hull was weighed in
   * one piece.
   */
  private static Optional<List<Answer>> thing(ReplayResult played, String typed) {
    Optional<QuestionDefinition<?>> row =
        played
            .open()
            .<QuestionDefinition<?>>map(open -> open.entry())
            .filter(QuestionDefinition::hasRow);
    return row.filter(entry -> entry.key().endsWith(RepeatedQuestion.ANY) && isNamed(entry, typed))
        .map(entry -> played.with(entry, "yes"))
        .or(
            () ->
                row.filter(entry -> isUnnamedStation(entry.key(), typed))
                    .map(entry -> played.with(entry, "")))
        .or(
            () ->
                row.filter(entry -> entry.key().equals(WEIGHED) && RowInput.isMass(typed))
                    .map(entry -> played.with(entry, "")));
  }

  private static boolean isUnnamedStation(String question, String typed) {
    return AnswerGroup.of(question).filter(g -> g.isNameOfStation(question)).isPresent()
        && RowInput.isFigureOrWord(typed);
  }

  private static boolean isNamed(QuestionDefinition<?> any, String typed) {
    return !typed.isBlank()
        && any.read(typed).refusal().isPresent()
        && !NegativeAnswer.matches(typed)
        && !UnknownAnswer.matches(typed);
  }

  /** Enter at this question means that the hull was weighed in one piece. */
  private static final String WEIGHED = "hull.weighed";

  /** Whether this line begins a table of stations: its first row or its heading. */
  public boolean isTable(List<Answer> answers, String typed) {
    return next(answers) instanceof Step.Ask ask && TableInput.begins(ask.question().key(), typed);
  }

  /** Whether the open question takes a table of stations. */
  public boolean takesTable(List<Answer> answers) {
    return isTable(answers, TableInput.WORD);
  }

  /** A table of stations, to be shown before its answers are saved. */
  public Reply table(List<Answer> answers, String text) {
    return new TableInput(this).proposed(answers, text);
  }

  private Optional<RowInput> row(ReplayResult played, List<Answer> answers, String typed) {
    return played.open().flatMap(open -> RowInput.at(this, answers, open.entry().key(), typed));
  }

  private Optional<AnswerCopy> same(ReplayResult played, String word) {
    return played.open().flatMap(open -> AnswerCopy.parse(this, open.entry().key(), word));
  }

  private ReplayResult play(List<Answer> answers) {
    List<PastRun> before = past;
    for (PastRun run : before) {
      if (run.answers().size() == answers.size() && run.answers().equals(answers)) {
        return run.played();
      }
    }
    ReplayResult played =
        before.isEmpty()
            ? ReplayResult.of(script, answers)
            : before.get(0).played().again(script, answers);
    past =
        Stream.concat(Stream.of(new PastRun(List.copyOf(answers), played)), before.stream())
            .limit(REMEMBERED)
            .toList();
    return played;
  }

  private static Reply answered(ReplayResult played, String typed) {
    return played
        .open()
        .map(open -> answered(played, open.entry(), typed))
        .orElseGet(() -> new Reply.Refused(FINISHED));
  }

  private static <T> Reply answered(
      ReplayResult played, QuestionDefinition<T> entry, String typed) {
    Reading<T> reading = entry.read(typed);
    if (reading instanceof Reading.Understood<T> understood) {
      String repeat = entry.question().repeat(understood.text());
      return new Reply.Accepted(
          played.with(entry, entry.stored(typed, understood.value())),
          repeat + dropped(played, entry) + ended(played, entry, understood.value()));
    }
    String reason = reading.refusal().orElseThrow();
    Optional<Warning> doubt = entry.doubt(typed).filter(d -> d.reason().equals(reason));
    return new Reply.Refused(
        reason,
        doubt.flatMap(Warning::meant),
        doubt
            .filter(Warning::isConfirmable)
            .map(d -> typed.strip() + QuestionDefinition.INSISTED)
            .filter(insisted -> isUsable(entry, insisted)));
  }

  /** Whether an answer that is offered to the person would be accepted in its turn. */
  private static boolean isUsable(QuestionDefinition<?> entry, String offered) {
    return entry.read(offered).refusal().isEmpty();
  }

  /** The rows of a list that has just ended, so that a slip in them is seen. */
  private static String ended(ReplayResult played, QuestionDefinition<?> entry, Object value) {
    return value.equals(false)
        ? EnteredRows.finishedList(played, entry.key()).map(table -> "\n" + table).orElse("")
        : "";
  }

  private static String dropped(ReplayResult played, QuestionDefinition<?> entry) {
    long later = played.restExcept(entry.key()).count();
    return entry.governsTheRest() && later > 0
        ? " (the answers after it meant something else before: " + later + " to be asked again)"
        : "";
  }

  private static Reply back(ReplayResult played) {
    int count = played.accepted().size();
    return count == 0
        ? new Reply.Refused("This is the first question; there is nothing to go back to.")
        : open(played, played.accepted().get(count - 1));
  }

  private static Reply change(ReplayResult played, String digits) {
    int number = digits.isEmpty() ? 0 : Integer.parseInt(digits);
    if (number < 1 || number > played.accepted().size()) {
      return new Reply.Refused(
          "Type change and the number of an answer, as in change 2; list shows the numbers.");
    }
    AcceptedAnswer wanted = played.accepted().get(number - 1);
    return wanted.governsTheRest() && number < played.accepted().size()
        ? new Reply.Refused(GOVERNS)
        : open(played, wanted);
  }

  private static Reply open(ReplayResult played, AcceptedAnswer wanted) {
    return new Reply.WentBack(played.without(wanted), "Asked again. You had: " + wanted.line());
  }

  private static String listed(ReplayResult played) {
    if (played.accepted().isEmpty()) {
      return "No answers yet.";
    }
    return IntStream.range(0, played.accepted().size())
        .mapToObj(
            i -> String.format(Locale.ROOT, "%3d. %s", i + 1, played.accepted().get(i).line()))
        .collect(Collectors.joining("\n"));
  }

  private static String explained(ReplayResult played) {
    return played
        .open()
        .map(open -> String.join("\n", open.entry().question().help()))
        .orElse(FINISHED);
  }

  private static String shown(ReplayResult played) {
    return played
        .open()
        .map(open -> open.entry().question().sketch())
        .map(sketch -> sketch.isEmpty() ? NO_SKETCH : String.join("\n", sketch))
        .orElse(FINISHED);
  }

  private static Reply skipped(ReplayResult played) {
    Optional<Question> question = played.open().map(open -> open.entry().question());
    return question.isPresent() && question.get().skipped().isEmpty()
        ? new Reply.Refused(
            question.get().whenOmitted() + " Type stop to keep all answers and come back with it.")
        : answered(played, "");
  }

  private static String stopped(ReplayResult played) {
    long count = played.accepted().size() + played.rest().size();
    return "Stopped. Your " + (count == 1 ? "answer is kept." : count + " answers are kept.");
  }

  private static Optional<String> misfit(UnansweredQuestion open) {
    return open.misfit()
        .map(
            reason ->
                "The answer kept from before does not fit here, so it is asked again. " + reason);
  }

  private static Optional<String> leftOver(ReplayResult played) {
    int count = played.rest().size();
    return count == 0
        ? Optional.empty()
        : Optional.of(
            "Answers left out, because no question asks for them any more: " + count + ".");
  }

  private static final String NO_SKETCH =
      "There is no sketch for this one; why tells how to measure it.";

  private static final String FINISHED =
      "Every question is answered. Type back to return to the last one, or list to see them all.";

  private static final String GOVERNS =
      "The units decide what all later numbers mean. Go back to them with back, or start anew.";
}
