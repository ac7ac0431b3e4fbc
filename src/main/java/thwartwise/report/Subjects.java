package thwartwise.report;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.CheckWords;
import thwartwise.page.Sentence;

/** Questions in a list: what several of them are about stands once, before a colon. */
final class Subjects {
  private Subjects() {}

  static String listed(List<CheckQuestion> questions) {
    Map<Subject, Set<String>> measures = new LinkedHashMap<>();
    for (CheckQuestion question : questions) {
      Set<String> named = measures.computeIfAbsent(question.subject(), s -> new LinkedHashSet<>());
      String measure = CheckWords.measure(question);
      if (!measure.isEmpty()) {
        named.add(measure);
      }
    }
    return String.join(
        "; ", measures.entrySet().stream().map(e -> words(e.getKey(), e.getValue())).toList());
  }

  private static String words(Subject subject, Set<String> measures) {
    String words = CheckWords.subject(subject);
    return measures.isEmpty() ? words : words + ": " + Sentence.list(List.copyOf(measures));
  }
}
