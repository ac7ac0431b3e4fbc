package thwartwise.sampleboats;

import thwartwise.boat.Boat;
import thwartwise.hull.Material;

/** Boats of sheet stuff: flat or V bottoms, straight sides. */
final class FlatBottomedBoats {
  private FlatBottomedBoats() {}

  static Boat pram() {
    return new BoatBuilder("8 ft pram", 34, Material.PLYWOOD, 0.006, 0.03)
        .flat("stern transom", 0.05, 0.0, 0.41, 0.11, 0.52, 0.45)
        .flat("aft", 0.60, 0.60, 0.50, 0.02, 0.61, 0.43)
        .flat("middle", 1.20, 1.20, 0.52, 0.0, 0.63, 0.42)
        .flat("forward", 1.80, 1.80, 0.45, 0.05, 0.56, 0.44)
        .flat("bow transom", 2.30, 2.44, 0.30, 0.20, 0.40, 0.49)
        .tank("bow box", 1.88, BoatBuilder.TO_THE_STEM, 0.34)
        .tank("stern box", BoatBuilder.TO_THE_STERN, 0.46, 0.30)
        .tank("middle thwart", 1.02, 1.30, 0.26)
        .place("middle thwart", 1.16, 0.26, 0.40, 1)
        .place("stern seat", 0.28, 0.30, 0.32, 1)
        .kit("oars", 3.0, 1.2, 0.40, 4)
        .kit("anchor and line", 3.5, 1.85, 0.08, 0)
        .build();
  }

  static Boat sideTankDinghy() {
    return new BoatBuilder("11 ft dinghy with side tanks", 68, Material.PLYWOOD, 0.006, 0.03)
        .station("transom", 0.06, 0.0, 0, 0.10, 0.46, 0.16, 0.60, 0.50)
        .station("aft", 0.70, 0.70, 0, 0.03, 0.54, 0.11, 0.69, 0.49)
        .station("middle", 1.50, 1.50, 0, 0.0, 0.56, 0.09, 0.73, 0.48)
        .station("forward", 2.30, 2.30, 0, 0.03, 0.42, 0.14, 0.61, 0.52)
        .station("bow", 2.90, 2.90, 0, 0.11, 0.21, 0.22, 0.38, 0.57)
        .station("stem", 3.22, 3.36, 0, 0.26, 0.02, 0.34, 0.03, 0.62)
        .sideTanks("side bench", 0.35, 2.10, 0.42, 0.28)
        .tank("bow box", 2.62, BoatBuilder.TO_THE_STEM, 0.40)
        .tank("stern box", BoatBuilder.TO_THE_STERN, 0.33, 0.30)
        .place("middle thwart", 1.45, 0.28, 0.42, 2)
        .place("stern seat", 0.25, 0.31, 0.34, 1)
        .kit("oars", 4.0, 1.5, 0.45, 5)
        .kit("anchor and line", 4.0, 2.5, 0.12, 0)
        .build();
  }

  static Boat jon() {
    return new BoatBuilder("12 ft jon", 62, Material.ALUMINIUM, 0.002, 0.02)
        .flat("stern", 0.04, 0.0, 0.54, 0.03, 0.66, 0.47)
        .flat("aft", 0.90, 0.90, 0.56, 0.0, 0.69, 0.46)
        .flat("middle", 1.85, 1.85, 0.56, 0.0, 0.70, 0.46)
        .flat("forward", 2.80, 2.80, 0.54, 0.06, 0.68, 0.48)
        .flat("bow", 3.45, 3.66, 0.46, 0.22, 0.60, 0.54)
        .sideFoam("side foam", 0.60, 2.90, 0.46, 0.10, 0.36)
        .foam("foam in the stern seat", 0.05, 0.45, 0.06, 0.28)
        .foam("foam in the bow seat", 2.95, 3.40, 0.14, 0.36)
        .place("stern seat", 0.25, 0.29, 0.38, 1)
        .place("middle seat", 1.75, 0.29, 0.38, 2)
        .place("bow seat", 2.95, 0.36, 0.33, 1)
        .kit("oars", 4.0, 1.8, 0.40, 5)
        .kit("anchor and line", 5.0, 2.7, 0.10, 0)
        .build();
  }

  static Boat punt() {
    return new BoatBuilder("13 ft punt", 98, Material.PLYWOOD, 0.009, 0.03)
        .flat("stern", 0.10, 0.0, 0.60, 0.16, 0.68, 0.50)
        .flat("aft", 0.80, 0.80, 0.68, 0.01, 0.76, 0.48)
        .flat("middle", 1.95, 1.95, 0.69, 0.0, 0.77, 0.47)
        .flat("forward", 3.10, 3.10, 0.66, 0.02, 0.74, 0.48)
        .flat("bow", 3.84, 3.98, 0.52, 0.19, 0.60, 0.52)
        .tank("bow box", 3.35, BoatBuilder.TO_THE_STEM, 0.34)
        .tank("stern box", BoatBuilder.TO_THE_STERN, 0.55, 0.32)
        .tank("middle thwart", 1.78, 2.10, 0.28)
        .place("middle thwart", 1.94, 0.28, 0.50, 2)
        .place("stern seat", 0.38, 0.33, 0.45, 2)
        .place("bow seat", 3.40, 0.35, 0.42, 1)
        .kit("oars", 4.0, 1.9, 0.40, 5)
        .kit("pole", 3.5, 1.9, 0.48, 5)
        .kit("anchor and line", 4.5, 3.2, 0.08, 0)
        .build();
  }

