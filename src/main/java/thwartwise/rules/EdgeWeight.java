package thwartwise.rules;

import java.util.List;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.Freeboard;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.Vector3;

/**
 * The weight A of 33 CFR 183.41 (READ): added along one outboard edge of each passenger area at
 * seat height, until the most list or trim that takes no water. Found on the model with the kit
 * aboard and nobody in the boat; the edge is taken at each place's outer end; the worse side.
 */
final class EdgeWeight {
  private static final double MOST = 2000;

  private EdgeWeight() {}

  /** kg, rounded down; nothing when there is no place to put it. */
  static double most(BoatModel model) {
    if (model.boat().places().isEmpty()) {
      return 0;
    }
    return Math.min(most(model, 1), most(model, -1));
  }

  private static double most(BoatModel model, double side) {
    double dry = 0;
    double wet = MOST;
    while (wet - dry > 0.5) {
      double middle = (dry + wet) / 2;
      if (staysDry(model, side, middle)) {
        dry = middle;
      } else {
        wet = middle;
      }
    }
    return Math.floor(dry);
  }

  /** Outer ends of the places; inner ones only where no place reaches over to that side. */
  private static List<Vector3> edge(List<Place> places, double side) {
    List<Place> there = places.stream().filter(p -> side * outer(p, side) >= 0).toList();
    return (there.isEmpty() ? places : there)
        .stream().map(p -> Vector3.of(p.x(), outer(p, side), p.z())).toList();
  }

  private static double outer(Place place, double side) {
    return side > 0 ? place.across().to() : place.across().from();
  }

  private static boolean staysDry(BoatModel model, double side, double mass) {
    List<Vector3> edge = edge(model.boat().places(), side);
    List<Loading.Weight> weights =
        edge.stream().map(at -> new Loading.Weight(mass / edge.size(), at)).toList();
    Loading loading = new Loading(model, List.of(), weights, 1);
    Equilibria rest = Equilibrium.from(FloatingBody.dry(loading));
    return rest.allStable()
        && rest.reached().stream()
            .allMatch(p -> Freeboard.least(model.edges(), p.plane()).height() >= 0);
  }
}
