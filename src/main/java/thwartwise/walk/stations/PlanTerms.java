package thwartwise.walk.stations;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** The words of plans for the lines of a hull and for what is measured of them. */
final class PlanTerms {
  private static final Pattern LINE =
      Pattern.compile(
          "\\b(?:keel|rabbet|profile|fairbody|bottom|chine|knuckle|bilge|garboard|strake|plank|"
              + "sheer|rail|gunwale|gunnel)s?\\b");
  private static final Pattern OTHER =
      Pattern.compile("\\b(?:buttocks?|waterlines?|diagonals?|w\\.?l\\.?|bttk?)\\b");
  private static final Pattern UP =
      Pattern.compile("\\b(?:z|heights?|ht|up|above(?: base(?:line)?)?)\\b");
  private static final Pattern OUT =
      Pattern.compile("\\b(?:y|half[- ]?breadths?|half[- ]?beams?|hb|breadths?|out)\\b");
  private static final Pattern ALONG =
      Pattern.compile("\\b(?:x|distances?|forward|from aft|from the aft end|dist|along)\\b");
  private static final Pattern FROM_AHEAD =
      Pattern.compile("\\b(?:from (?:the )?(?:stem|bow|fore end|f\\.?p\\.?))");
  private static final Pattern STATION =
      Pattern.compile("\\b(?:stations?|sta|stn|name|no|number|frame)\\b\\.?");

  private static final Pattern STATION_WORDS =
      Pattern.compile("(?i)^(?:(?:" + STATION + "|[:,/#])\\s*)+");

  private PlanTerms() {}

  /** The direction in which a figure is measured. */
  enum Direction {
    ALONG,
    OUT,
    UP
  }

  static boolean isLine(String words) {
    return LINE.matcher(plain(words)).find();
  }

  /** Whether the row is about a kind of line that this program cannot use. */
  static boolean isOtherLine(String words) {
    return OTHER.matcher(plain(words)).find();
  }

  static boolean isStation(String words) {
    return STATION.matcher(plain(words)).lookingAt();
  }

  /** The rest of a cell that also holds the name of the first station. */
  static String withoutStation(String words) {
    return STATION_WORDS.matcher(words).replaceFirst("").strip();
  }

  static List<String> words(String several) {
    return List.of(several.split(" "));
  }

  static boolean isSpacing(String words) {
    return plain(words).contains("spacing");
  }

  static boolean isFromAhead(String words) {
    return FROM_AHEAD.matcher(plain(words)).find();
  }

  static Optional<Direction> direction(String words) {
    String plain = plain(words);
    if (OUT.matcher(plain).find()) {
      return Optional.of(Direction.OUT);
    }
    if (UP.matcher(plain).find()) {
      return Optional.of(Direction.UP);
    }
    return ALONG.matcher(plain).find() || isFromAhead(plain)
        ? Optional.of(Direction.ALONG)
        : Optional.empty();
  }

  /** The name of the line, without the direction of its figures. */
  static String line(String words) {
    String bare = plain(words);
    for (Pattern direction : new Pattern[] {OUT, UP, ALONG}) {
      bare = direction.matcher(bare).replaceAll(" ");
    }
    return bare.replaceAll("[,:.()]|\\bbase(?:line)?\\b", " ").replaceAll("\\s+", " ").strip();
  }

  private static String plain(String words) {
    return words.toLowerCase(Locale.ROOT);
  }
}
