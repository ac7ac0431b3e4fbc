package thwartwise.walk.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Asks for one thing after another until the answer is no. A name or a whole row in answer to the
 * question whether there is one means yes.
 *
 * @param existenceQuestion asks whether there is one at all
 * @param endsAtEnter whether Enter alone means that there is no other
 * @param title what each thing is called where a row is asked for
 * @param order what a row about a thing holds; empty where no row is asked for
 */
public record RepeatedQuestion(
    Replay replay,
    String key,
    String noun,
    String existenceQuestion,
    boolean endsAtEnter,
    UnaryOperator<QuestionDefinition<Boolean>> explanation,
    String title,
    List<String> order) {
  /** The ending of the key of a question whether there is one, or another one. */
  public static final String ANY = ".any";

  private static final int MOST = 40;
  private static final String NO_MORE = "no more";

  public RepeatedQuestion(Replay replay, String key, String noun, String any) {
    this(replay, key, noun, any, true, UnaryOperator.identity(), "", List.of());
  }

  /** For things that count against the boat: only a typed no ends the list. */
  public RepeatedQuestion withExplicitEnd() {
    return new RepeatedQuestion(
        replay, key, noun, existenceQuestion, false, explanation, title, order);
  }

  /** Asks for each thing in one row, with these values in this order. */
  public RepeatedQuestion inRows(String title, String... values) {
    return new RepeatedQuestion(
        replay, key, noun, existenceQuestion, endsAtEnter, explanation, title, List.of(values));
  }

  private RepeatedQuestion explanation(UnaryOperator<QuestionDefinition<Boolean>> how) {
    return new RepeatedQuestion(
        replay, key, noun, existenceQuestion, endsAtEnter, how, title, order);
  }

  /**
   * One thing of the list. Its number counts from one; the parameters hold the things before it.
   */
  public interface One<T> {
    T ask(String key, List<T> before);
  }

  /** Asks for any number of things, also none. */
  public <T> List<T> orNone(UnaryOperator<QuestionDefinition<Boolean>> explained, One<T> one) {
    return orNone(explained, one, unused -> {});
  }

  /**
   * Asks for any number of things, also none.
   *
   * @param known receives the things so far as soon as there is one more
   */
  public <T> List<T> orNone(
      UnaryOperator<QuestionDefinition<Boolean>> explained, One<T> one, Consumer<List<T>> known) {
    QuestionDefinition<Boolean> first =
        explained.apply(WordQuestions.yesNo(anyKey(1), existenceQuestion));
    return replay.ask(inRow(1, first)) ? explanation(explained).atLeastOne(one, known) : List.of();
  }

  public <T> List<T> atLeastOne(One<T> one) {
    return atLeastOne(one, unused -> {});
  }

  /**
   * Asks for one thing or more.
   *
   * @param known receives the things so far as soon as there is one more
   */
  public <T> List<T> atLeastOne(One<T> one, Consumer<List<T>> known) {
    List<T> things = new ArrayList<>();
    do {
      things.add(one.ask(key + "." + (things.size() + 1), List.copyOf(things)));
      known.accept(List.copyOf(things));
    } while (things.size() < MOST && more(things.size() + 1));
    return List.copyOf(things);
  }

  private boolean more(int number) {
    QuestionDefinition<Boolean> another =
        explanation.apply(WordQuestions.yesNo(anyKey(number), "Another " + noun + "?"));
    return replay.ask(
        inRow(number, endsAtEnter ? another.orElse(false, NO_MORE) : another.withoutDefault()));
  }

  private String anyKey(int number) {
    return key + "." + number + ANY;
  }

  private QuestionDefinition<Boolean> inRow(int number, QuestionDefinition<Boolean> another) {
    return order.isEmpty()
        ? another
        : another.rowIfAny(title + " " + number + (another.takesEnter() ? "" : ", or no"), order);
  }
}
