package thwartwise.walk;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Questions about one thing, whose answers can be typed in a row: a station, a chamber, a piece of
 * kit.
 *
 * @param list what there can be several of, such as {@code kit}; ends with a dot
 * @param number which of them; 0 where there is only one
 */
record AnswerGroup(String list, int number) {
  private static final Pattern ONE_OF_SEVERAL =
      Pattern.compile(
          "((?:hull\\.(?:station|decked|part)|(?:changed\\.\\d+\\.)?person|opening|chamber|place|kit"
              + "|outfit|electrics\\.(?:run|circuit)|changed)\\.)(\\d+)\\.(.*)");
  private static final Pattern ALONE =
      Pattern.compile(
          "(electrics\\.(?:battery|motor|panel)\\."
              + "|hull\\.(?:scale|centre|tilt)\\."
              + "|hull\\.(?=(?:length|stations|points|alike)$)).+");

  /** The answer to these may hold a semicolon itself. */
  private static final Pattern FREE_WORDS = Pattern.compile(".*\\.(?:how|by|closedBy)");

  static Optional<AnswerGroup> of(String question) {
    Matcher several = ONE_OF_SEVERAL.matcher(question);
    if (several.matches()) {
      return Optional.of(new AnswerGroup(several.group(1), Integer.parseInt(several.group(2))));
    }
    Matcher alone = ALONE.matcher(question);
    return alone.matches() ? Optional.of(new AnswerGroup(alone.group(1), 0)) : Optional.empty();
  }

  static boolean isFreeWords(String question) {
    return FREE_WORDS.matcher(question).matches();
  }

  boolean holds(String question) {
    return of(question).filter(this::equals).isPresent();
  }

  /** The same question about another of them. */
  String of(int other, String question) {
    return list + other + question.substring((list + number).length());
  }
}
