package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.measure.UnknownAnswer;
import thwartwise.measured.Property;
import thwartwise.walk.engine.Wording.RowPrompt;

/**
 * One question, the reader of its answer, and the checks of the value. Immutable: each method
 * returns a changed copy.
 *
 * @param whenEmpty the meaning of Enter alone
 * @param ifUnknown the meaning of "don't know"; where it is empty, that of Enter
 * @param storedForm the form in which an answer such as "yesterday" is stored; other answers are
 *     stored as typed
 * @param textDoubts each looks at the typed text and may ask which of two meanings is right
 * @param doubts each looks at the value and may ask for confirmation
 * @param slips each looks at the value and may refuse it in one line
 * @param governsTheRest true if a change of this answer changes the meaning of later ones
 */
public record QuestionDefinition<T>(
    String key,
    Wording wording,
    Function<String, Reading<T>> reader,
    Optional<Reading.Understood<T>> whenEmpty,
    Optional<Reading.Understood<T>> ifUnknown,
    Optional<Function<T, String>> storedForm,
    List<Function<String, Optional<Warning>>> textDoubts,
    List<Function<T, Optional<Warning>>> doubts,
    List<Function<T, Optional<String>>> slips,
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
        key,
        wording,
        reader,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        false);
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
    return new QuestionDefinition<>(
        key,
        other,
        reader,
        whenEmpty,
        ifUnknown,
        storedForm,
        textDoubts,
        doubts,
        slips,
        governsTheRest);
  }

  /** Sets the meaning of Enter alone, which the prompt shows. */
  public QuestionDefinition<T> orElse(T value, String text) {
    return orElse(value, text, AnswerBasis.STATED);
  }

  /** Sets the meaning of Enter alone and what that answer rests on. */
  public QuestionDefinition<T> orElse(T value, String text, AnswerBasis basis) {
    return empty(Optional.of(new Reading.Understood<>(value, text, basis)));
  }

  private QuestionDefinition<T> empty(Optional<Reading.Understood<T>> means) {
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        means,
        ifUnknown,
        storedForm,
        textDoubts,
        doubts,
        slips,
        governsTheRest);
  }

  /** Sets the meaning of "don't know": the answer that flatters least. */
  public QuestionDefinition<T> ifUnknown(T value, String text) {
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        whenEmpty,
        Optional.of(new Reading.Understood<>(value, text)),
        storedForm,
        textDoubts,
        doubts,
        slips,
        governsTheRest);
  }

  /** Sets the form in which an answer is stored that would mean something else on another day. */
  public QuestionDefinition<T> storedAs(Function<T, String> form) {
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        whenEmpty,
        ifUnknown,
        Optional.of(form),
        textDoubts,
        doubts,
        slips,
        governsTheRest);
  }

  /** Adds a check that asks which of two meanings of the typed text is right. */
  public QuestionDefinition<T> unlessAmbiguous(Function<String, Optional<Warning>> unclear) {
    List<Function<String, Optional<Warning>>> more =
        Stream.concat(textDoubts.stream(), Stream.of(unclear)).toList();
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        whenEmpty,
        ifUnknown,
        storedForm,
        more,
        doubts,
        slips,
        governsTheRest);
  }

  /** Adds a check that refuses a value. */
  public QuestionDefinition<T> unless(Function<T, Optional<String>> slip) {
    List<Function<T, Optional<String>>> more =
        Stream.concat(slips.stream(), Stream.of(slip)).toList();
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        whenEmpty,
        ifUnknown,
        storedForm,
        textDoubts,
        doubts,
        more,
        governsTheRest);
  }

  /** Adds a check that asks for confirmation of an unlikely value. */
  public QuestionDefinition<T> within(Function<T, Optional<Warning>> doubt) {
    List<Function<T, Optional<Warning>>> more =
        Stream.concat(doubts.stream(), Stream.of(doubt)).toList();
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        whenEmpty,
        ifUnknown,
        storedForm,
        textDoubts,
        more,
        slips,
        governsTheRest);
  }

  /** Adds to the repeated answer what follows from it. */
  public QuestionDefinition<T> remark(Function<T, Optional<String>> consequence) {
    return reading(typed -> reader.apply(typed).remark(consequence))
        .doubtMeans(
            ifUnknown.map(
                u ->
                    (Reading.Understood<T>)
                        Reading.understood(u.value(), u.text(), u.basis()).remark(consequence)));
  }

  private QuestionDefinition<T> reading(Function<String, Reading<T>> other) {
    return new QuestionDefinition<>(
        key,
        wording,
        other,
        whenEmpty,
        ifUnknown,
        storedForm,
        textDoubts,
        doubts,
        slips,
        governsTheRest);
  }

  private QuestionDefinition<T> doubtMeans(Optional<Reading.Understood<T>> means) {
    return new QuestionDefinition<>(
        key,
        wording,
        reader,
        whenEmpty,
        means,
        storedForm,
        textDoubts,
        doubts,
        slips,
        governsTheRest);
  }

  /**
   * The same question for a larger value that contains the one asked for; the checks still apply to
   * the inner value.
   *
   * @param of the inner value
   */
  public <R> QuestionDefinition<R> as(Function<T, R> form, Function<R, T> of) {
    return new QuestionDefinition<>(
        key,
        wording,
        typed -> reader.apply(typed).as(form),
        whenEmpty.map(u -> new Reading.Understood<>(form.apply(u.value()), u.text(), u.basis())),
        ifUnknown.map(u -> new Reading.Understood<>(form.apply(u.value()), u.text(), u.basis())),
        storedForm.map(stored -> value -> stored.apply(of.apply(value))),
        textDoubts,
        doubts.stream().map(doubt -> doubt.compose(of)).toList(),
        slips.stream().map(slip -> slip.compose(of)).toList(),
        governsTheRest);
  }

  /** Adds another way to answer, which is tried before the reader. */
  public QuestionDefinition<T> or(Function<String, Optional<Reading<T>>> other) {
    return reading(typed -> other.apply(typed).orElseGet(() -> reader.apply(typed)));
  }

  /** The answer may be left out. */
  public QuestionDefinition<Optional<T>> optional(String emptyMeans) {
    Reading.Understood<Optional<T>> left = new Reading.Understood<>(Optional.empty(), emptyMeans);
    return new QuestionDefinition<>(
        key,
        wording,
        typed -> reader.apply(typed).as(Optional::of),
        Optional.of(left),
        ifUnknown.map(u -> new Reading.Understood<>(Optional.of(u.value()), u.text(), u.basis())),
        storedForm.map(form -> value -> value.map(form).orElse("")),
        textDoubts,
        doubts.stream().map(QuestionDefinition::whenPresent).toList(),
        slips.stream().map(QuestionDefinition::whenPresent).toList(),
        governsTheRest);
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
    return left.reading(
        typed -> NegativeAnswer.matches(typed) ? left.empty() : left.reader.apply(typed));
  }

  /**
   * Adds a word that may be typed instead. Enter does not mean this word, because it would flatter.
   */
  public QuestionDefinition<Optional<T>> orWord(String word, String means) {
    QuestionDefinition<Optional<T>> left = optional(means);
    return left.worded(wording.orWord(word))
        .reading(
            typed ->
                typed.strip().equalsIgnoreCase(word) || typed.strip().equalsIgnoreCase(means)
                    ? left.empty()
                    : left.reader.apply(typed))
        .withoutDefault();
  }

  public boolean hasRow() {
    return wording.row().isPresent();
  }

  /** Whether Enter alone is an answer. */
  public boolean takesEnter() {
    return whenEmpty.isPresent();
  }

  /** Refuses Enter alone, because its meaning would flatter. */
  public QuestionDefinition<T> withoutDefault() {
    return empty(Optional.empty());
  }

  private static <T, R> Function<Optional<T>, Optional<R>> whenPresent(
      Function<T, Optional<R>> slip) {
    return value -> value.flatMap(slip);
  }

  public QuestionDefinition<T> governingTheRest() {
    return new QuestionDefinition<>(
        key, wording, reader, whenEmpty, ifUnknown, storedForm, textDoubts, doubts, slips, true);
  }

  public Reading<T> read(String typed) {
    return unclear(typed)
        .map(Warning::reason)
        .map(Reading::<T>refused)
        .orElseGet(
            () ->
                bare(typed).unless(value -> refusal(value, isInsisted(typed))).unless(this::slip));
  }

  /** The stored form of an answer that was read. */
  public String stored(String typed, T value) {
    return storedForm.map(form -> form.apply(value)).orElse(typed.strip());
  }

  /** What is unlikely about an answer and needs confirmation. */
  public Optional<Warning> doubt(String typed) {
    return unclear(typed).or(() -> doubtOfValue(typed));
  }

  private Optional<Warning> unclear(String typed) {
    return typed.strip().endsWith(INSISTED)
        ? Optional.empty()
        : textDoubts.stream()
            .map(doubt -> doubt.apply(typed))
            .flatMap(Optional::stream)
            .findFirst();
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
        ? doubt(understood.value())
        : Optional.empty();
  }

  private Reading<T> bare(String typed) {
    if (typed.isBlank() || isWhatEnterMeans(typed)) {
      return empty();
    }
    Reading<T> reading = reader.apply(withoutInsisting(typed));
    return reading instanceof Reading.Refused<T> && UnknownAnswer.matches(typed)
        ? unknown()
        : reading;
  }

  /** Whether the typed word is the one that the prompt shows for Enter. */
  private boolean isWhatEnterMeans(String typed) {
    return whenEmpty.filter(u -> u.text().equalsIgnoreCase(typed.strip())).isPresent();
  }

  private Reading<T> unknown() {
    return ifUnknown
        .or(() -> whenEmpty)
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused(NOT_KNOWN));
  }

  private static final String NOT_KNOWN =
      "Without it nothing can be worked out, and a guess would not be on the cautious side. Type why"
          + " to see how it is found, or stop to keep all answers and come back with it.";

  private Optional<String> refusal(T value, boolean insisted) {
    return doubt(value).filter(d -> !(insisted && d.isConfirmable())).map(Warning::reason);
  }

  private Optional<Warning> doubt(T value) {
    return doubts.stream().map(doubt -> doubt.apply(value)).flatMap(Optional::stream).findFirst();
  }

  /**
   * Whether the answer ends with the confirmation. A name may end in any word, so this counts only
   * where something needs confirmation.
   */
  private boolean isInsisted(String typed) {
    return !(doubts.isEmpty() && textDoubts.isEmpty()) && typed.strip().endsWith(INSISTED);
  }

  private String withoutInsisting(String typed) {
    String bare = typed.strip();
    return isInsisted(bare) ? bare.substring(0, bare.length() - INSISTED.length()) : bare;
  }

  private Reading<T> empty() {
    return whenEmpty
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused("Nothing was typed. Type " + wanted() + "."));
  }

  private String wanted() {
    return wording.row().filter(RowPrompt::asksExistence).isPresent()
        ? "the row, no if there is none, or yes to be asked its values one by one"
        : wording.expected();
  }

  private Optional<String> slip(T value) {
    return slips.stream().map(slip -> slip.apply(value)).flatMap(Optional::stream).findFirst();
  }

  public Question question() {
    String empty = whenEmpty.map(Reading.Understood::text).orElse("");
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
        whenEmpty.map(Reading.Understood::text),
        whenEmpty.isEmpty() && wording.row().filter(r -> !r.asksExistence()).isPresent());
  }
}
