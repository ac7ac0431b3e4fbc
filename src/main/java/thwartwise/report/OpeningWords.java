package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import thwartwise.boat.Opening;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.PartProperties;

/** An opening in a few words: its size, height, destination and closure. */
final class OpeningWords {
  private static final Set<String> SAY_WHICH =
      Set.of("a", "an", "the", "its", "one", "two", "three", "both", "some", "his", "her", "our");

  private OpeningWords() {}

  static String of(Opening opening, UnitFormat units) {
    List<String> parts = new ArrayList<>(List.of(size(opening, units)));
    opening.into().ifPresent(chamber -> parts.add("into " + chamber));
    opening.closedBy().ifPresent(lid -> parts.add("closed by " + withArticle(lid)));
    if (opening.into().isPresent() && opening.closedBy().isEmpty()) {
      parts.add("closed by nothing");
    }
    PropertyWords.of(PartProperties.OF_OPENING, opening, units).forEach(parts::add);
    return opening.name() + " (" + String.join(", ", parts) + ")";
  }

  private static String size(Opening opening, UnitFormat units) {
    String up = units.tape(opening.middle().z()) + " up";
    return opening
        .diameter()
        .map(d -> units.hole(d) + " across, its middle " + up)
        .orElse(units.tape(opening.width()) + " wide, its edge " + up);
  }

  /**
   * The closure with an article: "a bung". Words with an article, and several things, stay as they
   * were typed.
   */
  static String withArticle(String words) {
    String lower = words.strip().toLowerCase(Locale.ROOT);
    boolean several = lower.endsWith("s") && !lower.endsWith("ss");
    if (several || SAY_WHICH.contains(lower.split("\\s+")[0])) {
      return words.strip();
    }
    return (lower.matches("[aeiou].*") ? "an " : "a ") + words.strip();
  }
}
