package thwartwise.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.hull.HullMeasurements;
import thwartwise.measure.UnitSystem;

/** The parts of a boat that a copy may replace, and the making of the copy. */
final class BoatParts {
  HullMeasurements hull;
  List<Opening> openings;
  List<Chamber> chambers;
  List<Place> places;
  List<Kit> kit;
  List<Person> aboard;
  Optional<Double> bailer;
  Waters waters;
  Optional<String> measuredBy;
  List<Assumption> assumptions;
  List<ConfirmedMeasurement> confirmedMeasurements;
  Optional<CrewWhenSwamped> whenSwamped;
  Optional<Double> trailer;
  Optional<Double> vehicle;
  UnitSystem units;
  Optional<ObservedTrial> observedTrial;
  ElectricalSystem electrics;
  List<PointAnswer> pointAnswers;
  Outfit outfit;
  List<Cleat> cleats;
  List<KeptProof> proofs;
  List<MeasuringMethod> methods;

  BoatParts(Boat boat) {
    this.hull = boat.hull();
    this.openings = boat.openings();
    this.chambers = boat.chambers();
    this.places = boat.places();
    this.kit = boat.kit();
    this.aboard = boat.aboard();
    this.bailer = boat.bailer();
    this.waters = boat.waters();
    this.measuredBy = boat.measuredBy();
    this.assumptions = boat.assumptions();
    this.confirmedMeasurements = boat.confirmedMeasurements();
    this.whenSwamped = boat.whenSwamped();
    this.trailer = boat.trailer();
    this.vehicle = boat.vehicle();
    this.units = boat.units();
    this.observedTrial = boat.observedTrial();
    this.electrics = boat.electrics();
    this.pointAnswers = boat.pointAnswers();
    this.outfit = boat.outfit();
    this.cleats = boat.cleats();
    this.proofs = boat.proofs();
    this.methods = boat.methods();
  }

  boolean isMeasuredAs(Boat boat) {
    return hull.equals(boat.hull())
        && openings.equals(boat.openings())
        && chambers.equals(boat.chambers())
        && places.equals(boat.places())
        && kit.equals(boat.kit());
  }

  Boat of(Boat boat) {
    return new Boat(
        boat.name(),
        boat.water(),
        hull,
        openings,
        chambers,
        places,
        kit,
        aboard,
        boat.propulsion(),
        cleats,
        bailer,
        waters,
        measuredBy,
        assumptions,
        confirmedMeasurements,
        whenSwamped,
        trailer,
        vehicle,
        units,
        observedTrial,
        electrics,
        pointAnswers,
        outfit,
        proofs,
        methods);
  }
}
