package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.measure.AnswerBasis;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.Reading;

/**
 * One question together with how its answer is read and what would make it a slip. Immutable: each
 * method returns a changed copy.
 *
 * @param whenEmpty what pressing Enter alone means
 * @param slips each looks at the value and may complain in one line
 * @param governsTheRest true when later answers mean something else once this one changes
 */
public record Entry<T>(
    String key,
    Wording wording,
    Function<String, Reading<T>> reader,
    Optional<Reading.Understood<T>> whenEmpty,
    List<Function<T, Optional<Warning>>> doubts,
    List<Function<T, Optional<String>>> slips,
    boolean governsTheRest) {

  /** Behind an answer it means: that is so, however unlikely. Kept with the answer. */
  public static final String INSISTED = " indeed";

  public static <T> Entry<T> of(
      String key,
      String subject,
      String unit,
      String expected,
      Function<String, Reading<T>> reader) {
    Wording wording =
        new Wording(subject, unit, expected, List.of(), List.of(), List.of(), List.of());
    return new Entry<>(key, wording, reader, Optional.empty(), List.of(), List.of(), false);
  }

  public Entry<T> how(String... lines) {
    return worded(wording.how(lines));
  }

  public Entry<T> why(String... lines) {
    return worded(wording.why(lines));
  }

  /** A drawing in characters where words are not enough. */
  public Entry<T> show(List<String> sketch) {
    return worded(wording.sketch(sketch));
  }

  /** Words that will do, for whoever would rather choose than type. */
  public Entry<T> choices(List<String> words) {
    return worded(wording.choices(words));
  }

  private Entry<T> worded(Wording other) {
    return new Entry<>(key, other, reader, whenEmpty, doubts, slips, governsTheRest);
  }

  /** Pressing Enter alone means this, and the prompt says so. */
  public Entry<T> orElse(T value, String text) {
    return orElse(value, text, AnswerBasis.STATED);
  }

  /** The same, with what that rests on. */
  public Entry<T> orElse(T value, String text, AnswerBasis basis) {
    Reading.Understood<T> empty = new Reading.Understood<>(value, text, basis);
    return new Entry<>(key, wording, reader, Optional.of(empty), doubts, slips, governsTheRest);
  }

  /** Refuses a value about which the slip has something to say. */
  public Entry<T> unless(Function<T, Optional<String>> slip) {
    List<Function<T, Optional<String>>> more =
        Stream.concat(slips.stream(), Stream.of(slip)).toList();
    return new Entry<>(key, wording, reader, whenEmpty, doubts, more, governsTheRest);
  }

  /** Asks about a value that is unlikely. */
  public Entry<T> within(Function<T, Optional<Warning>> doubt) {
    List<Function<T, Optional<Warning>>> more =
        Stream.concat(doubts.stream(), Stream.of(doubt)).toList();
    return new Entry<>(key, wording, reader, whenEmpty, more, slips, governsTheRest);
  }

  /** Adds to the repeat what follows from the answer. */
  public Entry<T> remark(Function<T, Optional<String>> consequence) {
    return new Entry<>(
        key,
        wording,
        typed -> reader.apply(typed).remark(consequence),
        whenEmpty,
        doubts,
        slips,
        governsTheRest);
  }

  /** The answer may be left out. */
  public Entry<Optional<T>> optional(String emptyMeans) {
    return new Entry<>(
        key,
        wording,
        typed -> reader.apply(typed).as(Optional::of),
        Optional.of(new Reading.Understood<>(Optional.empty(), emptyMeans)),
        doubts.stream().map(Entry::whenPresent).toList(),
        slips.stream().map(Entry::whenPresent).toList(),
        governsTheRest);
  }

  /** The answer may be left out; no, none and the like say so too. */
  public Entry<Optional<T>> orNone(String emptyMeans) {
    Entry<Optional<T>> left = optional(emptyMeans);
    return new Entry<>(
        key,
        wording,
        typed -> NegativeAnswer.by(typed) ? left.empty() : left.reader.apply(typed),
        left.whenEmpty,
        left.doubts,
        left.slips,
        governsTheRest);
  }

  /** The answer may be this word instead, which has to be typed: Enter alone would flatter. */
  public Entry<Optional<T>> orWord(String word, String means) {
    Entry<Optional<T>> left = optional(means);
    return new Entry<>(
        key,
        wording.orWord(word),
        typed -> typed.strip().equalsIgnoreCase(word) ? left.empty() : left.reader.apply(typed),
        Optional.empty(),
        left.doubts,
        left.slips,
        governsTheRest);
  }

  /** Enter alone is refused, since what it would mean flatters. */
  public Entry<T> toBeSaid() {
    return new Entry<>(key, wording, reader, Optional.empty(), doubts, slips, governsTheRest);
  }

  private static <T, R> Function<Optional<T>, Optional<R>> whenPresent(
      Function<T, Optional<R>> slip) {
    return value -> value.flatMap(slip);
  }

  public Entry<T> governingTheRest() {
    return new Entry<>(key, wording, reader, whenEmpty, doubts, slips, true);
  }

  public Reading<T> read(String typed) {
    return bare(typed).unless(value -> refusal(value, isInsisted(typed))).unless(this::slip);
  }

  /** What is unlikely about an answer, to ask about. */
  public Optional<Warning> doubt(String typed) {
    return QuantityReader.guessed(typed)
        .map(figure -> doubted(typed).map(doubt -> doubt.meaning(guessMeant(figure))))
        .orElseGet(() -> doubted(typed));
  }

  /** In the other unit a guess is a guess still, and the figure itself is not yet made poorer. */
  private Optional<String> guessMeant(String figure) {
    return doubted(figure).flatMap(Warning::meant).map(QuantityReader::asAGuess);
  }

  private Optional<Warning> doubted(String typed) {
    return bare(typed) instanceof Reading.Understood<T> understood
        ? doubt(understood.value())
        : Optional.empty();
  }

  private Reading<T> bare(String typed) {
    return typed.isBlank() ? empty() : reader.apply(withoutInsisting(typed));
  }

  private Optional<String> refusal(T value, boolean insisted) {
    return doubt(value).filter(d -> !(insisted && d.mayBeKept())).map(Warning::reason);
  }

  private Optional<Warning> doubt(T value) {
    return doubts.stream().map(doubt -> doubt.apply(value)).flatMap(Optional::stream).findFirst();
  }

  /** Only where there is something to doubt; a name may end in any word. */
  private boolean isInsisted(String typed) {
    return !doubts.isEmpty() && typed.strip().endsWith(INSISTED);
  }

  private String withoutInsisting(String typed) {
    String bare = typed.strip();
    return isInsisted(bare) ? bare.substring(0, bare.length() - INSISTED.length()) : bare;
  }

  private Reading<T> empty() {
    return whenEmpty
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused("Nothing was typed. Type " + wording.expected() + "."));
  }

  private Optional<String> slip(T value) {
    return slips.stream().map(slip -> slip.apply(value)).flatMap(Optional::stream).findFirst();
  }

  public Question question() {
    return new Question(
        key,
        wording.subject(),
        wording.prompt(whenEmpty.map(Reading.Understood::text).orElse("")),
        wording.how(),
        wording.why(),
        wording.expected(),
        wording.sketch(),
        wording.choices(),
        whenEmpty.map(Reading.Understood::text));
  }
}
