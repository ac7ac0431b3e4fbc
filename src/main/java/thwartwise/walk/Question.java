package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;

/**
 * One question as a person sees it.
 *
 * @param key stable name of the question within a walk
 * @param subject what is asked for, in a few words; the repeat of the answer begins with it
 * @param prompt one line of at most 78 columns with the unit in force and what an empty answer
 *     means; the caller adds a space and reads the line
 * @param how how to measure it and with which tool, a line or two
 * @param why why it matters, a line or two
 * @param expected what may be typed, with examples
 */
public record Question(
    String key,
    String subject,
    String prompt,
    List<String> how,
    List<String> why,
    String expected) {

  public Question {
    how = List.copyOf(how);
    why = List.copyOf(why);
  }

  /** The answer repeated. */
  public String repeat(String understood) {
    return subject + (subject.endsWith("?") ? " " : ": ") + understood;
  }

  /** Everything there is to say about it, line by line. */
  public List<String> help() {
    List<String> lines = new ArrayList<>(how);
    lines.addAll(why);
    lines.add("Type " + expected + ".");
    return lines;
  }
}
