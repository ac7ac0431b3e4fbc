package thwartwise.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Chamber.Twin;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.boat.Space;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.remedy.Change.Effort;

/**
 * A seat one or two steps lower. A chamber that is the seat is lowered with it and loses volume; if
 * it was proven it must be tested again.
 */
final class SeatLowering {
  private static final List<Double> STEPS = List.of(0.05, 0.10);

  /** A chamber whose top is this near the seat carries it, m. */
  private static final double CARRIES = 0.03;

  /** A seat lower than this above the floor is no seat, m. */
  private static final double LEAST_HEIGHT = 0.10;

  /** The distance from the middle of a seat to its edge, along the boat, m. */
  private static final double HALF_SEAT = 0.14;

  private SeatLowering() {}

  static List<Change> of(BoatModel model, LocalDate today) {
    List<Change> changes = new ArrayList<>();
    for (Place place : model.boat().places()) {
      for (double step : STEPS) {
        if (fits(model.boat(), place, step)) {
          changes.add(lowered(model, place, step, today));
        }
      }
    }
    return changes;
  }

  private static boolean fits(Boat boat, Place place, double step) {
    double seat = place.z() - step;
    Box under = below(place, new Span(boat.hull().floor(), place.z()));
    return seat >= boat.hull().floor() + LEAST_HEIGHT
        && boat.chambers().stream()
            .filter(c -> c.box().overlaps(under) || c.mirrored() && overlapsTwin(c, under))
            .allMatch(c -> carries(c, place) || c.box().z().to() <= seat)
        && boat.kit().stream().noneMatch(k -> inTheWay(k, below(place, new Span(seat, place.z()))));
  }

  private static boolean overlapsTwin(Chamber chamber, Box box) {
    return chamber.box().mirrored().overlaps(box);
  }

  private static boolean inTheWay(Kit kit, Box box) {
    return KitMoving.meets(kit, box);
  }

  private static Box below(Place place, Span height) {
    return new Box(
        new Span(place.along().from() - HALF_SEAT, place.along().to() + HALF_SEAT),
        place.across(),
        height);
  }

  private static boolean carries(Chamber chamber, Place place) {
    return chamber.box().x().contains(place.x())
        && isOnTheSide(chamber, place)
        && Math.abs(chamber.box().z().to() - place.z()) <= CARRIES;
  }

  /**
   * Whether it is on the seat's side: a chamber along one side carries no bench along the other,
   * unless it has a twin.
   */
  private static boolean isOnTheSide(Chamber chamber, Place place) {
    Span across = chamber.box().y();
    return !place.isToOneSide()
        || across.overlaps(place.across())
        || chamber.mirrored() && across.mirrored().overlaps(place.across());
  }

  private static Change lowered(BoatModel model, Place place, double step, LocalDate today) {
    Boat boat = model.boat();
    List<Chamber> carrying = boat.chambers().stream().filter(c -> carries(c, place)).toList();
    List<Chamber> chambers =
        boat.chambers().stream()
            .map(c -> carrying.contains(c) ? lower(model, c, step, today) : c)
            .toList();
    List<Place> places =
        boat.places().stream()
            .map(p -> p == place || onTheSame(carrying, p) ? lower(p, step) : p)
            .toList();
    return Change.of(
        "lower the " + place.name(),
        new Deed.LowerSeat(
            place.name(), step, place.z() - step, carrying.stream().map(Chamber::name).toList()),
        Effort.A_WEEKEND,
        boat.withPlaces(places).withChambers(chambers));
  }

  private static boolean onTheSame(List<Chamber> carrying, Place place) {
    return carrying.stream().anyMatch(c -> carries(c, place));
  }

  private static Place lower(Place p, double step) {
    return p.at(p.z() - step);
  }

  private static Chamber lower(BoatModel model, Chamber c, double step, LocalDate today) {
    Span height = new Span(c.box().z().from(), c.box().z().to() - step);
    Box box = new Box(c.box().x(), c.box().y(), height);
    double left =
        model.form().inside().within(box).volume() / model.form().inside().within(c.box()).volume();
    Chamber cut =
        new Chamber(
            c.name(),
            box,
            c.filling(),
            c.measuredVolume().map(v -> v * left),
            c.mirrored(),
            c.limberHole(),
            new Twin(c.twin().filling(), c.twin().measuredVolume().map(v -> v * left)));
    return ChamberTesting.proven(cut, testedAgain(model, c), today);
  }

  private static List<ChamberPart> testedAgain(BoatModel model, Chamber chamber) {
    return model.spaces().stream()
        .filter(s -> s.chamber() == chamber && s.counting().share() > 0)
        .map(Space::part)
        .filter(part -> part.test().isPresent())
        .toList();
  }
}
