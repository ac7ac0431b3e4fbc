package thwartwise.proof;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.boat.HullWeight;
import thwartwise.boat.Loading;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/** The predicted value of every reading of a proof, for a hull of this mass and centre. */
public final class FloatedPrediction {
  private final BoatModel model;
  private final List<FloatedCondition> conditions;

  public FloatedPrediction(BoatModel model, List<FloatedCondition> conditions) {
    this.model = model;
    this.conditions = List.copyOf(conditions);
  }

  public BoatModel model() {
    return model;
  }

  /** The same readings for a slightly different boat. */
  FloatedPrediction of(BoatModel other) {
    return new FloatedPrediction(other, conditions);
  }

  /** The same with other things aboard. */
  FloatedPrediction with(UnaryOperator<FloatedCondition> change) {
    return new FloatedPrediction(model, conditions.stream().map(change).toList());
  }

  /** All readings, in the order of the conditions. */
  public List<ProofReading> readings() {
    return conditions.stream().flatMap(c -> c.readings().stream()).toList();
  }

  /** The values in the same order; NaN where the boat has no equilibrium. */
  public double[] values(HullWeight hull) {
    return conditions.stream().flatMapToDouble(c -> values(c, hull)).toArray();
  }

  private DoubleStream values(FloatedCondition condition, HullWeight hull) {
    return loaded(condition, hull)
        .atRest()
        .worst()
        .map(pose -> values(condition, pose))
        .orElseGet(() -> condition.readings().stream().mapToDouble(r -> Double.NaN));
  }

  private DoubleStream values(FloatedCondition condition, Pose pose) {
    return condition.readings().stream().mapToDouble(r -> r.predicted(model, pose));
  }

  /** Replaces the measured hull by the one to be tried. */
  private LoadedBoat loaded(FloatedCondition condition, HullWeight hull) {
    Vector3 centre = model.form().centre();
    LoadedBoat loaded =
        LoadedBoat.of(model, condition.people())
            .with(new Loading.Weight(-model.boat().hull().mass(), centre))
            .with(
                new Loading.Weight(
                    hull.mass(), Vector3.of(hull.along(), centre.y(), hull.height())));
    for (Loading.Weight weight : condition.weights()) {
      loaded = loaded.with(weight);
    }
    return loaded;
  }
}
