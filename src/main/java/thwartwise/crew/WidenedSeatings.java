package thwartwise.crew;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thwartwise.boat.Body;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/** Seatings with several allowances, because they are not sure enough under one. */
final class WidenedSeatings {
  private static final double STEP = 1.25;

  private final CrewAssessment assessment;
  private final RuleSet rules;
  private final Map<Seating, Double> widenings;

  WidenedSeatings(CrewAssessment assessment, RuleSet rules) {
    this.assessment = assessment;
    this.rules = rules;
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
    return with(widenings);
  }

  private void refuse(Seating seating, LoadedBoat loaded) {
    while (with(widenings).meets(loaded)) {
      widen(seating);
    }
  }

  private void refuse(Seating seating, double each) {
    while (with(widenings).meetsAll(seating, each)) {
      widen(seating);
    }
  }

  private void widen(Seating seating) {
    widenings.merge(seating, STEP, (before, more) -> before * more);
  }

  private CrewAssessment with(Map<Seating, Double> wider) {
    return new CrewAssessment(assessment.model(), rules, assessment.balances(), wider);
  }
}
