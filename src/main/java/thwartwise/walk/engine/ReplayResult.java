package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.measure.UnitSystem;
import thwartwise.walk.engine.Replay.UnansweredQuestion;
import thwartwise.walk.engine.WalkSection.WalkPosition;

/**
 * The result of a replay.
 *
 * @param accepted the answers that fit, in the order of the questions
 * @param rest the answers that the script did not reach
 * @param open the question at which the script stopped; empty when it came to its end
 * @param position the place of that question in its section
 * @param partialBoat what is known of the boat there
 * @param transcript what was read, for a later replay that begins alike
 */
public record ReplayResult(
    List<AcceptedAnswer> accepted,
    List<Answer> rest,
    Optional<UnansweredQuestion> open,
    Optional<Boat> boat,
    Optional<PartialBoat> partialBoat,
    Optional<WalkPosition> position,
    Transcript transcript) {

  public static ReplayResult of(Function<Replay, Boat> script, List<Answer> answers) {
    return of(script, new Replay(answers), answers);
  }

  /** Replays other answers; readings are reused as long as the answers are the same. */
  public ReplayResult again(Function<Replay, Boat> script, List<Answer> answers) {
    return of(script, new Replay(answers, transcript), answers);
  }

  private static ReplayResult of(
      Function<Replay, Boat> script, Replay replay, List<Answer> answers) {
    Optional<UnansweredQuestion> stopped = Optional.empty();
    Optional<Boat> boat = Optional.empty();
    try {
      boat = Optional.of(script.apply(replay));
    } catch (UnansweredQuestion open) {
      stopped = Optional.of(open);
    }
    return new ReplayResult(
        replay.accepted(),
        rest(answers, replay),
        stopped,
        boat,
        replay.partialBoat(),
        replay.position(),
        replay.transcript());
  }

  private static List<Answer> rest(List<Answer> answers, Replay replay) {
    List<Answer> accepted = replay.accepted().stream().map(AcceptedAnswer::answer).toList();
    if (accepted.equals(answers)) {
      return List.of();
    }
    Set<Answer> used = Set.copyOf(accepted);
    return answers.stream().filter(answer -> !used.contains(answer)).toList();
  }

  /** The answers with one more at the open question. The answers after it stay while they fit. */
  public List<Answer> with(QuestionDefinition<?> entry, String kept) {
    Stream<Answer> after = entry.governsTheRest() ? Stream.empty() : restExcept(entry.key());
    Stream<Answer> before = accepted.stream().map(AcceptedAnswer::answer);
    Stream<Answer> now = Stream.of(new Answer(entry.key(), kept));
    return Stream.of(before, now, after).flatMap(s -> s).toList();
  }

  /** The later answers, without the one stored for this question. */
  public Stream<Answer> restExcept(String key) {
    return rest.stream().filter(answer -> !answer.question().equals(key));
  }

  /** The answers without the given one. The answers after it stay. */
  public List<Answer> without(AcceptedAnswer dropped) {
    return Stream.concat(accepted.stream().map(AcceptedAnswer::answer), rest.stream())
        .filter(answer -> !answer.question().equals(dropped.question().key()))
        .toList();
  }

  /**
   * An answer that fits its question.
   *
   * @param basis what it rests on
   * @param governsTheRest true if a change of this answer changes the meaning of later ones
   */
  public record AcceptedAnswer(
      Question question,
      Answer answer,
      String understood,
      AnswerBasis basis,
      boolean governsTheRest) {

    public String line() {
      return question.repeat(understood);
    }
  }

  /**
   * The boat as far as the answers so far describe it, once its hull is known. Things not asked for
   * yet are missing.
   *
   * @param units of the walk
   */
  public record PartialBoat(Boat boat, UnitSystem units) {}
}
