package thwartwise.report;

import thwartwise.page.Drawn;
import thwartwise.page.Page;
import thwartwise.picture.Picture;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;

/** The boat in pictures, for whoever would rather look than read. */
final class PicturesSection {
  private PicturesSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Pictures pictures =
        Pictures.of(inspection.boat(), inspection.report(), inspection.date().toLocalDate());
    page.heading("In pictures");
    if (!pictures.drawn().isEmpty()) {
      page.paragraph(
          "Drawn to scale as it was measured, in still water, without the allowance for tape and"
              + " scales by which it is judged");
    }
    pictures.drawn().forEach(picture -> page.drawn(drawn(picture)));
    pictures.leftOut().forEach(missing -> page.paragraph(PictureWords.of(missing)));
  }

  private static Drawn drawn(Picture picture) {
    PictureWords words = PictureWords.of(picture.facts());
    return new Drawn(words.title(), words.alternative(), words.caption(), picture.svg());
  }
}
