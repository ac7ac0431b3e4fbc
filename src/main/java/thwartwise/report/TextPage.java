package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.page.Block;
import thwartwise.page.Page;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.RecordEntry;

/**
 * The page as plain text, at most 80 columns, in the order in which people ask: may it be launched,
 * how much and how many, where do they sit, what does nobody do; then why; then the basis.
 */
public final class TextPage {
  private static final Pictures NO_PICTURES = new Pictures(List.of(), List.of());

  private TextPage() {}

  /** The page of an inspection that is not saved. */
  public static String of(InspectionRecord inspection) {
    Page page = new Page();
    PageFrame.write(page, inspection);
    PageSheets.write(page, inspection, NO_PICTURES);
    PageFrame.foot(page, inspection);
    return folded(page);
  }

  /** The sheets of the page, in their order. */
  public static List<Sheet> sheets(RecordEntry record) {
    return sheets(record.inspection().boat().name(), page(record));
  }

  /** The page of a saved record. */
  public static String of(RecordEntry record) {
    return folded(page(record));
  }

  /** The page next to the record of that number. */
  public static String of(InspectionRecord inspection, String number) {
    return of(inspection, number, Optional.empty());
  }

  /** The page of a record that corrects an older one. */
  public static String of(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    return folded(page(inspection, number, corrects));
  }

  private static Page page(RecordEntry record) {
    return page(record.inspection(), record.name(), record.corrects());
  }

  private static Page page(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    Page page = new Page();
    PageFrame.write(page, inspection);
    PageSheets.write(page, inspection, NO_PICTURES);
    RecordsPage.correction(page, corrects);
    PageFrame.foot(page, inspection, number);
    return page;
  }

  /** One sheet of the page; the first begins with the title. */
  public record Sheet(String boat, String heading, boolean first, List<Block> blocks) {
    /** The sheet alone, under the name of the boat, with all its details. */
    public String text() {
      Page page = new Page();
      if (!first) {
        page.title(boat);
      }
      blocks.forEach(page::with);
      return page.gap().paragraph(Disclaimer.NO_PLATE, Disclaimer.LAST_WORD).toString();
    }
  }

  private static List<Sheet> sheets(String boat, Page page) {
    List<Sheet> sheets = new ArrayList<>();
    sheets.add(new Sheet(boat, "May it be launched?", true, new ArrayList<>()));
    for (Block block : page.blocks()) {
      if (block instanceof Block.Part part) {
        sheets.add(new Sheet(boat, part.words(), false, new ArrayList<>()));
      }
      sheets.get(sheets.size() - 1).blocks().add(block);
    }
    return sheets;
  }

  /** Replaces details by a pointer to them. */
  private static String folded(Page page) {
    Page folded = new Page();
    List<Sheet> sheets = sheets("", page);
    for (int i = 0; i < sheets.size(); i++) {
      for (Block block : sheets.get(i).blocks()) {
        if (block instanceof Block.Folded details) {
          folded.point(details.summary() + ": page " + (i + 1));
        } else {
          folded.with(block);
        }
      }
    }
    return folded.toString();
  }
}
