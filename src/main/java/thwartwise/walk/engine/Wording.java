package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The words of a question.
 *
 * @param subject what is asked for, in a few words
 * @param unit the unit of a bare number, or the choices, as the prompt shows them; may be blank
 * @param expected what may be typed, with examples
 * @param sketch a drawing in characters, where words are not enough
 * @param choices words that can be typed, if there are a few of them
 * @param row what a whole row typed here holds
 */
record Wording(
    String subject,
    String unit,
    String expected,
    List<String> how,
    List<String> why,
    List<String> sketch,
    List<String> choices,
    Optional<RowPrompt> row) {

  Wording how(String... lines) {
    return new Wording(subject, unit, expected, List.of(lines), why, sketch, choices, row);
  }

  Wording why(String... lines) {
    return new Wording(subject, unit, expected, how, List.of(lines), sketch, choices, row);
  }

  Wording sketch(List<String> lines) {
    return new Wording(subject, unit, expected, how, why, lines, choices, row);
  }

  Wording choices(List<String> words) {
    return new Wording(subject, unit, expected, how, why, sketch, words, row);
  }

  Wording row(RowPrompt whole) {
    return new Wording(subject, unit, expected, how, why, sketch, choices, Optional.of(whole));
  }

  /** Adds a word that may be typed instead. */
  Wording orWord(String word) {
    return new Wording(
        subject,
        unit.isEmpty() ? "or " + word : unit + " or " + word,
        expected + ", or " + word,
        how,
        why,
        sketch,
        choices,
        row);
  }

  /**
   * The prompt.
   *
   * @param empty the meaning of Enter alone; blank when it has none
   */
  String prompt(String empty) {
    String whole = prompt(unit.isEmpty() ? "" : " (" + unit + ")", empty);
    boolean wordsTooLong = !choices.isEmpty() && whole.length() > Question.COLUMNS;
    return wordsTooLong ? prompt("", empty) : whole;
  }

  /** The prompt for a whole row. */
  Optional<String> rowPrompt(String empty) {
    return row.map(whole -> whole.prompt(empty(empty)));
  }

  private static String empty(String means) {
    return means.isEmpty() ? "" : " [Enter: " + means + "]";
  }

  private String prompt(String words, String empty) {
    return subject + words + empty(empty) + ":";
  }

  /**
   * A prompt for several values at once, separated by {@code ;}.
   *
   * @param subject what the row is about, in a few words
   * @param order what it holds, value by value, each in a word or two
   * @param explainsEnter whether the prompt says what Enter alone means
   * @param asksExistence whether yes asks for the values one by one and no ends the list; otherwise
   *     Enter alone asks for them one by one, unless it has another meaning
   */
  record RowPrompt(
      String subject, List<String> order, boolean explainsEnter, boolean asksExistence) {

    public RowPrompt {
      order = List.copyOf(order);
    }

    /**
     * One line that fits a terminal; an order that is too long ends in dots.
     *
     * @param enter the meaning of Enter alone, as the prompt shows it; may be blank
     */
    String prompt(String enter) {
      String empty = explainsEnter ? enter : "";
      String whole = prompt(order, empty);
      for (int words = order.size() - 1; whole.length() > Question.COLUMNS && words > 0; words--) {
        whole = prompt(more(order.subList(0, words)), empty);
      }
      return whole;
    }

    private static List<String> more(List<String> words) {
      return Stream.concat(words.stream(), Stream.of("...")).toList();
    }

    private String prompt(List<String> words, String empty) {
      return subject + " (" + String.join("; ", words) + ")" + empty + ":";
    }
  }
}
