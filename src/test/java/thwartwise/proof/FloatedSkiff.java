package thwartwise.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import thwartwise.boat.BoatModel;
import thwartwise.boat.HullWeight;
import thwartwise.boat.Loading.Weight;
import thwartwise.boat.Side;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.PlainHulls;
import thwartwise.proof.ProofReading.FreeboardReading;
import thwartwise.proof.ProofReading.HeelReading;

/** A skiff beside the landing: six freeboards, and 30 kg moved to either side. */
final class FloatedSkiff {
  static final BoatModel MODEL = BoatModel.of(PlainHulls.skiff(), PlainHulls.TODAY);
  static final double TAPE = 0.002;
  static final double LEVEL = Math.toRadians(0.2);

  private FloatedSkiff() {}

  /** Readings of a hull that weighs so much there, off by what reading scatters. */
  static FloatedPrediction read(HullWeight truth, Random random) {
    return read(truth, spread -> spread * random.nextGaussian());
  }

  static FloatedPrediction readWithoutError(HullWeight truth) {
    return read(truth, spread -> 0);
  }

  private static FloatedPrediction read(HullWeight truth, DoubleUnaryOperator error) {
    double[] seen = new FloatedPrediction(MODEL, conditions(new double[8])).values(truth);
    for (int i = 0; i < seen.length; i++) {
      seen[i] += error.applyAsDouble(i < 6 ? TAPE : LEVEL);
    }
    return new FloatedPrediction(MODEL, conditions(seen));
  }

  /** A weight in the middle and one freeboard. */
  static FloatedPrediction loadedWith(double kilograms) {
    return new FloatedPrediction(
        MODEL,
        List.of(
            new FloatedCondition(
                List.of(),
                List.of(new Weight(kilograms, Vector3.of(1.7, 0, 0.3))),
                List.of(new FreeboardReading(2, Side.PORT, 0.1, TAPE)))));
  }

  private static List<FloatedCondition> conditions(double[] seen) {
    List<ProofReading> freeboards = new ArrayList<>();
    int[] stations = {0, 2, 4};
    for (int i = 0; i < stations.length; i++) {
      freeboards.add(new FreeboardReading(stations[i], Side.PORT, seen[2 * i], TAPE));
      freeboards.add(new FreeboardReading(stations[i], Side.STARBOARD, seen[2 * i + 1], TAPE));
    }
    return List.of(
        new FloatedCondition(List.of(), List.of(), freeboards),
        moved(0.4, seen[6]),
        moved(-0.4, seen[7]));
  }

  private static FloatedCondition moved(double y, double heel) {
    return new FloatedCondition(
        List.of(),
        List.of(new Weight(30, Vector3.of(1.7, y, 0.3))),
        List.of(new HeelReading(heel, LEVEL)));
  }
}
