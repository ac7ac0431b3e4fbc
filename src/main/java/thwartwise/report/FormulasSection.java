package thwartwise.report;

import java.util.List;
import java.util.OptionalInt;
import thwartwise.rules.CapacityFigure;

/** What published formulas give for this boat, beside our own answer. */
final class FormulasSection {
  private FormulasSection() {}

  static void write(Page page, List<CapacityFigure> figures) {
    if (figures.isEmpty()) {
      return;
    }
    page.heading("Published formulas beside it");
    figures.forEach(figure -> page.point(words(figure)));
  }

  private static String[] words(CapacityFigure figure) {
    return new String[] {
      figure.formula()
          + ": "
          + Shown.down(figure.mass(), 0)
          + Shown.TIED
          + "kg"
          + persons(figure.persons())
          + (figure.capsPeople() ? " for the people aboard" : " for the whole load"),
      figure.applies() ? "" : "Not written for this boat, so it takes no part in the answer",
      figure.note(),
      figure.source().isBlank() ? "" : "From " + figure.source()
    };
  }

  private static String persons(OptionalInt persons) {
    return persons.isPresent() ? ", " + Shown.people(persons.getAsInt()) + "," : "";
  }
}
