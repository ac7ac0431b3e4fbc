package thwartwise.json;

import java.util.Locale;
import thwartwise.measure.PrintableText;

/**
 * A place in a file, in words: {@code station 2 "middle", point 3}.
 *
 * @param file name of the file, or whatever stands for it
 * @param words where in it; blank for the whole file
 */
public record Location(String file, String words) {
  public static Location whole(String file) {
    return new Location(file, "");
  }

  /** A place within this one. */
  public Location in(String part) {
    return new Location(file, words.isEmpty() ? part : words + ", " + part);
  }

  /** The same element of a list, with its number from 1 and its name when it has one. */
  public Location item(String noun, int number, String name) {
    String shown = noun + " " + number;
    return in(name.isBlank() ? shown : shown + " " + PrintableText.quoted(name));
  }

  /** An exception with one line for a person. */
  public UnusableInput fault(String format, Object... parts) {
    return new UnusableInput(line(format, parts));
  }

  /** The same about the value of one key. */
  public UnusableInput faultOf(String key, String format, Object... parts) {
    return new UnusableInput(line(format, parts), key);
  }

  /** The same with the system's own message behind it. */
  public UnusableInput fault(Exception cause, String format, Object... parts) {
    return new UnusableInput(line(format, parts), cause);
  }

  private String line(String format, Object... parts) {
    String text = parts.length == 0 ? format : String.format(Locale.ROOT, format, parts);
    String place = file.isBlank() ? words : words.isEmpty() ? file : file + ": " + words;
    return PrintableText.of(place.isBlank() ? text : place + ": " + text);
  }
}
