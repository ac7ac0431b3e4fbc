package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.Standing;

/** What other rules give for this boat, set by set, and what becomes of it in the answer. */
final class FormulasSection {
  private FormulasSection() {}

  static void write(Page page, List<CapacityFigure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    page.heading("Published formulas beside it");
    Map<String, List<CapacityFigure>> bySet = new LinkedHashMap<>();
    figures.forEach(f -> bySet.computeIfAbsent(f.ruleSet(), s -> new ArrayList<>()).add(f));
    bySet.values().stream()
        .sorted((a, b) -> standing(a).compareTo(standing(b)))
        .forEach(set -> write(page, set.get(0).ruleSet(), set));
  }

  private static void write(Page page, String name, List<CapacityFigure> set) {
    Standing standing = standing(set);
    String head = name.isBlank() ? "" : name + ": " + told(standing, set);
    page.paragraph(head);
    set.stream()
        .filter(figure -> !figure.formula().isBlank())
        .forEach(figure -> page.point(FormulaWords.of(figure, standing)));
    page.gap();
  }

  /** A set is as good as the best of its figures. */
  private static Standing standing(List<CapacityFigure> set) {
    return set.stream().map(CapacityFigure::standing).sorted().findFirst().orElseThrow();
  }

  private static String told(Standing standing, List<CapacityFigure> set) {
    return switch (standing) {
      case TAKES_PART -> "it takes part in the answer, and the lowest rules";
      case BESIDE -> "beside the answer, it changes nothing";
      case DOES_NOT_APPLY ->
          set.get(0).formula().isBlank() ? set.get(0).note() : "gives no number for this boat";
    };
  }
}
