package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.measured.Property;
import thwartwise.walk.engine.Wording.RowPrompt;

/**
 * One question, the reader of its answer, and the checks of the value. Immutable: each method
 * returns a changed copy.
 *
 * @param governsTheRest true if a change of this answer changes the meaning of later ones
 */
public record QuestionDefinition<T>(
    String key,
    Wording wording,
    AnswerReader<T> answer,
    AnswerChecks<T> checks,
    boolean governsTheRest) {

  /** This ending of an answer confirms it, however unlikely it is. It is stored with the answer. */
  public static final String INSISTED = " indeed";

  public static <T> QuestionDefinition<T> of(
      String key,
      String subject,
      String unit,
      String expected,
      Function<String, Reading<T>> reader) {
    Wording wording =
        new Wording(
            subject, unit, expected, List.of(), List.of(), List.of(), List.of(), Optional.empty());
    return new QuestionDefinition<>(
        key, wording, AnswerReader.of(reader), AnswerChecks.none(), false);
  }

  /** How to measure it and why, from the table. */
  public QuestionDefinition<T> worded(Property<?, ?> property) {
    return how(property.how().toArray(String[]::new)).why(property.why().toArray(String[]::new));
  }

  public QuestionDefinition<T> how(String... lines) {
    return worded(wording.how(lines));
  }

  public QuestionDefinition<T> why(String... lines) {
    return worded(wording.why(lines));
  }

  /** Adds a drawing in characters. */
  public QuestionDefinition<T> show(List<String> sketch) {
    return worded(wording.sketch(sketch));
  }

  /** Adds words to choose from. */
  public QuestionDefinition<T> choices(List<String> words) {
    return worded(wording.choices(words));
  }

  /**
   * A prompt for a whole row that begins with this question; its own value alone is accepted too.
   */
  public QuestionDefinition<T> row(String subject, List<String> order) {
    return worded(wording.row(new RowPrompt(subject, order, true, false)));
  }

  /**
   * The same, but Enter only goes on to the values one by one, so the prompt does not explain it.
   */
  public QuestionDefinition<T> rowOrEnter(String subject, List<String> order) {
    return worded(wording.row(new RowPrompt(subject, order, false, false)));
  }

  /** The same for a question whether there is one, or another one. */
  public QuestionDefinition<T> rowIfAny(String subject, List<String> order) {
    return worded(wording.row(new RowPrompt(subject, order, true, true)));
  }

  private QuestionDefinition<T> worded(Wording other) {
    return new QuestionDefinition<>(key, other, answer, checks, governsTheRest);
  }

  private QuestionDefinition<T> with(AnswerReader<T> other) {
    return new QuestionDefinition<>(key, wording, other, checks, governsTheRest);
  }

  private QuestionDefinition<T> with(AnswerChecks<T> others) {
    return new QuestionDefinition<>(key, wording, answer, others, governsTheRest);
  }

  /** Sets the meaning of Enter alone, which the prompt shows. */
  public QuestionDefinition<T> orElse(T value, String text) {
    return orElse(value, text, AnswerBasis.STATED);
  }

  /** Sets the meaning of Enter alone and what that answer rests on. */
  public QuestionDefinition<T> orElse(T value, String text, AnswerBasis basis) {
    return with(answer.whenEmpty(Optional.of(new Reading.Understood<>(value, text, basis))));
  }

  /** Sets the meaning of "don't know": the answer that flatters least. */
  public QuestionDefinition<T> ifUnknown(T value, String text) {
    return with(answer.ifUnknown(Optional.of(new Reading.Understood<>(value, text))));
  }

  /** Sets the form in which an answer is stored that would mean something else on another day. */
  public QuestionDefinition<T> storedAs(Function<T, String> form) {
    return with(answer.storedAs(form));
  }

  /** Adds a check that asks which of two meanings of the typed text is right. */
  public QuestionDefinition<T> unlessAmbiguous(Function<String, Optional<Warning>> unclear) {
    return with(checks.unlessAmbiguous(unclear));
  }

  /** Adds a check that refuses a value. */
  public QuestionDefinition<T> unless(Function<T, Optional<String>> slip) {
    return with(checks.unless(slip));
  }

  /** Adds a check that asks for confirmation of an unlikely value. */
  public QuestionDefinition<T> within(Function<T, Optional<Warning>> doubt) {
    return with(checks.within(doubt));
  }

  /** Adds to the repeated answer what follows from it. */
  public QuestionDefinition<T> remark(Function<T, Optional<String>> consequence) {
    return with(answer.remark(consequence));
  }

  /**
   * The same question for a larger value that contains the one asked for; the checks still apply to
   * the inner value.
   *
   * @param of the inner value
   */
  public <R> QuestionDefinition<R> as(Function<T, R> form, Function<R, T> of) {
    return new QuestionDefinition<>(
        key, wording, answer.as(form, of), checks.compose(of), governsTheRest);
  }

  /** Adds another way to answer, which is tried before the reader. */
  public QuestionDefinition<T> or(Function<String, Optional<Reading<T>>> other) {
    return with(answer.or(other));
  }

  /** The answer may be left out. */
  public QuestionDefinition<Optional<T>> optional(String emptyMeans) {
    return new QuestionDefinition<>(
        key, wording, answer.optional(emptyMeans), checks.whenPresent(), governsTheRest);
  }

  /** The answer may be left out; the table says what is then assumed. */
  public QuestionDefinition<Optional<T>> optional(Property<?, ?> property) {
    return optional(NOT_SAID + property.whenOmitted());
  }

  /** The same; no, none and the like leave it out too. */
  public QuestionDefinition<Optional<T>> orNone(Property<?, ?> property) {
    return orNone(NOT_SAID + property.whenOmitted());
  }

  private static final String NOT_SAID = "not known, ";

  /** The answer may be left out; no, none and the like leave it out too. */
  public QuestionDefinition<Optional<T>> orNone(String emptyMeans) {
    QuestionDefinition<Optional<T>> left = optional(emptyMeans);
    return left.with(left.answer.negativeIsEmpty());
  }

  /**
   * Adds a word that may be typed instead. Enter does not mean this word, because it would flatter.
   */
  public QuestionDefinition<Optional<T>> orWord(String word, String means) {
    QuestionDefinition<Optional<T>> left = optional(means);
    return left.worded(wording.orWord(word))
        .with(left.answer.emptyFor(word, means))
        .withoutDefault();
  }

  public boolean hasRow() {
    return wording.row().isPresent();
  }

  /** Whether Enter alone is an answer. */
  public boolean takesEnter() {
    return answer.whenEmpty().isPresent();
  }

  /** Refuses Enter alone, because its meaning would flatter. */
  public QuestionDefinition<T> withoutDefault() {
    return with(answer.whenEmpty(Optional.empty()));
  }

  public QuestionDefinition<T> governingTheRest() {
    return new QuestionDefinition<>(key, wording, answer, checks, true);
  }

  public Reading<T> read(String typed) {
    return unclear(typed)
        .map(Warning::reason)
        .map(Reading::<T>refused)
        .orElseGet(
            () ->
                bare(typed)
                    .unless(value -> refusal(value, isInsisted(typed)))
                    .unless(checks::slip));
  }

  /** The stored form of an answer that was read. */
  public String stored(String typed, T value) {
    return answer.stored(typed, value);
  }

  /** What is unlikely about an answer and needs confirmation. */
  public Optional<Warning> doubt(String typed) {
    return unclear(typed).or(() -> doubtOfValue(typed));
  }

  private Optional<Warning> unclear(String typed) {
    return typed.strip().endsWith(INSISTED) ? Optional.empty() : checks.unclear(typed);
  }

  private Optional<Warning> doubtOfValue(String typed) {
    return QuantityReader.guessed(typed)
        .map(figure -> doubted(typed).map(doubt -> doubt.meaning(guessMeant(figure))))
        .orElseGet(() -> doubted(typed));
  }

  /**
   * Reads the figure in the other unit. A guess stays a guess, and the figure is not made less
   * favourable here.
   */
  private Optional<String> guessMeant(String figure) {
    return doubted(figure).flatMap(Warning::meant).map(QuantityReader::guessText);
  }

  private Optional<Warning> doubted(String typed) {
    return bare(typed) instanceof Reading.Understood<T> understood
        ? checks.doubt(understood.value())
        : Optional.empty();
  }

  private Reading<T> bare(String typed) {
    return answer.read(typed, withoutInsisting(typed), wanted());
  }

  private Optional<String> refusal(T value, boolean insisted) {
    return checks.doubt(value).filter(d -> !(insisted && d.isConfirmable())).map(Warning::reason);
  }

  /**
   * Whether the answer ends with the confirmation. A name may end in any word, so this counts only
   * where something needs confirmation.
   */
  private boolean isInsisted(String typed) {
    return checks.canDoubt() && typed.strip().endsWith(INSISTED);
  }

  private String withoutInsisting(String typed) {
    String bare = typed.strip();
    return isInsisted(bare) ? bare.substring(0, bare.length() - INSISTED.length()) : bare;
  }

  private String wanted() {
    return wording.row().filter(RowPrompt::asksExistence).isPresent()
        ? "the row, no if there is none, or yes to be asked its values one by one"
        : wording.expected();
  }

  public Question question() {
    String empty = answer.whenEmpty().map(Reading.Understood::text).orElse("");
    return new Question(
        key,
        wording.subject(),
        wording.prompt(empty),
        wording.rowPrompt(empty),
        wording.how(),
        wording.why(),
        wording.expected(),
        wording.sketch(),
        wording.choices(),
        answer.whenEmpty().map(Reading.Understood::text),
        !takesEnter() && wording.row().filter(r -> !r.asksExistence()).isPresent());
  }
}
