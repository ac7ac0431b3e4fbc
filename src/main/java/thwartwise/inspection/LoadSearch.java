package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.HullForm;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.Vector3;

/**
 * How much more may be aboard besides people and the kit listed: extra weight on the floor on the
 * middle line, at whichever spot along the boat is worst, with every crew from nobody up, everyone
 * heavy or everyone light.
 */
final class LoadSearch {
  private static final double MOST = 300;

  private final Judge judge;
  private final List<CrewSearch.Crew> crews;

  LoadSearch(Judge judge, List<CrewSearch.Crew> crews) {
    this.judge = judge;
    this.crews = crews;
  }

  /** Whole kg. */
  double extra() {
    double low = 0;
    double high = MOST;
    while (high - low > 1) {
      double middle = Math.floor((low + high) / 2);
      if (carriedAnywhere(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private boolean carriedAnywhere(double mass) {
    return crews.parallelStream()
        .allMatch(
            c ->
                spots().stream()
                    .allMatch(
                        at -> judge.carries(c.seating(), c.each(), new Loading.Weight(mass, at))));
  }

  private List<Vector3> spots() {
    Boat boat = judge.craft().boat();
    HullForm form = judge.craft().form();
    double aft = form.outside().extent(Vector3.of(1, 0, 0)).from();
    List<Vector3> spots = new ArrayList<>();
    for (double share : List.of(0.08, 1.0 / 6, 0.5, 5.0 / 6, 0.92)) {
      spots.add(Vector3.of(aft + share * form.length(), 0, boat.hull().floor()));
    }
    for (Place place : boat.places()) {
      spots.add(Vector3.of(place.x(), 0, boat.hull().floor()));
    }
    return spots.stream().filter(this::isFloor).toList();
  }

  // Nothing is laid down where a chamber stands; the next floor toward the middle is tried.
  private boolean isFloor(Vector3 spot) {
    Vector3 above = spot.plus(Vector3.of(0, 0, 0.05));
    return judge.craft().spaces().stream().noneMatch(s -> s.box().contains(above));
  }
}
