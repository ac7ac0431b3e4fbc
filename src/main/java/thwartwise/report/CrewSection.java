package thwartwise.report;

import java.util.List;
import java.util.stream.Collectors;
import thwartwise.inspection.Recommendation;
import thwartwise.inspection.Recommendation.LighterCrew;
import thwartwise.record.InspectionRecord;

/** How much, how many, and what stands in the way of one more. Kilograms come before heads. */
final class CrewSection {
  private CrewSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Recommendation crew = inspection.report().recommendation();
    page.heading("How much and how many");
    if (Verdict.of(inspection.report()) == Verdict.HELD) {
      page.paragraph("Nobody and nothing, as the boat stands", "A launch that is held has no crew");
    } else {
      page.paragraph(kilograms(crew)).paragraph(heads(crew));
      SeatingWords.write(page, inspection.boat().places(), crew.excludedSeatings());
    }
    page.gap().paragraph(staysUp(crew));
    page.paragraph(next(crew));
  }

  private static String[] kilograms(Recommendation crew) {
    return new String[] {
      "People, dressed and with life jackets on: up to "
          + Shown.down(crew.crew(), 0)
          + Shown.TIED
          + "kg in all",
      "People and everything that is not built in: up to "
          + Shown.down(crew.load(), 0)
          + Shown.TIED
          + "kg"
    };
  }

  private static String[] heads(Recommendation crew) {
    String lighter =
        crew.lighterCrews().stream().map(CrewSection::lighter).collect(Collectors.joining(", or "));
    if (crew.people() > 0) {
      return new String[] {
        "In people: "
            + Shown.adults(crew.people())
            + " of the mass this rule set counts with"
            + (lighter.isEmpty() ? "" : ", or " + lighter)
      };
    }
    return new String[] {
      "No adult of the mass this rule set counts with, but " + lighter, "Weigh whoever steps in"
    };
  }

  private static String lighter(LighterCrew crew) {
    return Shown.people(crew.people())
        + " of up to "
        + Shown.down(crew.eachUpTo(), 0)
        + Shown.TIED
        + "kg"
        + (crew.people() > 1 ? " each" : "");
  }

  private static String[] staysUp(Recommendation crew) {
    return new String[] {
      "It stays up with " + Shown.adults(crew.staysUpWith()),
      "When swamped it holds up " + Shown.adults(crew.holdsUpWhenSwamped()),
      "If the chambers that are only claimed to be tight prove to be, the answer is "
          + Shown.adults(crew.ifClaimedChambersProve())
    };
  }

  private static String[] next(Recommendation crew) {
    List<String> breaks = crew.nextPersonBreaks();
    return new String[] {
      crew.governedBy().isBlank() ? "" : "What stops the next person: " + crew.governedBy(),
      breaks.isEmpty() ? "" : "One person more would break: " + String.join("; ", breaks)
    };
  }
}
