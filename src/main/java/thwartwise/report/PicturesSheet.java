package thwartwise.report;

import java.time.LocalDate;
import java.util.List;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Block.Illustration;
import thwartwise.page.Page;
import thwartwise.picture.Picture;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;

/** The boat in pictures, for a reader who would rather look than read. */
final class PicturesSheet {
  private PicturesSheet() {}

  /** The pictures of an inspection, with the effect of its first piece of advice. */
  static Pictures of(InspectionRecord inspection) {
    LocalDate day = inspection.date().toLocalDate();
    Pictures all = Pictures.of(inspection.boat(), inspection.report(), day);
    return AdviceSection.first(inspection.report().advice()).stream()
        .filter(piece -> piece.moved().isPresent())
        .findFirst()
        .map(p -> all.with(inspection.boat(), p.deed(), p.moved().get().crew(), day))
        .orElse(all);
  }

  /** The effect of the first piece of advice. */
  static void change(Page page, Pictures pictures, UnitFormat units) {
    pictures.change().ifPresent(picture -> page.drawn(drawn(picture, units)));
  }

  /** The plan, which belongs to what is read at a glance. */
  static void fromAbove(Page page, Pictures pictures, UnitFormat units) {
    pictures.drawn().stream().limit(1).forEach(picture -> page.drawn(drawn(picture, units)));
  }

  static void write(Page page, Pictures pictures, UnitFormat units) {
    page.sheet("In pictures");
    List<Picture> others = pictures.drawn().stream().skip(1).toList();
    if (others.isEmpty() && pictures.omitted().isEmpty()) {
      page.paragraph("The HTML page and the PDF have pictures; show draws the boat in characters");
      return;
    }
    page.paragraph(
        "Drawn to scale as it was measured, in still water, without the allowance for tape and"
            + " scales by which it is judged");
    others.forEach(picture -> page.drawn(drawn(picture, units)));
    pictures.omitted().forEach(missing -> page.paragraph(PictureWords.of(missing)));
  }

  private static Illustration drawn(Picture picture, UnitFormat units) {
    PictureWords words = PictureWords.of(picture.facts(), units);
    return new Illustration(words.title(), words.alternative(), words.caption(), picture.svg());
  }
}
