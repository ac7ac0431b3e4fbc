package thwartwise.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** What nobody measured, and what nobody looked at. */
final class AssumptionsSection {
  private static final List<String> NOT_LOOKED_AT =
      List.of(
          "The boat under sail, planing, towing, or towed faster than a walk.",
          "How it moves in waves and wash: a wave counts only as freeboard that must be there.",
          "More current or wind than the figures here name.",
          "Petrol aboard beyond a portable tank, and boats of more than one hull.",
          "The strength of hull, seats and fastenings, rot, cracks, wiring and motor.",
          "Whether the people can swim, row, bail or climb back in.");

  private AssumptionsSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Set<String> general = new LinkedHashSet<>(inspection.report().assumptions());
    inspection.boat().assumptions().forEach(general::remove);
    page.heading("What was taken for granted");
    if (inspection.boat().assumptions().isEmpty() && general.isEmpty()) {
      page.paragraph("Nothing was noted as taken for granted");
    }
    page.points(inspection.boat().assumptions());
    if (!general.isEmpty()) {
      page.folded(
          "The figures rest on these, which nobody measured",
          new Page().points(List.copyOf(general)));
    }
    page.heading("What was not looked at");
    NOT_LOOKED_AT.forEach(page::note);
  }
}
