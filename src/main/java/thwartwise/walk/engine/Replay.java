package thwartwise.walk.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.measure.UnitSystem;
import thwartwise.walk.engine.ReplayResult.AcceptedAnswer;
import thwartwise.walk.engine.ReplayResult.PartialBoat;
import thwartwise.walk.engine.WalkSection.WalkPosition;

/**
 * A run of the script against the answers so far. The script asks, the stored answers reply, and
 * the first question without a fitting answer ends the run. Finding the next question, resuming and
 * going back are therefore the same operation.
 */
public final class Replay {
  private final Map<String, Answer> kept = new HashMap<>();
  private final List<AcceptedAnswer> given = new ArrayList<>();
  private final Itinerary itinerary = new Itinerary();
  private final Transcript transcript;
  private Optional<PartialBoat> soFar = Optional.empty();

  public Replay(List<Answer> answers) {
    this(answers, Transcript.NONE);
  }

  /**
   * @param earlier replay of the same script; its readings are reused as long as everything before
   *     them is the same
   */
  Replay(List<Answer> answers, Transcript earlier) {
    answers.forEach(answer -> kept.putIfAbsent(answer.question(), answer));
    transcript = new Transcript(earlier);
  }

  public <T> T ask(QuestionDefinition<T> entry) {
    return ask(entry.key(), () -> entry);
  }

  /** The same of a question that takes long to word, made only when its answer is read anew. */
  public <T> T ask(String key, Supplier<QuestionDefinition<T>> entry) {
    Answer answer = kept.get(key);
    if (answer == null) {
      throw new UnansweredQuestion(entry.get(), Optional.empty());
    }
    Transcript.AnswerRead<T> read = transcript.reading(answer, () -> read(entry.get(), answer));
    given.add(read.accepted());
    return read.value();
  }

  private static <T> Transcript.AnswerRead<T> read(QuestionDefinition<T> entry, Answer answer) {
    Reading<T> reading = entry.read(answer.typed());
    if (reading instanceof Reading.Refused<T> refused) {
      throw new UnansweredQuestion(entry, Optional.of(refused.reason()));
    }
    Reading.Understood<T> understood = (Reading.Understood<T>) reading;
    return new Transcript.AnswerRead<>(
        new AcceptedAnswer(
            entry.question(),
            answer,
            understood.text(),
            understood.basis(),
            entry.governsTheRest()),
        understood.value());
  }

  /** Whether there is a stored answer to this question, asked or not. */
  public boolean hasAnswer(String key) {
    return transcript.sought(key, kept.containsKey(key));
  }

  Transcript transcript() {
    return transcript;
  }

  /** Announces the sections of the walk. */
  public void plan(List<WalkSection> sections) {
    itinerary.plan(sections);
  }

  public void begin(WalkSection section) {
    itinerary.begin(section, given.size());
  }

  /** Sets the number of questions in the current section, once it is known. */
  public void expect(int questions) {
    itinerary.expect(questions);
  }

  Optional<WalkPosition> position() {
    return itinerary.position(given.size());
  }

  /** Tells the walk what is known of the boat, whatever is asked next. */
  public void known(Boat boat, UnitSystem units) {
    soFar = Optional.of(new PartialBoat(boat, units));
  }

  Optional<PartialBoat> partialBoat() {
    return soFar;
  }

  /** The questions whose answers were guesses. */
  public List<Assumption> guesses() {
    return given.stream()
        .filter(g -> g.basis().isGuess())
        .<Assumption>map(
            g -> new Assumption.Guess(g.line(), g.basis() == AnswerBasis.GUESS_COUNTED_POORER))
        .toList();
  }

  /** What the answer to a question rests on; empty where it was not asked. */
  public Optional<AnswerBasis> basis(String key) {
    return given.stream()
        .filter(g -> g.answer().question().equals(key))
        .map(AcceptedAnswer::basis)
        .findFirst();
  }

  /** Whether the answer to one of these questions was a guess. */
  public boolean isGuessed(Predicate<String> keys) {
    return given.stream().anyMatch(g -> g.basis().isGuess() && keys.test(g.answer().question()));
  }

  List<AcceptedAnswer> accepted() {
    return List.copyOf(given);
  }

  /** The sections of a walk, and the place that a replay has reached in them. */
  private static final class Itinerary {
    private List<WalkSection> sections = List.of();
    private int at;
    private int givenBefore;
    private int expected;

    void plan(List<WalkSection> planned) {
      sections = List.copyOf(planned);
    }

    /**
     * Begins a section.
     *
     * @param given number of answers before it
     */
    void begin(WalkSection section, int given) {
      at = Math.max(at, sections.indexOf(section));
      givenBefore = given;
      expected = section.questions();
    }

    /** Sets the number of questions in the current section. */
    void expect(int questions) {
      expected = questions;
    }

    Optional<WalkPosition> position(int given) {
      if (sections.isEmpty()) {
        return Optional.empty();
      }
      int here = Math.max(1, expected - (given - givenBefore));
      int later =
          sections.subList(at + 1, sections.size()).stream().mapToInt(WalkSection::questions).sum();
      return Optional.of(
          new WalkPosition(sections.get(at).name(), at + 1, sections.size(), here + later));
    }
  }

  /**
   * Ends a replay at the first question without a fitting answer. It is control flow and no error,
   * so it carries no stack trace.
   */
  public static final class UnansweredQuestion extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient QuestionDefinition<?> entry;
    private final transient Optional<String> misfit;

    UnansweredQuestion(QuestionDefinition<?> entry, Optional<String> misfit) {
      super(entry.key(), null, false, false);
      this.entry = entry;
      this.misfit = misfit;
    }

    public QuestionDefinition<?> entry() {
      return entry;
    }

    /** Why the stored answer does not fit. */
    public Optional<String> misfit() {
      return misfit;
    }
  }
}
