package thwartwise.boat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The part of the boat's length that the name of a place mentions. */
public enum NamedEnd {
  FORE("the fore part", "fore|forward|foremost|bow|bows|front"),
  MIDDLE("the middle of the boat", "middle|midships?|amidships|mid"),
  AFT("the aft part", "aft|aftmost|stern|sternsheets");

  private final String words;
  private final Pattern spoken;

  NamedEnd(String words, String names) {
    this.words = words;
    this.spoken = NamedSide.wholeWords(names);
  }

  /** The words for a sentence. */
  public String words() {
    return words;
  }

  /**
   * The end; empty for a name that mentions none or more than one, such as "stern seat, middle".
   */
  public static Optional<NamedEnd> of(String name) {
    List<NamedEnd> named =
        Arrays.stream(values()).filter(end -> end.spoken.matcher(name).find()).toList();
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }
}
