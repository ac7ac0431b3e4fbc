package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.crew.Recommendation;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.record.BoatRecords;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.RecordEntry;

/** The saved records, and whether they still fit together. */
public final class RecordsPage {
  /** Enough digits to recognise a hash; the record has all of it. */
  private static final int DIGITS = 16;

  private RecordsPage() {}

  /** Every record with its verdict. */
  public static String list(List<BoatRecords> boats) {
    Page page = new Page();
    for (BoatRecords boat : boats) {
      page.title(boat.boat());
      boat.entries().forEach(record -> row(page, record, boat));
      boat.unreadable().forEach(page::point);
      if (boat.entries().isEmpty()) {
        boat.faults().forEach(page::point);
      }
      page.gap();
    }
    page.paragraph(
        "\"compare\" with two of the names in brackets compares two records",
        "\"records check\" says whether one of them or its pages was changed, added or lost");
    return page.toString();
  }

  private static void row(Page page, RecordEntry record, BoatRecords boat) {
    String[] words = words(record, boat).toArray(String[]::new);
    if (record.number().isPresent()) {
      page.numbered(record.number().getAsInt(), words);
    } else {
      page.point(words);
    }
  }

  private static List<String> words(RecordEntry record, BoatRecords boat) {
    InspectionRecord inspection = record.inspection();
    List<String> words = new ArrayList<>();
    words.add(
        TimestampText.of(inspection.date())
            + " by "
            + (inspection.by().isBlank() ? "somebody not named" : inspection.by())
            + " ["
            + record.handle()
            + "]");
    words.add(Verdict.of(inspection.report()).words());
    words.add(limits(inspection));
    record.corrects().ifPresent(corrects -> words.add(corrects(corrects)));
    boat.correctionOf(record).ifPresent(later -> words.add("Corrected by " + later.handle()));
    if (!record.intact()) {
      words.add("Changed after it was saved: do not rely on it");
    }
    if (record.number().isEmpty()) {
      words.add("Not part of the chain");
    } else if (!record.chained()) {
      words.add("Saved before chains began");
    }
    return words;
  }

  private static String limits(InspectionRecord inspection) {
    if (Verdict.of(inspection.report()) == Verdict.HELD) {
      return "Nobody and nothing";
    }
    Recommendation crew = inspection.report().recommendation();
    UnitFormat units = ReaderUnits.of(inspection.boat());
    return FigureText.adults(crew.people())
        + ", people up to "
        + units.mass(crew.crew(), Side.DOWN)
        + ", load up to "
        + units.mass(crew.load(), Side.DOWN);
  }

  /** The note of a record that corrects another one. */
  public static String corrects(Correction correction) {
    return "It corrects record "
        + correction.number()
        + " ("
        + correction.record()
        + "), because: "
        + correction.reason();
  }

  /** The note before the foot of a correction's page. */
  static void correction(Page page, Optional<Correction> corrects) {
    corrects.ifPresent(
        correction ->
            page.heading("What this record corrects")
                .paragraph(corrects(correction), "The older record stays where it is"));
  }

  /** What was changed, added or lost, boat by boat. */
  public static String check(List<BoatRecords> boats) {
    Page page = new Page();
    for (BoatRecords boat : boats) {
      page.title(boat.boat());
      if (boat.faults().isEmpty()) {
        page.paragraph(sound(boat));
      }
      boat.faults().forEach(page::point);
      page.gap();
    }
    page.paragraph(
        "This check finds slips, damage and careless changes",
        "It cannot find that somebody made all records and their list anew; a last hash that was"
            + " written down elsewhere can");
    return page.toString();
  }

  private static String[] sound(BoatRecords boat) {
    String count = boat.entries().size() == 1 ? "One record" : boat.entries().size() + " records";
    if (boat.entries().stream().noneMatch(RecordEntry::chained)) {
      return new String[] {
        count + ", saved before chains began: a change or a loss cannot be detected",
        "The next inspection makes them the head of a chain"
      };
    }
    long unvouched = boat.entries().stream().filter(record -> !record.sealsPapers()).count();
    return new String[] {
      count + ", with pages: nothing was changed, added or lost",
      older(unvouched),
      boat.last()
          .map(
              last ->
                  "The last is "
                      + last.handle()
                      + ", its hash begins "
                      + last.hash().substring(0, DIGITS))
          .orElse("")
    };
  }

  private static String older(long unvouched) {
    if (unvouched == 0) {
      return "";
    }
    return unvouched == 1
        ? "One older record holds no hashes of its pages: a change of these cannot be detected"
        : unvouched
            + " older records hold no hashes of their pages: a change of these cannot be detected";
  }
}
