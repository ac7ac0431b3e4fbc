package thwartwise.report;

import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;

/** What holds for every boat, whatever the figures say. */
final class CautionsSection {
  private CautionsSection() {}

  static void write(Page page, UnitFormat units) {
    page.heading("Before anybody steps in");
    page.point(
        "Never rely on this page alone",
        "It is arithmetic on what was measured; a slip of the tape is a slip in the answer");
    page.point(
        "Try it first: in warm shallow water with somebody standing by, load the boat, lean it,"
            + " then fill it and see whether it lies as told here");
    page.point(
        "Weigh people and gear",
        "A guess is most often too light; clothes, boots and water cans count");
    page.point("A life jacket that fits, on everybody and fastened, before stepping in");
    page.point(
        "Cold water takes the breath first and the strength next",
        "Below "
            + units.either("15 degrees Celsius", () -> units.temperature(15, Side.UP))
            + " dress for the water and not for the air");
    page.point(
        "Look at wind, forecast and current; with any doubt stay ashore or take fewer people");
    page.point(
        "What was not measured or not tested counts for nothing here",
        "A repair, new kit, a soaked hull or a year gone by makes this page out of date");
    page.point(
        "Local rules come first, and so does the word of a naval architect or surveyor licensed"
            + " where the boat is used");
  }
}
