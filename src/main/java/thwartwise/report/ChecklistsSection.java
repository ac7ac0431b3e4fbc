package thwartwise.report;

import thwartwise.boat.Boat;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.ChecklistPoint;
import thwartwise.files.rules.ChecklistFile;
import thwartwise.page.Page;

/** What no arithmetic sees: to be looked at by hand and eye, and ticked with a pen. */
final class ChecklistsSection {
  private ChecklistsSection() {}

  static void write(Page page, Boat boat) {
    page.sheet("To look at by hand and eye");
    page.paragraph("Nothing here was looked at for this inspection", "An empty box is a no");
    for (Checklist list : ChecklistFile.shipped()) {
      Page points = new Page();
      for (ChecklistPoint point : list.askedOf(boat)) {
        points.ticked(point.of(boat), point.why());
      }
      page.folded(
          list.name() + " (" + list.when() + ")", points.paragraph("Source: " + list.source()));
    }
  }
}
