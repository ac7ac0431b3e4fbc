package thwartwise.boat;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Pattern;

/** The side of the boat that the name of a place mentions; facing forward, left is port. */
public enum NamedSide {
  PORT("port", "port|portside|left"),
  STARBOARD("starboard", "starboard|stbd|right"),
  EITHER("side", "sides?|side(seat|bench)s?");

  private final String word;
  private final Pattern spoken;

  NamedSide(String word, String words) {
    this.word = word;
    this.spoken = wholeWords(words);
  }

  public String word() {
    return word;
  }

  /** The side; empty for a name that mentions none. */
  public static Optional<NamedSide> of(String name) {
    return Arrays.stream(values()).filter(side -> side.spoken.matcher(name).find()).findFirst();
  }

  /** The distance of the middle of a place to this side, m; negative on the other side. */
  public double offset(Place place) {
    double port = place.across().middle();
    return switch (this) {
      case PORT -> port;
      case STARBOARD -> -port;
      case EITHER -> Math.abs(port);
    };
  }

  /**
   * @param words one or several with {@code |} between them
   */
  static Pattern wholeWords(String words) {
    return Pattern.compile(
        "\\b(" + words + ")\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS);
  }
}
