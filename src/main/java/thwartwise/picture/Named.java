package thwartwise.picture;

import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thwartwise.measure.Quoted;

/** Names that somebody typed, in a caption. */
final class Named {
  private Named() {}

  /** In quotes, so that a comma within one does not make two of it, and cut short when long. */
  static String of(String typed) {
    return Quoted.of(typed);
  }

  /** One sentence that lists them; blank when there are none. */
  static String list(String before, int count, IntFunction<String> item) {
    return count == 0
        ? ""
        : before + IntStream.range(0, count).mapToObj(item).collect(Collectors.joining(", ")) + ".";
  }
}
