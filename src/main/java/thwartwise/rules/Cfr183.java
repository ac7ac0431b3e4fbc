package thwartwise.rules;

import java.util.List;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.Freeboard;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * The arithmetic of 33 CFR part 183 (United States; monohull boats under 20 ft; written for makers,
 * so here a second opinion that can only lower ours). The rule states weights in pounds; the code
 * uses kilograms.
 */
public final class Cfr183 {
  /** Exact: international avoirdupois pound, kg. */
  static final double POUND = 0.45359237;

  /** Exact: international foot, m. */
  static final double FOOT = 0.3048;

  /** W; mechanical horsepower. */
  static final double HORSEPOWER = 745.7;

  static final double TWO_HORSEPOWER = 2 * HORSEPOWER;

  private Cfr183() {}

  /** 183.35: (maximum displacement − boat weight) / 5. */
  static double weightOutboard(double difference) {
    return difference / 5;
  }

  /** 183.37: three tenths of the same difference. */
  static double weightManual(double difference) {
    return 0.3 * difference;
  }

  /** 183.43: 0.90 W, less 25 lb with a motor of 2 hp or less. */
  static double personsManual(double weight, boolean motorised) {
    return Math.max(0, 0.9 * weight - (motorised ? 25 * POUND : 0));
  }

  /**
   * 183.41: W less motor, controls, battery and tank; when that is under 550 lb not more than
   * A/0.6.
   */
  static double personsOutboard(double weight, double gear, double edgeWeight) {
    double rest = Math.max(0, weight - gear);
    return rest < 550 * POUND ? Math.min(rest, edgeWeight / 0.6) : rest;
  }

  /** 183.41, 183.43: (pounds + 32)/141 to the nearest whole number, a half up. */
  static int persons(double mass) {
    return mass > 0 ? (int) Math.floor((mass / POUND + 32) / 141 + 0.5) : 0;
  }

  /** Maximum displacement less boat weight, kg. */
  static double difference(RatedBoat boat) {
    return Math.max(0, displacement(boat.model()) - boat.hullMass());
  }

  static boolean overTwoHorsepower(RatedBoat boat) {
    return DriveKind.power(boat.propulsion()) > TWO_HORSEPOWER;
  }

  /** Maximum weight capacity W, kg, by the section for this kind of drive. */
  static double weight(RatedBoat boat) {
    double difference = difference(boat);
    return overTwoHorsepower(boat) ? weightOutboard(difference) : weightManual(difference);
  }

  /** Persons capacity, kg, by the section for this kind of drive. */
  static double persons(RatedBoat boat) {
    if (overTwoHorsepower(boat)) {
      double gear = MotorWeights.of(DriveKind.power(boat.propulsion())).total();
      return personsOutboard(weight(boat), gear, EdgeWeight.most(boat.model()));
    }
    return personsManual(weight(boat), DriveKind.of(boat.propulsion()) == DriveKind.OUTBOARD);
  }

  /** Whether the table of motor weights covers this boat's motor. */
  static boolean motorKnown(RatedBoat boat) {
    return MotorWeights.covers(DriveKind.power(boat.propulsion()));
  }

  // The most water the boat displaces level, in calm fresh water, before any comes aboard: the
  // "maximum displacement" of 33 CFR 183.35 (READ).
  private static final double FRESH = 1000;

  /** kg; zero when the lowest edge is under the bottom. */
  static double displacement(BoatModel model) {
    double lowest =
        model.edges().stream().map(FloodPoint::at).mapToDouble(p -> p.z()).min().orElseThrow();
    return FRESH * ImmersedPart.of(model.form().outside(), WaterPlane.of(0, 0, lowest)).volume();
  }

  /**
   * The weight A of 33 CFR 183.41 (READ): added along one outboard edge of each passenger area at
   * seat height, until the most list or trim that takes no water. Found on the model with the kit
   * aboard and nobody in the boat; the edge is taken at each place's outer end; the worse side.
   */
  static final class EdgeWeight {
    private static final double MOST = 2000;

    private EdgeWeight() {}

    /** kg, rounded down; zero when there is no place to put it. */
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

    /** Outer ends of the places; inner ends only where no place reaches that side. */
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
}
