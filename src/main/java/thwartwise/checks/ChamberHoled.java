package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.afloat.Lift;
import thwartwise.afloat.Pool;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.CountedBuoyancy;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Loading;
import thwartwise.boat.Space;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/**
 * May the boat be launched with an unchecked chamber? One chamber is holed and half full of water,
 * then full, with the boat afloat and the crew seated three fifths of the way to a side. Half full
 * the water runs to the low side; its surface is found again at every pose, within the chamber's
 * walls. Foam takes in no water to run about, and an open or vented space shares its water with the
 * bilge.
 */
public record ChamberHoled(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.FORBIDS_AN_ACT;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    HeelReadings heeled = new HeelReadings(rules);
    return boat.model().boat().chambers().stream()
        .map(c -> spaces(boat, c))
        .filter(spaces -> !spaces.isEmpty())
        .flatMap(
            s ->
                heeled
                    .readings(CheckId.CHAMBER_HOLED, ways(boat, s), s.get(0).chamber().name())
                    .stream())
        .toList();
  }

  private static List<Space> spaces(LoadedBoat boat, Chamber chamber) {
    return boat.model().spaces().stream()
        .filter(s -> s.chamber().equals(chamber))
        .filter(s -> mayHoldWater(s.part(), boat.model().boat()))
        .toList();
  }

  private static boolean mayHoldWater(ChamberPart chamber, Boat boat) {
    return chamber.filling() instanceof Filling.Air air
        && air.seal() != Seal.OPEN
        && CountedBuoyancy.ventedFor(chamber, boat).isEmpty();
  }

  // In a symmetric boat one chamber of a pair gives the answer for both.
  private List<LoadedBoat> ways(LoadedBoat boat, List<Space> spaces) {
    return (boat.isAlikeOnBothSides() ? spaces.subList(0, 1) : spaces)
        .stream().flatMap(s -> ways(boat, s).stream()).toList();
  }

  private List<LoadedBoat> ways(LoadedBoat boat, Space space) {
    List<LoadedBoat> ways = new ArrayList<>();
    Stream.of(halfFull(boat, space), full(boat, space))
        .forEach(
            holed -> {
              ways.add(holed);
              ways.addAll(
                  PeopleMoves.everyone(
                      holed, rules.value("offset-share"), Act.EVERYONE_PART_OF_THE_WAY));
            });
    return ways;
  }

  static LoadedBoat halfFull(LoadedBoat boat, Space space) {
    Pool water = new Pool(List.of(new Lift(space.solid(), 1)), space.solid().volume() / 2);
    return boat.after(
        Disturbance.holed(LoadCaseStep.of(Act.HALF_FULL, space.name()), boat.people(), water));
  }

  /** Water that fills a chamber cannot run, so it is a weight. */
  private static LoadedBoat full(LoadedBoat boat, Space space) {
    double mass = boat.model().waterDensity() * space.solid().volume();
    Loading.Weight water = new Loading.Weight(mass, space.solid().centroid());
    return boat.after(
        Disturbance.weighed(
            LoadCaseStep.of(Act.FULL, space.name()), boat.people(), List.of(water)));
  }
}
