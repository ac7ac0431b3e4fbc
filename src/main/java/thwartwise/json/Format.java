package thwartwise.json;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import thwartwise.measure.PrintableText;
import tools.jackson.databind.JsonNode;

/**
 * The format of a file in its key {@code format}, such as {@code thwartwise/boat/1}. It is checked
 * before anything else, because every other message would be pointless in a file of another kind.
 */
public enum Format {
  BOAT("boat"),
  RULES("rules"),
  REPORT("report", 2),
  RECORD("record", 3),
  DRAFT("draft"),
  CHECKLIST("checklist");

  private static final Pattern OURS = Pattern.compile("thwartwise/([a-z]+)/([1-9][0-9]{0,5})");

  private final String word;
  private final int newest;

  Format(String word) {
    this(word, 1);
  }

  Format(String word, int newest) {
    this.word = word;
    this.newest = newest;
  }

  /** The text of the newest version. */
  public String text() {
    return text(newest);
  }

  public String text(int version) {
    return "thwartwise/" + word + "/" + version;
  }

  /** Whether a text names a format of this kind, of whatever version. */
  public boolean names(String format) {
    Matcher ours = OURS.matcher(format);
    return ours.matches() && ours.group(1).equals(word);
  }

  /** The version of a checked tree. */
  public int version(JsonNode tree) {
    Matcher ours = OURS.matcher(tree.path("format").stringValue());
    return ours.matches() ? Integer.parseInt(ours.group(2)) : newest;
  }

  /** A noun with its article, as in "wanted a boat file". */
  public String noun() {
    return "a " + word + " file";
  }

  /** The same tree, if it is an object of this kind in a version that this program reads. */
  public JsonNode checked(JsonNode tree, Location spot) {
    if (!tree.isObject()) {
      throw spot.fault(
          "the file holds "
              + (tree.isMissingNode() ? "nothing" : JsonKind.of(tree))
              + ", wanted "
              + noun()
              + ": an object in braces that begins with "
              + asWritten()
              + ".");
    }
    JsonNode format = tree.path("format");
    if (format.isMissingNode()) {
      throw spot.fault(
          "the key \"format\" is missing. If this is " + noun() + ", add " + asWritten() + ".");
    }
    if (!format.isString() || !reads(format.stringValue())) {
      throw spot.fault(refusal(format));
    }
    return tree;
  }

  private boolean reads(String format) {
    return IntStream.rangeClosed(1, newest).anyMatch(version -> format.equals(text(version)));
  }

  private String refusal(JsonNode format) {
    Matcher ours = OURS.matcher(format.isString() ? format.stringValue() : "");
    if (ours.matches() && ours.group(1).equals(word)) {
      return String.format(
          Locale.ROOT,
          "this is %s of version %s and this program reads %s. A newer program is needed.",
          noun(),
          ours.group(2),
          newest == 1 ? "version 1" : "versions 1 to " + newest);
    }
    if (ours.matches()) {
      return String.format(
          Locale.ROOT, "this is a %s file, wanted %s. Name another file.", ours.group(1), noun());
    }
    String found =
        format.isString() ? PrintableText.quoted(format.stringValue()) : JsonKind.of(format);
    return String.format(
        Locale.ROOT,
        "\"format\" is %s, wanted \"%s\". Check that this is %s.",
        found,
        text(),
        noun());
  }

  private String asWritten() {
    return "\"format\": \"" + text() + "\"";
  }
}
