package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Lift;
import thwartwise.afloat.Pool;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Filling;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Seal;
import thwartwise.boat.Space;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/**
 * May the boat be launched without a look into each chamber? Afloat, with one chamber holed and
 * half full of water, then full, the crew seated and three fifths of the way to a side. Half full
 * the water runs to the low side; its surface is found anew at every pose, within the chamber's
 * walls. Foam takes in no water to run about, and an open or vented space shares its water with the
 * bilge.
 */
public record ChamberHoled(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<Reading> readings(LoadedBoat trial) {
    HeelReadings heeled = new HeelReadings(rules);
    return trial.craft().boat().chambers().stream()
        .map(c -> spaces(trial, c))
        .filter(spaces -> !spaces.isEmpty())
        .flatMap(
            s ->
                heeled
                    .readings(CheckId.CHAMBER_HOLED, ways(trial, s), s.get(0).chamber().name())
                    .stream())
        .toList();
  }

  private static List<Space> spaces(LoadedBoat trial, Chamber chamber) {
    return trial.craft().spaces().stream()
        .filter(s -> s.chamber().equals(chamber))
        .filter(s -> mayHoldWater(s.part(), trial.craft().boat().kit()))
        .toList();
  }

  private static boolean mayHoldWater(ChamberPart chamber, List<Kit> kit) {
    return chamber.filling() instanceof Filling.Air air
        && air.seal() != Seal.OPEN
        && CountedBuoyancy.ventedFor(chamber, kit).isEmpty();
  }

  // Of a pair in a boat that is alike on both sides, one tells all.
  private List<LoadedBoat> ways(LoadedBoat trial, List<Space> spaces) {
    return (trial.isAlikeOnBothSides() ? spaces.subList(0, 1) : spaces)
        .stream().flatMap(s -> ways(trial, s).stream()).toList();
  }

  private List<LoadedBoat> ways(LoadedBoat trial, Space space) {
    List<LoadedBoat> ways = new ArrayList<>();
    Stream.of(halfFull(trial, space), full(trial, space))
        .forEach(
            holed -> {
              ways.add(holed);
              ways.addAll(
                  PeopleMoves.everyone(
                      holed, rules.value("offset-share"), Act.EVERYONE_PART_OF_THE_WAY));
            });
    return ways;
  }

  static LoadedBoat halfFull(LoadedBoat trial, Space space) {
    Pool water = new Pool(List.of(new Lift(space.solid(), 1)), space.solid().volume() / 2);
    return trial.after(
        Disturbance.holed(LoadCaseStep.of(Act.HALF_FULL, space.name()), trial.people(), water));
  }

  /** Water that fills a chamber cannot run: it is a weight. */
  private static LoadedBoat full(LoadedBoat trial, Space space) {
    double mass = trial.craft().waterDensity() * space.solid().volume();
    Loading.Weight water = new Loading.Weight(mass, space.solid().centroid());
    return trial.after(
        Disturbance.weighed(
            LoadCaseStep.of(Act.FULL, space.name()), trial.people(), List.of(water)));
  }
}
