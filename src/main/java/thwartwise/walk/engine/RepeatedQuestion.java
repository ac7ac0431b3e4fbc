package thwartwise.walk.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Asks for one thing after another until the answer is no.
 *
 * @param any asks whether there is one at all
 * @param endsAtEnter whether Enter alone means that there is no other
 */
public record RepeatedQuestion(
    Replay replay, String key, String noun, String any, boolean endsAtEnter) {
  private static final int MOST = 40;

  public RepeatedQuestion(Replay replay, String key, String noun, String any) {
    this(replay, key, noun, any, true);
  }

  /** For things that count against the boat: that there is no other has to be said. */
  public RepeatedQuestion forgettingNone() {
    return new RepeatedQuestion(replay, key, noun, any, false);
  }

  /** One thing: its number, counted from one, and those before it. */
  public interface One<T> {
    T ask(String key, List<T> before);
  }

  /** From none upward. */
  public <T> List<T> orNone(UnaryOperator<Entry<Boolean>> explained, One<T> one) {
    return orNone(explained, one, unheard -> {});
  }

  /** The same, as {@link #atLeastOne(One, Consumer)}. */
  public <T> List<T> orNone(
      UnaryOperator<Entry<Boolean>> explained, One<T> one, Consumer<List<T>> known) {
    return replay.ask(explained.apply(WordQuestions.yesNo(key + ".1.any", any)))
        ? atLeastOne(one, known)
        : List.of();
  }

  public <T> List<T> atLeastOne(One<T> one) {
    return atLeastOne(one, unheard -> {});
  }

  /**
   * The same for somebody who hears of all there are as soon as there is one more.
   *
   * @param known given those asked for so far
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
    Entry<Boolean> another =
        WordQuestions.yesNo(key + "." + number + ".any", "Another " + noun + "?");
    return replay.ask(endsAtEnter ? another.orElse(false, "no") : another);
  }
}
