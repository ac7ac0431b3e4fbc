package thwartwise.report;

import thwartwise.boat.Boat;
import thwartwise.inspection.ShallowWater;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;

/** The depth of water that the boat needs, with its motor down and tilted. */
final class ShallowWaterSection {
  private final Page page;
  private final UnitFormat units;

  private ShallowWaterSection(Page page, UnitFormat units) {
    this.page = page;
    this.units = units;
  }

  static void write(Page page, ShallowWater water, Boat boat) {
    new ShallowWaterSection(page, ReaderUnits.of(boat)).write(water, boat.aboard().isEmpty());
  }

  private void write(ShallowWater water, boolean empty) {
    page.heading("In shallow water, " + (empty ? "with nobody aboard" : "as it is loaded"));
    page.paragraph(
        "The hull itself needs " + units.height(water.down().draft(), Side.UP),
        empty ? "With people in it the boat needs more" : "");
    water.reach().ifPresent(depth -> page.paragraph(motorDown(water, depth)));
    water.tiltedReach().ifPresent(depth -> page.paragraph(motorTilted(depth)));
    water
        .moment()
        .ifPresent(
            moment ->
                page.paragraph(
                    "Tilting it takes " + units.moment(moment, Side.UP) + " aft",
                    "Down: " + FloatingPositionWords.of(water.down(), units),
                    water
                        .tilted()
                        .map(rest -> "Tilted: " + FloatingPositionWords.of(rest, units))
                        .orElse("Tilted, it comes to rest nowhere")));
    page.paragraph("Tilted, it must still turn to steer, which look asks");
  }

  private String motorDown(ShallowWater water, double depth) {
    String needs = "With the motor down it needs " + units.height(depth, Side.UP);
    return water.motorAboveBottom()
        ? needs + "; the motor lies above the bottom line, where it races in air"
        : needs;
  }

  private String motorTilted(double depth) {
    return depth > 0
        ? "Tilted, the motor still reaches " + units.height(depth, Side.UP) + " under the surface"
        : "Tilted, the motor is clear of the water";
  }
}
