package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import thwartwise.checks.Finding;
import thwartwise.page.Page;

/**
 * Findings under the loading they were looked at with. A condition is a loading, then what is done
 * to it behind a semicolon; the loading is told once.
 */
final class FindingGroups {
  private FindingGroups() {}

  static void write(Page page, List<Finding> findings, Function<Finding, String> words) {
    Map<String, List<Finding>> byLoading = new LinkedHashMap<>();
    for (Finding finding : findings) {
      byLoading.computeIfAbsent(loading(finding), l -> new ArrayList<>()).add(finding);
    }
    byLoading.forEach(
        (loading, group) -> {
          page.gap().paragraph(loading.isBlank() ? "" : loading + ":");
          group.forEach(finding -> page.point(words.apply(finding)));
        });
  }

  private static String loading(Finding finding) {
    return finding.condition().split(";", 2)[0].strip();
  }

  /** What is done to the loading; blank when nothing is. */
  static String deed(Finding finding) {
    String[] parts = finding.condition().split(";", 2);
    return parts.length == 2 ? parts[1].strip() : "";
  }
}
