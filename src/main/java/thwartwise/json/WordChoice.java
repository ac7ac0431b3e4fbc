package thwartwise.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.measure.NearestWord;

/** A closed choice of words in a file. Capitals do not matter when reading. */
public record WordChoice<T>(Map<String, T> byWord) {
  @SafeVarargs
  public static <T> WordChoice<T> of(Function<T, String> word, T... values) {
    Map<String, T> byWord = new LinkedHashMap<>();
    for (T value : values) {
      byWord.put(word.apply(value), value);
    }
    return new WordChoice<>(byWord);
  }

  Optional<T> named(String typed) {
    return byWord.entrySet().stream()
        .filter(entry -> entry.getKey().equalsIgnoreCase(typed))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** The words in the order in which they were given. */
  public List<String> words() {
    return List.copyOf(byWord.keySet());
  }

  /** All the words, and the one that was probably meant. */
  String wanted(String typed) {
    String all = "one of " + String.join(", ", words());
    return NearestWord.nearest(typed, words())
        .map(word -> all + "; the nearest is \"" + word + '"')
        .orElse(all);
  }
}
