package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.page.Sentence;

/** Names of checks in a list: what several of them share is told once, behind a colon. */
final class Subjects {
  private Subjects() {}

  static String listed(List<String> checks) {
    Map<String, List<String>> bySubject = new LinkedHashMap<>();
    checks.forEach(check -> add(check.split(", ", 2), bySubject));
    return String.join(
        "; ", bySubject.entrySet().stream().map(e -> told(e.getKey(), e.getValue())).toList());
  }

  private static void add(String[] check, Map<String, List<String>> bySubject) {
    List<String> measures = bySubject.computeIfAbsent(check[0], s -> new ArrayList<>());
    measures.add(check.length > 1 ? check[1] : "");
  }

  private static String told(String subject, List<String> measures) {
    List<String> named = measures.stream().filter(m -> !m.isEmpty()).distinct().toList();
    return named.isEmpty() ? subject : subject + ": " + Sentence.list(named);
  }
}
