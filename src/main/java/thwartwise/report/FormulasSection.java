package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.page.Page;
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
    List<List<CapacityFigure>> sets =
        bySet.values().stream().sorted((a, b) -> standing(a).compareTo(standing(b))).toList();
    for (int i = 0; i < sets.size(); i++) {
      (i > 0 ? page.gap() : page).paragraph(head(sets.get(i)));
      points(page, sets.get(i));
    }
  }

  private static String head(List<CapacityFigure> set) {
    String name = set.get(0).ruleSet();
    String told = told(standing(set), set);
    return name.isBlank() ? told : name + ": " + told;
  }

  private static void points(Page page, List<CapacityFigure> set) {
    Standing standing = standing(set);
    set.stream()
        .filter(figure -> !figure.formula().isBlank())
        .forEach(figure -> page.point(FormulaWords.of(figure, standing)));
  }

  /** A set is as good as the best of its figures. */
  private static Standing standing(List<CapacityFigure> set) {
    return set.stream().map(CapacityFigure::standing).sorted().findFirst().orElseThrow();
  }

  private static String told(Standing standing, List<CapacityFigure> set) {
    return switch (standing) {
      case TAKES_PART -> "takes part in the answer, and the lowest rules";
      case BESIDE -> "beside the answer, changes nothing";
      case DOES_NOT_APPLY ->
          set.get(0).formula().isBlank() ? set.get(0).note() : "gives no number for this boat";
    };
  }
}
