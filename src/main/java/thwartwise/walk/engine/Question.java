package thwartwise.walk.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One question as a person sees it.
 *
 * @param key stable name of the question within a walk
 * @param subject what is asked for, in a few words; the repeated answer begins with it
 * @param alone prompt of this question by itself: one line of at most 78 columns with the unit and
 *     the meaning of Enter
 * @param row prompt where a whole row can be typed that begins here
 * @param how how to measure it and with which tool, a line or two
 * @param why why it matters, a line or two
 * @param expected what may be typed, with examples
 * @param sketch a drawing in characters; empty where words are enough
 * @param choices words that can be typed, if there are a few of them
 * @param skipped what is assumed when the answer is left out; empty when it cannot be
 * @param enterAsksAlone whether Enter at the row asks for its values one by one
 */
public record Question(
    String key,
    String subject,
    String alone,
    Optional<String> row,
    List<String> how,
    List<String> why,
    String expected,
    List<String> sketch,
    List<String> choices,
    Optional<String> skipped,
    boolean enterAsksAlone) {

  static final int COLUMNS = 78;

  public Question {
    how = List.copyOf(how);
    why = List.copyOf(why);
    sketch = List.copyOf(sketch);
    choices = List.copyOf(choices);
  }

  /** The prompt, one line; the caller adds a blank and reads the answer after it. */
  public String prompt() {
    return row.orElse(alone);
  }

  /** The answer repeated. */
  public String repeat(String understood) {
    return subject + (subject.endsWith("?") ? " " : ": ") + understood;
  }

  /** The whole explanation, line by line. */
  public List<String> help() {
    List<String> lines = new ArrayList<>(how);
    lines.addAll(why);
    lines.addAll(wrapped("Type " + expected + "."));
    if (row.isPresent()) {
      lines.add("Or the whole row, with ; between; what the row leaves out is asked after it.");
    }
    lines.addAll(wrapped(whenOmitted()));
    if (!sketch.isEmpty()) {
      lines.add("There is a sketch: type show.");
    }
    return lines;
  }

  /** What is assumed when the answer is left out. */
  public String whenOmitted() {
    return skipped
        .map(taken -> "Enter or skip leaves it out: " + taken + ".")
        .orElse("It cannot be left out: without it nothing can be worked out.");
  }

  /** The list of choices, broken at the last blank that fits the line. */
  public static List<String> wrapped(String text) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > COLUMNS && rest.lastIndexOf(' ', COLUMNS) > 0) {
      int end = rest.lastIndexOf(' ', COLUMNS);
      lines.add(rest.substring(0, end));
      rest = rest.substring(end + 1);
    }
    lines.add(rest);
    return lines;
  }
}
