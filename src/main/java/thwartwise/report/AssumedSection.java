package thwartwise.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** What nobody measured, and what nobody looked at. */
final class AssumedSection {
  private static final List<String> NOT_LOOKED_AT =
      List.of(
          "The boat under sail, planing, towing, or towed faster than a walk.",
          "How it moves in waves and wash: a wave counts only as freeboard that must be there.",
          "More current or wind than the figures here name.",
          "Petrol aboard beyond a portable tank, and boats of more than one hull.",
          "The strength of hull, seats and fastenings, rot, cracks, wiring and motor.",
          "Whether the people can swim, row, bail or climb back in.");

  private AssumedSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Set<String> assumed = new LinkedHashSet<>(inspection.boat().assumptions());
    assumed.addAll(inspection.report().assumptions());
    page.heading("What was taken for granted");
    page.paragraph(
        assumed.isEmpty()
            ? "Nothing was noted as taken for granted"
            : "The figures rest on these, which nobody measured:");
    page.points(List.copyOf(assumed));
    page.heading("What was not looked at");
    page.points(NOT_LOOKED_AT);
  }
}
