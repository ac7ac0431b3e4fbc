package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import thwartwise.checks.Finding;
import thwartwise.checks.LoadCaseWords;
import thwartwise.loadcase.LoadCase;
import thwartwise.page.Page;

/** Findings under the loading they were looked at with. */
final class FindingGroups {
  private FindingGroups() {}

  static void write(Page page, List<Finding> findings, Function<Finding, String> words) {
    Map<LoadCase, List<Finding>> byLoading = new LinkedHashMap<>();
    for (Finding finding : findings) {
      byLoading.computeIfAbsent(finding.loadCase().before(), l -> new ArrayList<>()).add(finding);
    }
    byLoading.forEach(
        (loading, group) -> {
          String title = LoadCaseWords.of(loading);
          page.gap().paragraph(title.isBlank() ? "" : title + ":");
          group.forEach(finding -> page.point(words.apply(finding)));
        });
  }
}
