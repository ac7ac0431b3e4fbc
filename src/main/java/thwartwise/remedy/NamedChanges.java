package thwartwise.remedy;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.remedy.Deed.FoamBlock;

/** Changes that somebody names; {@link Changes} searches those worth trying. */
public final class NamedChanges {
  /** The number of halvings with which a block is cut to the volume wanted. */
  private static final int HALVINGS = 40;

  private NamedChanges() {}

  /**
   * A piece of kit moved along the boat; empty where there is no room for it.
   *
   * @param x forward of the aft end, m
   */
  public static Optional<Change> kitMoved(BoatModel model, Kit item, double x) {
    return KitMoving.along(model, item, x);
  }

  public static Change kitLeft(Boat boat, Kit item) {
    return KitUnloading.left(boat, item);
  }

  /** These people and nobody else aboard, everyone evenly spread at the place named. */
  public static Change aboard(Boat boat, List<Person> people) {
    return CrewShifting.aboard(boat, people);
  }

  /** The volume of foam for which there is room, m³. */
  public static double foamRoom(BoatModel model, FoamSpot spot) {
    return FoamFitting.volume(model, most(model, spot));
  }

  /**
   * Foam of a volume, from the floor up.
   *
   * @param volume above zero, and no more than {@link #foamRoom}, m³
   */
  public static Change foam(BoatModel model, FoamSpot spot, double volume) {
    List<FoamBlock> blocks =
        most(model, spot).stream().map(block -> cut(model, block, volume)).toList();
    return FoamFitting.foam(model, spot.words(), spot.words(), blocks, true);
  }

  /** One block, or none. */
  private static List<FoamBlock> most(BoatModel model, FoamSpot spot) {
    FoamRoom room = new FoamRoom(model);
    if (spot instanceof FoamSpot.Under under) {
      return room.under(under.place());
    }
    return spot == FoamSpot.End.BOW ? room.bow() : room.stern();
  }

  private static FoamBlock cut(BoatModel model, FoamBlock block, double volume) {
    double low = block.box().z().from();
    double high = block.box().z().to();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (FoamFitting.volume(model, List.of(upTo(block, middle))) < volume) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return upTo(block, high);
  }

  private static FoamBlock upTo(FoamBlock block, double top) {
    Box box = block.box();
    return new FoamBlock(
        new Box(box.x(), box.y(), new Span(box.z().from(), top)), block.mirrored());
  }

  /** The place that somebody names for foam. */
  public sealed interface FoamSpot {

    /** Under a place to sit. */
    record Under(Place place) implements FoamSpot {
      @Override
      public String words() {
        return FoamFitting.under(place);
      }
    }

    /** In one of the two ends, clear of the people nearest to it. */
    enum End implements FoamSpot {
      BOW,
      STERN;

      @Override
      public String words() {
        return this == BOW ? "in the bow" : "in the stern";
      }
    }

    /** The words, such as "under the stern bench". */
    String words();
  }
}
