package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * Asks for one thing after another until the answer is no.
 *
 * @param any asks whether there is one at all
 * @param endsAtEnter whether Enter alone means that there is no other
 */
record Several(Replay replay, String key, String noun, String any, boolean endsAtEnter) {
  private static final int MOST = 40;

  Several(Replay replay, String key, String noun, String any) {
    this(replay, key, noun, any, true);
  }

  /** For things that count against the boat: that there is no other has to be said. */
  Several forgettingNone() {
    return new Several(replay, key, noun, any, false);
  }

  /** One thing: its number, counted from one, and those before it. */
  interface One<T> {
    T ask(String key, List<T> before);
  }

  /** From none upward. */
  <T> List<T> orNone(UnaryOperator<Entry<Boolean>> explained, One<T> one) {
    return replay.ask(explained.apply(Words.yesNo(key + ".1.any", any)))
        ? atLeastOne(one)
        : List.of();
  }

  <T> List<T> atLeastOne(One<T> one) {
    List<T> things = new ArrayList<>();
    do {
      things.add(one.ask(key + "." + (things.size() + 1), List.copyOf(things)));
    } while (things.size() < MOST && more(things.size() + 1));
    return List.copyOf(things);
  }

  private boolean more(int number) {
    Entry<Boolean> another = Words.yesNo(key + "." + number + ".any", "Another " + noun + "?");
    return replay.ask(endsAtEnter ? another.orElse(false, "no") : another);
  }
}
