package thwartwise.files;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.record.Printable;
import tools.jackson.databind.JsonNode;

/**
 * The kind of a file, said in its key {@code format}: {@code thwartwise/boat/1}. Looked at before
 * anything else, since every other message would be beside the point in a file of another kind.
 */
enum Format {
  BOAT("boat"),
  RULES("rules"),
  REPORT("report"),
  RECORD("record"),
  DRAFT("draft");

  private static final int VERSION = 1;
  private static final Pattern OURS = Pattern.compile("thwartwise/([a-z]+)/([1-9][0-9]{0,5})");

  private final String word;

  Format(String word) {
    this.word = word;
  }

  String text() {
    return "thwartwise/" + word + "/" + VERSION;
  }

  /** A noun with its article, as in "wanted a boat file". */
  String noun() {
    return "a " + word + " file";
  }

  /** The same tree, when it is an object of this kind and a version this program reads. */
  JsonNode checked(JsonNode tree, Spot spot) {
    if (!tree.isObject()) {
      throw spot.fault(
          "the file holds "
              + (tree.isMissingNode() ? "nothing" : Kind.of(tree))
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
    if (!format.isString() || !format.stringValue().equals(text())) {
      throw spot.fault(refusal(format));
    }
    return tree;
  }

  private String refusal(JsonNode format) {
    Matcher ours = OURS.matcher(format.isString() ? format.stringValue() : "");
    if (ours.matches() && ours.group(1).equals(word)) {
      return String.format(
          Locale.ROOT,
          "this is %s of version %s and this program reads version %d. A newer program is needed.",
          noun(),
          ours.group(2),
          VERSION);
    }
    if (ours.matches()) {
      return String.format(
          Locale.ROOT, "this is a %s file, wanted %s. Name another file.", ours.group(1), noun());
    }
    String found = format.isString() ? Printable.quoted(format.stringValue()) : Kind.of(format);
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
