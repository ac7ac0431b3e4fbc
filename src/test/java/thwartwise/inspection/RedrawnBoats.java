package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/**
 * Boats of the same kind as another: wider or narrower, deeper or not, heavier or lighter, with
 * kit.
 *
 * @param wide factors on the breadth
 * @param deep factors on the depth
 * @param kit fewer pieces than this
 * @param spread between the lightest and the heaviest piece of kit, kg
 */
public record RedrawnBoats(Span wide, Span deep, int kit, double spread) {

  public Boat of(Boat boat, Random random) {
    double broader = within(wide, random);
    double deeper = within(deep, random);
    HullMeasurements hull = boat.hull();
    List<Station> stations =
        hull.stations().stream()
            .map(s -> Station.mirrored(s.name(), scaled(s.port(), broader, deeper)))
            .toList();
    return boat.withHull(
            hull.withStations(stations).weighing(hull.mass() * (0.8 + 0.5 * random.nextDouble())))
        .withKit(kit(hull, random));
  }

  private static double within(Span span, Random random) {
    return span.from() + span.length() * random.nextDouble();
  }

  private static List<Vector3> scaled(List<Vector3> points, double wide, double deep) {
    return points.stream().map(p -> Vector3.of(p.x(), wide * p.y(), deep * p.z())).toList();
  }

  private List<Kit> kit(HullMeasurements hull, Random random) {
    double length = hull.stations().get(hull.stations().size() - 1).portRail().x();
    List<Kit> pieces = new ArrayList<>();
    for (int i = random.nextInt(kit); i > 0; i--) {
      Vector3 at =
          Vector3.of(length * (0.2 + 0.6 * random.nextDouble()), 0.1 * random.nextGaussian(), 0.15);
      boolean fastened = random.nextBoolean();
      double mass = 2 + spread * random.nextDouble();
      pieces.add(new Kit("thing " + i, mass, at, Optional.of(0.004), fastened, Optional.empty()));
    }
    return pieces;
  }
}
