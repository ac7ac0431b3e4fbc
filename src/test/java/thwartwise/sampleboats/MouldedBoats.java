package thwartwise.sampleboats;

import thwartwise.boat.Boat;
import thwartwise.hull.Material;

/** Boats with round bilges or out of a mould. */
final class MouldedBoats {
  private MouldedBoats() {}

  static Boat roundDinghy() {
    return new BoatBuilder("10 ft round dinghy", 62, Material.GRP, 0.004, 0.04)
        .round("transom", 0.08, 0.0, 0.54, 0.10, 0.50)
        .round("aft", 0.60, 0.60, 0.66, 0.03, 0.48)
        .round("middle", 1.30, 1.30, 0.71, 0.0, 0.48)
        .round("forward", 2.00, 2.00, 0.63, 0.02, 0.51)
        .round("bow", 2.60, 2.60, 0.38, 0.09, 0.56)
        .round("stem", 2.92, 3.05, 0.03, 0.24, 0.60)
        .tank("bow box", 2.30, BoatBuilder.TO_THE_STEM, 0.40)
        .tank("stern seat", BoatBuilder.TO_THE_STERN, 0.48, 0.31)
        .tank("middle thwart", 1.18, 1.46, 0.29)
        .place("middle thwart", 1.32, 0.29, 0.45, 2)
        .place("stern seat", 0.30, 0.32, 0.36, 1)
        .place("bow seat", 2.20, 0.34, 0.26, 1)
        .kit("oars", 4.0, 1.4, 0.45, 5)
        .kit("anchor and line", 4.0, 2.2, 0.12, 0)
        .build();
  }

  static Boat pullingBoat() {
    return new BoatBuilder("14 ft pulling boat", 88, Material.SOFTWOOD, 0.010, 0.05)
        .round("transom", 0.10, 0.0, 0.40, 0.14, 0.56)
        .round("quarter", 0.65, 0.65, 0.52, 0.05, 0.51)
        .round("aft", 1.35, 1.35, 0.61, 0.01, 0.48)
        .round("middle", 2.10, 2.10, 0.64, 0.0, 0.47)
        .round("forward", 2.85, 2.85, 0.57, 0.01, 0.49)
        .round("bow", 3.60, 3.60, 0.35, 0.05, 0.55)
        .round("stem", 4.15, 4.27, 0.03, 0.16, 0.63)
        .tank("bow box", 3.45, BoatBuilder.TO_THE_STEM, 0.38)
        .tank("stern seat", BoatBuilder.TO_THE_STERN, 0.75, 0.34)
        .tank("middle thwart", 1.95, 2.20, 0.29)
        .place("middle thwart", 2.07, 0.29, 0.36, 1)
        .place("fore thwart", 3.00, 0.30, 0.28, 1)
        .place("stern seat", 0.50, 0.35, 0.30, 1)
        .kit("two pairs of oars", 8.0, 2.2, 0.45, 10)
        .kit("anchor and line", 4.0, 3.35, 0.12, 0)
        .build();
  }

  static Boat deepV() {
    return new BoatBuilder("15 ft deep V", 195, Material.GRP, 0.005, 0.14)
        .station("transom", 0.06, 0.0, 0, 0.0, 0.40, 0.11, 0.76, 0.21, 0.88, 0.66)
        .station("aft", 1.00, 1.00, 0, 0.0, 0.42, 0.13, 0.80, 0.24, 0.93, 0.67)
        .station("middle", 2.00, 2.00, 0, 0.0, 0.40, 0.16, 0.78, 0.28, 0.93, 0.70)
        .station("forward", 2.95, 2.95, 0, 0.05, 0.32, 0.23, 0.65, 0.36, 0.85, 0.75)
        .station("bow", 3.75, 3.80, 0, 0.18, 0.18, 0.35, 0.39, 0.48, 0.60, 0.81)
        .station("stem", 4.32, 4.57, 0, 0.42, 0.02, 0.52, 0.03, 0.62, 0.05, 0.86)
        .foam("foam under the floor", 0.40, 3.40, 0.0, 0.12)
        .sideFoam("side foam", 0.50, 3.20, 0.66, 0.28, 0.58)
        .tank("bow locker", 3.50, BoatBuilder.TO_THE_STEM, 0.60)
        .place("stern bench", 0.70, 0.42, 0.50, 2)
        .place("middle bench", 1.85, 0.42, 0.50, 2)
        .place("bow bench", 3.00, 0.48, 0.35, 1)
        .kit("motor", 38, -0.10, 0.62, 12)
        .kit("fuel can", 12, 0.30, 0.25, 14)
        .kit("battery", 15, 0.35, 0.24, 8)
        .kit("anchor and line", 8, 3.35, 0.30, 0)
        .outboard(7500)
        .build();
  }

  static Boat canoe() {
    return new BoatBuilder("16 ft canoe", 31, Material.SOFTWOOD, 0.006, 0.02)
        .round("stern", 0.12, 0.0, 0.015, 0.08, 0.54)
        .round("aft quarter", 0.80, 0.80, 0.22, 0.02, 0.40)
        .round("aft", 1.60, 1.60, 0.40, 0.0, 0.34)
        .round("middle", 2.44, 2.44, 0.45, 0.0, 0.33)
        .round("forward", 3.28, 3.28, 0.40, 0.0, 0.34)
        .round("fore quarter", 4.08, 4.08, 0.22, 0.02, 0.40)
        .round("bow", 4.76, 4.88, 0.015, 0.08, 0.54)
        .tank("stern tank", BoatBuilder.TO_THE_STERN, 0.75, BoatBuilder.TO_THE_RAIL)
        .tank("bow tank", 4.13, BoatBuilder.TO_THE_STEM, BoatBuilder.TO_THE_RAIL)
        .place("stern thwart", 1.35, 0.20, 0.15, 1)
        .place("bow thwart", 3.40, 0.20, 0.15, 1)
        .kit("paddles", 2.0, 2.4, 0.10, 3)
        .build();
  }
}
