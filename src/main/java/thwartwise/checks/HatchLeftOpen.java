package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Equilibria;
import thwartwise.boat.Opening;
import thwartwise.boat.Space;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/** May a hatch be left open? The chamber behind it then fills when the boat is swamped. */
public record HatchLeftOpen(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<CheckReading> readings = new ArrayList<>();
    for (Opening hatch : boat.model().boat().openings()) {
      hatch
          .into()
          .filter(chamber -> hatch.closedBy().isPresent())
          .ifPresent(chamber -> readings.addAll(readings(boat, hatch, chamber)));
    }
    return readings;
  }

  private List<CheckReading> readings(LoadedBoat boat, Opening hatch, String chamber) {
    List<Space> filled = boat.counted().stream().filter(s -> s.part().isNamedBy(chamber)).toList();
    if (filled.isEmpty()) {
      return List.of();
    }
    LoadedBoat open =
        boat.after(Disturbance.moved(LoadCaseStep.of(Act.LEFT_OPEN, hatch.name()), boat.people()));
    Equilibria poses = Equilibria.of(fillings(filled).map(open::swampedRest).toList());
    return List.of(
        SwampedLift.toSpare(rules, open, asked(Measure.LIFT, hatch), filled, Note.NONE),
        SwampedLevel.outOfUpright(
                rules, asked(Measure.OUT_OF_UPRIGHT, hatch), "swamped-heel", open, poses)
            .noted(how -> how.isNone() ? how : new Note.SwampedSo(how)));
  }

  private static CheckQuestion asked(Measure measure, Opening hatch) {
    return CheckQuestion.of(CheckId.HATCH_LEFT_OPEN, measure, hatch.name());
  }

  // A hatch that names both chambers of a pair does not say which it leads into: either one alone
  // may make the boat lean.
  private static Stream<List<Space>> fillings(List<Space> filled) {
    return filled.size() == 1
        ? Stream.of(filled)
        : Stream.concat(Stream.of(filled), filled.stream().map(List::of));
  }
}
