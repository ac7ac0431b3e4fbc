package thwartwise.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import thwartwise.boat.Space;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * Swamped with chambers filled as well, how does the boat lie and what lift is left: each chamber
 * by itself, and the two largest together? Chambers that are only claimed are filled in every case.
 */
public record ChambersLost(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<Space> counted = boat.counted();
    List<CheckReading> readings = new ArrayList<>();
    counted.forEach(
        s ->
            readings.add(
                lies(
                    boat,
                    CheckQuestion.of(CheckId.CHAMBER_LOST, Measure.OUT_OF_UPRIGHT, s.name()),
                    List.of(s))));
    if (counted.size() > 1) {
      List<Space> largest = twoLargest(counted);
      Note names = new Note.TwoChambers(largest.get(0).name(), largest.get(1).name());
      readings.add(
          SwampedLift.toSpare(
              rules,
              boat,
              CheckQuestion.of(CheckId.TWO_LARGEST_CHAMBERS_LOST, Measure.LIFT),
              largest,
              names));
      readings.add(
          lies(
              boat,
              CheckQuestion.of(CheckId.TWO_LARGEST_CHAMBERS_LOST, Measure.OUT_OF_UPRIGHT),
              largest));
    }
    return readings;
  }

  private static List<Space> twoLargest(List<Space> counted) {
    Comparator<Space> byLift =
        Comparator.comparingDouble(s -> -s.counting().share() * s.solid().volume());
    return counted.stream().sorted(byLift).limit(2).toList();
  }

  private CheckReading lies(LoadedBoat boat, CheckQuestion question, List<Space> lost) {
    return SwampedLevel.outOfUpright(rules, question, "swamped-heel", boat, boat.swampedRest(lost));
  }
}
