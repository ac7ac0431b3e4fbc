package thwartwise.crew;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thwartwise.boat.Body;
import thwartwise.loadcase.LoadedBoat;

/** Seatings with several allowances, because they are not sure enough under one. */
public final class WidenedSeatings {
  /**
   * Rounds in which only seatings that were judged are refused; after them all of their number are.
   */
  public static final int BY_SEATING = 5;

  /** Between two numbers of allowances that are tried. */
  static final double STEP = 1.25;

  private final CrewAssessment assessment;
  private final Map<Seating, Double> widenings;

  WidenedSeatings(CrewAssessment assessment) {
    this.assessment = assessment;
    this.widenings = new HashMap<>(assessment.widenings());
  }

  /**
   * The assessment that refuses these loaded boats.
   *
   * @param allOfTheirNumber whether every seating of as many people of their mean mass is refused,
   *     too
   */
  CrewAssessment refusing(List<LoadedBoat> refused, boolean allOfTheirNumber) {
    for (LoadedBoat loaded : refused) {
      refuse(assessment.seating(loaded), loaded);
      if (allOfTheirNumber) {
        double each = loaded.people().stream().mapToDouble(Body::mass).average().orElse(0);
        Seating.of(loaded.people().size(), assessment.model().boat().places())
            .forEach(seating -> refuse(seating, each));
      }
    }
    return assessment.widened(widenings);
  }

  private void refuse(Seating seating, LoadedBoat loaded) {
    while (assessment.widened(widenings).meets(loaded)) {
      widen(seating);
    }
  }

  private void refuse(Seating seating, double each) {
    while (assessment.widened(widenings).meetsAll(seating, each)) {
      widen(seating);
    }
  }

  private void widen(Seating seating) {
    widenings.merge(seating, STEP, (before, more) -> before * more);
  }
}
