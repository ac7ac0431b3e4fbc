package thwartwise.benchmark;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.PointVectorValuePair;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.MathArrays;
import org.hipparchus.util.Pair;
import thwartwise.geometry.Vector3;

/**
 * Where a boat rests, found the usual way: section polygons, and a general solver for the water z =
 * c + a x + b y under which the volume is right and B lies under G.
 *
 * <p>With V₀ the needed volume, V and M the immersed one and its moments: V = V₀, Mx − V₀ Gx + a
 * (Mz − V₀ Gz) = 0, My − V₀ Gy + b (Mz − V₀ Gz) = 0. Their slopes come from the waterplane, so the
 * solver needs no differences.
 *
 * @param waterAtOrigin height up the boat's z axis where the water cuts it, m
 * @param heel rad
 * @param trim rad
 * @param evaluations of all sections that it took
 */
record RestBySections(double waterAtOrigin, double heel, double trim, int evaluations) {
  private static final double CLOSE = 1e-9;

  static RestBySections of(SectionedHull hull, double needed, Vector3 centre) {
    double middle = (hull.lowest() + hull.highest()) / 2;
    LeastSquaresOptimizer.Optimum found =
        new LevenbergMarquardtOptimizer()
            .optimize(
                new LeastSquaresBuilder()
                    .start(new double[] {middle, 0, 0})
                    .target(new double[3])
                    .model(p -> balance(hull, p, needed, centre))
                    .checkerPair(RestBySections::settled)
                    .maxEvaluations(200)
                    .maxIterations(200)
                    .build());
    double a = found.getPoint().getEntry(1);
    double b = found.getPoint().getEntry(2);
    return new RestBySections(
        found.getPoint().getEntry(0),
        Math.atan(-b),
        Math.asin(a / Math.sqrt(1 + a * a + b * b)),
        found.getEvaluations());
  }

  private static boolean settled(int step, PointVectorValuePair before, PointVectorValuePair now) {
    return MathArrays.distanceInf(before.getPoint(), now.getPoint()) < CLOSE;
  }

  private static Pair<RealVector, RealMatrix> balance(
      SectionedHull hull, RealVector p, double needed, Vector3 centre) {
    double c = p.getEntry(0);
    double a = p.getEntry(1);
    double b = p.getEntry(2);
    SectionedHull.Wet wet = hull.under(c, a, b);
    double x = wet.momentX - needed * centre.x();
    double y = wet.momentY - needed * centre.y();
    double z = wet.momentZ - needed * centre.z();
    RealVector off =
        new ArrayRealVector(new double[] {wet.volume - needed, x + a * z, y + b * z}, false);
    return new Pair<>(off, new Array2DRowRealMatrix(slopes(wet, c, a, b, z), false));
  }

  /** Raising the surface over a spot by dz adds dz of water there, at the surface's own height. */
  private static double[][] slopes(SectionedHull.Wet w, double c, double a, double b, double z) {
    double zByC = c * w.area + a * w.areaX + b * w.areaY;
    double zByA = c * w.areaX + a * w.areaXX + b * w.areaXY;
    double zByB = c * w.areaY + a * w.areaXY + b * w.areaYY;
    return new double[][] {
      {w.area, w.areaX, w.areaY},
      {w.areaX + a * zByC, w.areaXX + a * zByA + z, w.areaXY + a * zByB},
      {w.areaY + b * zByC, w.areaXY + b * zByA, w.areaYY + b * zByB + z}
    };
  }
}
