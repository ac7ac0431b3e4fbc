package thwartwise.archive;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A boat's name as a file name on any system. Names that differ only in capitals and in the number
 * of blanks are the same boat. If more is lost, a short hash keeps different names apart.
 */
final class Slug {
  private static final int LONGEST = 40;
  private static final Pattern PLAIN = Pattern.compile("[a-z0-9]+( [a-z0-9]+)*");
  private static final Pattern LOOKS_HASHED = Pattern.compile(".*\\b[0-9a-f]{8}");
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+");
  // Names that some systems reserve for devices, whatever the ending.
  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");
  private static final Pattern NUMBERED_DEVICE = Pattern.compile("(com|lpt)[0-9]");

  private Slug() {}

  static String of(String name) {
    String key =
        Normalizer.normalize(name, Normalizer.Form.NFC)
            .strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\s+", " ");
    return keeps(key) ? key.replace(' ', '-') : cleaned(key) + Digest.of(key);
  }

  private static boolean keeps(String key) {
    return key.length() <= LONGEST
        && PLAIN.matcher(key).matches()
        && !LOOKS_HASHED.matcher(key).matches()
        && !DEVICES.contains(key)
        && !NUMBERED_DEVICE.matcher(key).matches();
  }

  private static String cleaned(String key) {
    String bare = ACCENTS.matcher(Normalizer.normalize(key, Normalizer.Form.NFD)).replaceAll("");
    String words = OTHER.matcher(bare).replaceAll("-").replaceAll("^-|-$", "");
    String cut = words.length() > LONGEST ? words.substring(0, LONGEST) : words;
    return cut.isEmpty() ? "boat-" : cut.replaceAll("-$", "") + "-";
  }
}
