package thwartwise.supposition;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;

/**
 * Finds the name that is meant: a whole name, or a piece that only one name has.
 *
 * @param noun what all of them are, in one word
 */
record NameMatch(String noun, List<String> names) {
  private static final Pattern ARTICLE = Pattern.compile("^(?:the|an?|my|our)\\s+");

  /** A shorter word resembles too many others. */
  private static final int SHORTEST = 5;

  NameMatch {
    names = List.copyOf(names);
  }

  Reading<String> read(String typed) {
    String bare = bare(typed);
    List<String> whole = names.stream().filter(n -> lower(n).equals(bare)).toList();
    List<String> pieces = names.stream().filter(n -> lower(n).contains(bare)).toList();
    List<String> meant = whole.isEmpty() ? pieces : whole;
    if (bare.isEmpty() || meant.isEmpty()) {
      return Reading.refused(unknown(typed, bare));
    }
    return meant.size() > 1
        ? Reading.refused(
            "%s can be any of these: %s. Type more of its name."
                .formatted(PrintableText.excerpt(typed.strip()), ChoiceReader.listed(meant)))
        : Reading.understood(meant.get(0), meant.get(0));
  }

  /** Whether at least one name is meant. */
  boolean knows(String typed) {
    String bare = bare(typed);
    return !bare.isEmpty() && names.stream().anyMatch(n -> lower(n).contains(bare));
  }

  /** Whether a whole name is meant, with a typing error or two. */
  boolean isAlmost(String typed) {
    String bare = bare(typed);
    return names.stream().anyMatch(n -> lower(n).equals(bare))
        || bare.length() >= SHORTEST && NearestWord.nearest(bare, names).isPresent();
  }

  private String unknown(String typed, String bare) {
    String there =
        names.isEmpty()
            ? "It has none."
            : NearestWord.nearest(bare, names)
                .map(n -> "Did you mean \"" + n + "\"?")
                .orElse("Type one of: " + ChoiceReader.listed(names) + ".");
    return "This boat has no %s %s. %s"
        .formatted(noun, PrintableText.excerpt(typed.strip()), there);
  }

  private static String bare(String typed) {
    return ARTICLE.matcher(lower(typed.strip())).replaceFirst("").strip();
  }

  private static String lower(String words) {
    return words.toLowerCase(Locale.ROOT);
  }
}
