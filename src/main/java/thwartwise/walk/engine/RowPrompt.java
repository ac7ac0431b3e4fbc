package thwartwise.walk.engine;

import java.util.List;
import java.util.stream.Stream;

/**
 * A question that asks for several values at once, with {@code ;} between them.
 *
 * @param subject what the row is about, in a few words
 * @param order what it holds, value by value, each in a word or two
 * @param explainsEnter whether the prompt says what Enter alone means
 * @param asksWhetherThereIsOne whether yes asks for the values one by one, and no ends the list;
 *     otherwise Enter alone asks for them one by one where it means nothing else
 */
record RowPrompt(
    String subject, List<String> order, boolean explainsEnter, boolean asksWhetherThereIsOne) {

  public RowPrompt {
    order = List.copyOf(order);
  }

  /**
   * One line that fits a terminal; an order too long for it ends in dots.
   *
   * @param enter what Enter alone means, as it stands in the prompt; may be blank
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
