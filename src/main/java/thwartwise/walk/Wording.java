package thwartwise.walk;

import java.util.List;

/**
 * What is said around a question.
 *
 * @param subject what is asked for, in a few words
 * @param unit what a bare number means, or the choices; stands in the prompt, may be blank
 * @param expected what may be typed, with examples
 * @param sketch a drawing in characters where words are not enough
 */
record Wording(
    String subject,
    String unit,
    String expected,
    List<String> how,
    List<String> why,
    List<String> sketch) {

  Wording how(String... lines) {
    return new Wording(subject, unit, expected, List.of(lines), why, sketch);
  }

  Wording why(String... lines) {
    return new Wording(subject, unit, expected, how, List.of(lines), sketch);
  }

  Wording sketch(List<String> lines) {
    return new Wording(subject, unit, expected, how, why, lines);
  }

  /**
   * The line before the answer; {@code empty} is what Enter alone means, blank when it does not.
   */
  String prompt(String empty) {
    return subject
        + (unit.isEmpty() ? "" : " (" + unit + ")")
        + (empty.isEmpty() ? "" : " [Enter: " + empty + "]")
        + ":";
  }
}
