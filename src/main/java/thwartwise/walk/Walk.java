package thwartwise.walk;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.boat.AfloatProof;
import thwartwise.boat.Boat;
import thwartwise.boat.ObservedTrial;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.UnknownAnswer;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.rules.RuleSet;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Replay.UnansweredQuestion;
import thwartwise.walk.engine.ReplayResult;
import thwartwise.walk.engine.ReplayResult.PartialBoat;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;
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

  private final ReplayCache replays;

  private Walk(Function<Replay, Boat> script) {
    this.replays = new ReplayCache(script);
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
          boolean failed = boat.observedTrial().filter(ObservedTrial::failed).isPresent();
          return boat.places().isEmpty() || failed
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
    ReplayResult played = replays.play(answers);
    return played
        .open()
        .<Step>map(open -> new Step.Ask(open.entry().question(), misfit(open), played.position()))
        .orElseGet(() -> new Step.Done(played.boat().orElseThrow(), leftOver(played)));
  }

  /** The boat as far as these answers tell; empty before its hull is measured. */
  public Optional<PartialBoat> partialBoat(List<Answer> answers) {
    return replays.play(answers).partialBoat();
  }

  /** Takes one typed line, which is an answer to the question of {@link #next} or a command. */
  public Reply take(List<Answer> answers, String typed) {
    ReplayResult played = replays.play(answers);
    String word = typed.length() > LONGEST_WORD ? "" : typed.strip().toLowerCase(Locale.ROOT);
    return WalkCommands.reply(played, word)
        .or(() -> EnteredRows.reply(played, word))
        .or(() -> row(played, answers, typed).map(r -> r.apply(answers, typed)))
        .or(() -> same(played, word).map(s -> s.apply(answers)))
        .or(() -> thing(played, typed).map(more -> take(more, typed)))
        .orElseGet(() -> TypedAnswer.reply(played, typed));
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
}
