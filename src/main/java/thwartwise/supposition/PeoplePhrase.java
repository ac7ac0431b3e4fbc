package thwartwise.supposition;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thwartwise.walk.questions.PeopleText;

/**
 * People in everyday words, "two adults and a girl of 10", converted to the words that {@link
 * PeopleText} reads.
 */
final class PeoplePhrase {
  private static final List<String> NUMBERS =
      List.of("one", "two", "three", "four", "five", "six", "seven", "eight");

  private static final Pattern AND = Pattern.compile("\\s+and\\s+|\\s*&\\s*");

  private static final Pattern SPOKEN =
      Pattern.compile(
          "(?:(?<count>an?|[1-8]|"
              + String.join("|", NUMBERS)
              + ")\\s+)?(?<kind>adult|boy|girl)s?(?<age>\\s+(?:of\\s+)?\\d{1,3})?");

  private static final Pattern ABOUT_PEOPLE =
      Pattern.compile(".*\\b(?:adult|boy|girl|child|kid)s?\\b.*|.*\\D\\d.*");

  private PeoplePhrase() {}

  /** Whether the text seems to be about people. */
  static boolean areIn(String typed) {
    return ABOUT_PEOPLE.matcher(lower(typed)).matches();
  }

  static Stream<String> parts(String typed) {
    return AND.splitAsStream(typed).map(String::strip).filter(part -> !part.isEmpty());
  }

  /** Each person alone. */
  static Stream<String> each(String part) {
    Matcher spoken = SPOKEN.matcher(lower(part));
    return spoken.matches()
        ? Collections.nCopies(count(spoken.group("count")), one(spoken)).stream()
        : Stream.of(part);
  }

  private static String one(Matcher spoken) {
    return spoken.group("kind") + (spoken.group("age") == null ? "" : spoken.group("age"));
  }

  private static int count(String word) {
    if (word == null || word.startsWith("a")) {
      return 1;
    }
    int number = NUMBERS.indexOf(word) + 1;
    return number > 0 ? number : Integer.parseInt(word);
  }

  private static String lower(String words) {
    return words.toLowerCase(Locale.ROOT);
  }
}
