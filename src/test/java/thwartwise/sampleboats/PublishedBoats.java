package thwartwise.sampleboats;

import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.geometry.Reference;
import thwartwise.hull.Material;

/**
 * Flat-bottomed boats drawn from published principal dimensions. The lines between those dimensions
 * are ours: how fast breadth and bottom taper to the ends of such boats is judgement.
 */
public final class PublishedBoats {
  /** How far out the chine stands when the rail stands at 1. */
  private static final double FLARE = 0.82;

  /** Of the overhang of both ends, what lies forward. */
  private static final double BOW_SHARE = 0.7;

  private PublishedBoats() {}

  public static Stream<Boat> all() {
    return Reference.of("persons-carried").map(PublishedBoats::of);
  }

  /** The boat of one row of the reference file. */
  public static Boat of(Reference row) {
    BoatBuilder boat =
        new BoatBuilder(
            row.id() + ", " + row.what(), row.in("mass"), Material.PLYWOOD, 0.006, 0.03);
    if (row.in("square", 0) > 0) {
      squareEnded(boat, row);
    } else {
      sharp(boat, row);
    }
    double l = row.in("L");
    double seat = 0.27;
    boat.tank("bow box", 0.80 * l, BoatBuilder.TO_THE_STEM, 0.36)
        .tank("stern box", BoatBuilder.TO_THE_STERN, 0.15 * l, 0.30);
    boat.tank("middle thwart", 0.43 * l, 0.43 * l + 0.28, seat);
    boat.place("middle thwart", 0.43 * l + 0.14, seat, 0.30 * row.in("B"), 2)
        .place("stern seat", 0.10 * l, 0.31, 0.24 * row.in("B"), 2)
        .place("bow seat", 0.74 * l, 0.31, 0.16 * row.in("B"), 1)
        .kit("oars", 4, 0.45 * l, 0.40, 5);
    if (row.in("motor") > 0) {
      boat.kit("motor", row.in("motor"), -0.05, 0.45, 5).outboard(4000);
    }
    return boat.build();
  }

  private static void sharp(BoatBuilder boat, Reference row) {
    double aft = (1 - BOW_SHARE) * (row.in("L") - row.in("LWL"));
    section(boat, row, "transom", 0, aft, 0.78, 0.6);
    section(boat, row, "aft", 0.25, 0, 0.95, 0.12);
    section(boat, row, "middle", 0.5, 0, 1, 0);
    section(boat, row, "forward", 0.72, 0, 0.82, 0.14);
    section(boat, row, "bow", 0.88, 0, 0.44, 0.55);
    section(boat, row, "stem", 1, BOW_SHARE * (row.in("L") - row.in("LWL")), 0.05, 1);
  }

  private static void squareEnded(BoatBuilder boat, Reference row) {
    double each = (row.in("L") - row.in("LWL")) / 2;
    section(boat, row, "stern", 0, each, 0.80, 1);
    section(boat, row, "aft", 0.25, 0, 0.97, 0.12);
    section(boat, row, "middle", 0.5, 0, 1, 0);
    section(boat, row, "forward", 0.75, 0, 0.94, 0.15);
    section(boat, row, "bow", 1, each, 0.72, 1.2);
  }

  /**
   * @param along where the rail stands, share of the length
   * @param rake how far the bottom stands in from the rail at an end, m
   * @param breadth share of the greatest
   * @param rise of the bottom, share of the draught
   */
  private static void section(
      BoatBuilder boat,
      Reference row,
      String title,
      double along,
      double rake,
      double breadth,
      double rise) {
    double x = along * row.in("L");
    double half = breadth * row.in("B") / 2;
    double keel = along < 0.5 ? x + rake : x - rake;
    boat.flat(
        title,
        keel,
        millimetre(x),
        millimetre(FLARE * half),
        millimetre(rise * row.in("T")),
        millimetre(half),
        rail(row, along));
  }

  /** The sheer is a parabola through each end's freeboard, lowest a little aft of the middle. */
  private static double rail(Reference row, double along) {
    double low = 0.4;
    double end = along < low ? row.in("stern") : row.in("bow");
    double share = along < low ? (low - along) / low : (along - low) / (1 - low);
    double freeboard = row.in("least") + (end - row.in("least")) * share * share;
    return millimetre(row.in("T") + freeboard);
  }

  private static double millimetre(double metres) {
    return Math.rint(1000 * metres) / 1000;
  }
}
