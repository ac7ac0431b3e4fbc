package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.page.Block;
import thwartwise.page.Page;
import thwartwise.record.Correction;
import thwartwise.record.InspectionRecord;
import thwartwise.record.KeptRecord;

/**
 * The page a person prints: plain text, at most 80 columns, in the order people ask. May it be
 * launched, how much and how many, where do they sit, what does nobody do; then why; then what it
 * all rests on.
 */
public final class TextPage {
  private TextPage() {}

  /** The page of an inspection that is not kept. */
  public static String of(InspectionRecord inspection) {
    Page page = new Page();
    HeadSection.write(page, inspection);
    Story.write(page, inspection);
    FootSection.write(page, inspection);
    return page.toString();
  }

  /** What the sections of the page are called, in their order. */
  public static List<String> headings(KeptRecord record) {
    return sections(record).stream().map(Section::heading).toList();
  }

  /**
   * One section of the page by itself, under the name of the boat.
   *
   * @param number from one
   */
  public static String section(KeptRecord record, int number) {
    Page page = new Page().title(record.inspection().boat().name());
    sections(record).get(number - 1).blocks().forEach(page::with);
    return page.gap().paragraph(Deferral.NO_PLATE, Deferral.LAST_WORD).toString();
  }

  /** The page of a record that is kept. */
  public static String of(KeptRecord record) {
    return page(record.inspection(), record.name(), record.corrects()).toString();
  }

  private record Section(String heading, List<Block> blocks) {}

  private static List<Section> sections(KeptRecord record) {
    List<Section> sections = new ArrayList<>();
    for (Block block : page(record.inspection(), record.name(), record.corrects()).blocks()) {
      if (block instanceof Block.Heading heading) {
        sections.add(new Section(heading.words(), new ArrayList<>()));
      }
      if (!sections.isEmpty()) {
        sections.get(sections.size() - 1).blocks().add(block);
      }
    }
    return sections;
  }

  /** The page that lies beside the record of that number. */
  public static String of(InspectionRecord inspection, String number) {
    return of(inspection, number, Optional.empty());
  }

  /** The same of a record that corrects an older one. */
  public static String of(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    return page(inspection, number, corrects).toString();
  }

  private static Page page(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    Page page = new Page();
    HeadSection.write(page, inspection);
    Story.write(page, inspection);
    RecordsPage.correction(page, corrects);
    FootSection.write(page, inspection, number);
    return page;
  }
}