  static Boat skiff() {
    return new BoatBuilder("14 ft skiff", 102, Material.PLYWOOD, 0.009, 0.04)
        .station("transom", 0.08, 0.0, 0, 0.08, 0.52, 0.12, 0.66, 0.52)
        .station("aft", 0.85, 0.85, 0, 0.02, 0.60, 0.07, 0.75, 0.51)
        .station("middle", 1.80, 1.80, 0, 0.0, 0.62, 0.06, 0.79, 0.51)
        .station("forward", 2.75, 2.75, 0, 0.02, 0.50, 0.11, 0.70, 0.55)
        .station("bow", 3.60, 3.60, 0, 0.09, 0.25, 0.21, 0.42, 0.62)
        .station("stem", 4.12, 4.27, 0, 0.28, 0.02, 0.36, 0.03, 0.69)
        .tank("bow box", 3.20, BoatBuilder.TO_THE_STEM, 0.42)
        .tank("stern box", BoatBuilder.TO_THE_STERN, 0.50, 0.34)
        .tank("middle thwart", 1.70, 2.00, 0.29)
        .place("middle thwart", 1.85, 0.29, 0.50, 2)
        .place("stern seat", 0.35, 0.35, 0.40, 2)
        .place("bow seat", 3.05, 0.36, 0.30, 1)
        .kit("oars", 5.0, 1.9, 0.50, 6)
        .kit("anchor and line", 5.0, 3.1, 0.10, 0)
        .kit("water can", 5.2, 1.2, 0.15, 6)
        .build();
  }

  static Boat flatWithSealedSeats() {
    return new BoatBuilder("16 ft flat with sealed seats", 128, Material.PLYWOOD, 0.009, 0.03)
        .flat("transom", 0.08, 0.0, 0.60, 0.06, 0.72, 0.52)
        .flat("aft", 0.95, 0.95, 0.66, 0.01, 0.79, 0.50)
        .flat("middle", 2.05, 2.05, 0.67, 0.0, 0.81, 0.50)
        .flat("forward", 3.10, 3.10, 0.56, 0.03, 0.73, 0.54)
        .flat("bow", 4.05, 4.05, 0.30, 0.12, 0.46, 0.62)
        .flat("stem", 4.70, 4.88, 0.02, 0.30, 0.03, 0.70)
        .tank("bow seat", 3.65, BoatBuilder.TO_THE_STEM, 0.40)
        .tank("forward thwart", 2.75, 3.05, 0.29)
        .tank("aft thwart", 1.45, 1.80, 0.29)
        .tank("stern seat", BoatBuilder.TO_THE_STERN, 0.50, 0.33)
        .place("forward thwart", 2.90, 0.29, 0.45, 2)
        .place("aft thwart", 1.62, 0.29, 0.52, 2)
        .place("stern seat", 0.32, 0.34, 0.42, 2)
        .kit("oars", 5.0, 2.0, 0.48, 6)
        .kit("anchor and line", 6.0, 3.4, 0.12, 0)
        .build();
  }

  static Boat dory() {
    return new BoatBuilder("17 ft dory", 112, Material.PLYWOOD, 0.009, 0.04)
        .flat("transom", 0.34, 0.0, 0.10, 0.22, 0.28, 0.74)
        .flat("quarter", 1.15, 1.10, 0.30, 0.07, 0.61, 0.60)
        .flat("aft of middle", 1.95, 1.95, 0.40, 0.01, 0.75, 0.55)
        .flat("middle", 2.75, 2.75, 0.42, 0.0, 0.78, 0.54)
        .flat("shoulder", 3.60, 3.60, 0.34, 0.04, 0.68, 0.58)
        .flat("bow", 4.35, 4.40, 0.18, 0.13, 0.45, 0.68)
        .flat("stem", 4.82, 5.20, 0.02, 0.26, 0.04, 0.86)
        .tank("bow box", 4.05, BoatBuilder.TO_THE_STEM, 0.50)
        .tank("stern box", BoatBuilder.TO_THE_STERN, 1.00, 0.46)
        .sideFoam("side foam", 1.70, 3.60, 0.44, 0.22, 0.48)
        .place("middle thwart", 2.65, 0.26, 0.34, 1)
        .place("aft thwart", 1.60, 0.28, 0.30, 1)
        .place("fore thwart", 3.55, 0.30, 0.26, 1)
        .kit("oars", 5.0, 2.6, 0.50, 6)
        .kit("anchor and line", 6.0, 3.95, 0.16, 0)
        .build();
  }
}
