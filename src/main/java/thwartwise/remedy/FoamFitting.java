package thwartwise.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed.FoamBlock;

/**
 * Closed-cell foam where it fits: under the seats, along the sides and in the ends. Its own weight
 * counts as kit.
 */
final class FoamFitting {
  /** Closed-cell foam with its glue and straps, kg/m³ (judgement). */
  private static final double DENSITY = 40;

  /** A smaller volume is not worth cutting, m³. */
  private static final double LEAST = 0.005;

  /** High or from the floor up, it takes the same room. */
  private static final String SIDES = "along both sides";

  private FoamFitting() {}

  static List<Change> of(BoatModel model) {
    FoamRoom room = new FoamRoom(model);
    List<Change> changes = new ArrayList<>();
    model.boat().places().forEach(p -> add(model, under(p), under(p), room.under(p), changes));
    add(model, "in the bow", "in the bow", room.bow(), changes);
    add(model, "in the stern", "in the stern", room.stern(), changes);
    add(model, SIDES, "high along both sides, just under the rail", room.highSides(), changes);
    add(
        model,
        SIDES,
        "along both sides, from the floor to just under the rail",
        room.sides(),
        changes);
    return changes;
  }

  static String under(Place place) {
    return "under the " + place.name();
  }

  private static void add(
      BoatModel model, String room, String where, List<FoamBlock> blocks, List<Change> changes) {
    if (volume(model, blocks) >= LEAST) {
      changes.add(foam(model, room, where, blocks, false));
    }
  }

  /** The volume of these blocks, m³. */
  static double volume(BoatModel model, List<FoamBlock> blocks) {
    return blocks.stream().flatMap(b -> solids(model, b)).mapToDouble(Solid::volume).sum();
  }

  /** The boat with these blocks in it, which are not empty. */
  static Change foam(
      BoatModel model, String room, String where, List<FoamBlock> blocks, boolean cut) {
    List<Solid> solids = blocks.stream().flatMap(b -> solids(model, b)).toList();
    double volume = volume(model, blocks);
    Boat boat = model.boat();
    List<Chamber> chambers = new ArrayList<>(boat.chambers());
    blocks.forEach(b -> chambers.add(chamber(name(where, blocks, b), b)));
    List<Kit> kit = new ArrayList<>(boat.kit());
    kit.add(weight("weight of the foam " + where, solids, volume));
    return Change.of(
        "foam " + room,
        new Deed.AddFoam(volume, where, blocks, cut),
        Effort.AN_AFTERNOON,
        boat.withChambers(chambers).withKit(kit));
  }

  private static Stream<Solid> solids(BoatModel model, FoamBlock block) {
    Solid one = model.form().inside().within(block.box());
    return block.mirrored()
        ? Stream.of(one, model.form().inside().within(block.box().mirrored()))
        : Stream.of(one);
  }

  private static String name(String where, List<FoamBlock> blocks, FoamBlock block) {
    String number = blocks.size() > 1 ? ", block " + (blocks.indexOf(block) + 1) : "";
    return "foam " + where + number;
  }

  private static Chamber chamber(String name, FoamBlock block) {
    return new Chamber(
        name, block.box(), new Filling.Foam(true, true), Optional.empty(), block.mirrored(), true);
  }

  private static Kit weight(String name, List<Solid> solids, double volume) {
    Vector3 moment =
        solids.stream()
            .map(s -> s.centroid().times(s.volume()))
            .reduce(Vector3.ZERO, Vector3::plus);
    Vector3 centre = moment.times(1 / volume);
    Vector3 middle = Math.abs(centre.y()) < 1e-6 ? Vector3.of(centre.x(), 0, centre.z()) : centre;
    return new Kit(name, DENSITY * volume, middle, Optional.empty(), true, Optional.empty());
  }
}
