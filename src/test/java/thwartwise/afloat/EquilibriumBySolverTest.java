package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

/**
 * Resting poses by a general optimiser on an energy of its own, against the program's.
 *
 * <p>Near a minimum an energy good to 1e-15 tells the angle to the root of that; so angles are
 * compared to 1e-6 and, where a root of the moment is searched instead, closer.
 */
class EquilibriumBySolverTest {

  /**
   * A box whose four corner posts all cross the water: depth under it is a plane, so volume and
   * moments are polynomials. Energy over ρg: V (n·G − d) plus half the squared depths over the
   * bottom, since each column of height h stands up by h (n_z h)/2.
   */
  private record PostedBox(double length, double breadth, double draft, Vector3 centre) {
    double energy(double a, double b) {
      // Up to a factor n_z the water is z = draft + a x + b y; its centre stays at the draft.
      double slope = 1 / Math.sqrt(1 + a * a + b * b);
      double volume = length * breadth * draft;
      double height = slope * (centre.z() - draft - a * centre.x() - b * centre.y());
      double second = draft * draft + a * a * length * length / 12 + b * b * breadth * breadth / 12;
      return volume * height + slope * length * breadth * second / 2;
    }

    double[] rest() {
      return new SimplexOptimizer(new SimpleValueChecker(1e-16, 1e-16))
          .optimize(
              new MaxEval(20000),
              new ObjectiveFunction(p -> energy(p[0], p[1])),
              GoalType.MINIMIZE,
              new InitialGuess(new double[] {0, 0}),
              new NelderMeadSimplex(2, 0.02))
          .getPoint();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0.02, 0.00, 0.25",
    "0.00, 0.03, 0.25",
    "-0.05, 0.02, 0.20",
    "0.08, -0.035, 0.10",
    "0.03, 0.01, 0.45"
  })
  void a_box_with_its_weight_anywhere_rests_where_its_energy_is_least(
      double x, double y, double z) {
    PostedBox paper = new PostedBox(4, 1.3, 0.2, Vector3.of(x, y, z));
    double[] rest = paper.rest();
    FloatingBody box =
        new FloatingBody(
            4 * 1.3 * 0.2, paper.centre(), List.of(new Lift(Blocks.block(4, 1.3, 0.6), 1)), 1);
    Equilibria found = Equilibrium.from(box);
    assertThat(found.reached()).hasSize(1);
    Vector3 up = found.reached().get(0).plane().up();
    // The energy is flat to about 1e-16 over a stiffness of 0.2 to 7 m4: the slope to 1e-7 or so.
    assertThat(-up.x() / up.z()).isCloseTo(rest[0], within(1e-6));
    assertThat(-up.y() / up.z()).isCloseTo(rest[1], within(1e-6));
    assertThat(found.reached().get(0).waterAtOrigin().orElseThrow()).isCloseTo(0.2, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "0.00, 0.28, 0.10",
    "0.05, 0.28, 0.10",
    "-0.12, 0.25, 0.10",
    "0.20, 0.20, 0.15",
    "0.02, 0.40, 0.10"
  })
  void a_triangular_prism_with_its_weight_to_one_side_rests_where_its_energy_is_least(
      double y, double z, double area) {
    double[][] outline = {{0, 0}, {0.6, 0.5}, {-0.6, 0.5}};
    SectionEnergy paper = new SectionEnergy(outline, area, y, z);
    Solid prism = Blocks.prism(6, List.of(outline));
    FloatingBody floating =
        new FloatingBody(6 * area, Vector3.of(0, y, z), List.of(new Lift(prism, 1)), 1);
    Equilibria found = Equilibrium.from(floating);
    assertThat(found.exist()).isTrue();
    for (Pose pose : found.reached()) {
      assertThat(pose.trim()).isCloseTo(0, within(1e-8));
      assertThat(pose.heel()).isCloseTo(paper.restNear(pose.heel()), within(1e-6));
      assertThat(paper.water(pose.heel())).isCloseTo(pose.plane().height(), within(1e-8));
    }
  }

  /** A section clipped with a polygon library; its energy over the heel by general solvers. */
  private static final class SectionEnergy {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private final Polygon section;
    private final double area;
    private final double y;
    private final double z;

    SectionEnergy(double[][] outline, double area, double y, double z) {
      List<Coordinate> ring = new ArrayList<>();
      for (double[] p : outline) {
        ring.add(new Coordinate(p[0], p[1]));
      }
      ring.add(ring.get(0));
      this.section = SHAPES.createPolygon(ring.toArray(new Coordinate[0]));
      this.area = area;
      this.y = y;
      this.z = z;
    }

    Geometry wet(double heel, double height) {
      double uy = Math.sin(heel);
      double uz = Math.cos(heel);
      Coordinate a = new Coordinate(uy * height - 9 * uz, uz * height + 9 * uy);
      Coordinate b = new Coordinate(uy * height + 9 * uz, uz * height - 9 * uy);
      Coordinate c = new Coordinate(b.x - 9 * uy, b.y - 9 * uz);
      Coordinate d = new Coordinate(a.x - 9 * uy, a.y - 9 * uz);
      return section.intersection(SHAPES.createPolygon(new Coordinate[] {a, b, c, d, a}));
    }

    double water(double heel) {
      return new BrentSolver(1e-13).solve(200, d -> wet(heel, d).getArea() - area, -2, 2);
    }

    double energy(double heel) {
      double height = water(heel);
      Coordinate b = wet(heel, height).getCentroid().getCoordinate();
      double up = Math.sin(heel) * (y - b.x) + Math.cos(heel) * (z - b.y);
      return area * up;
    }

    double restNear(double heel) {
      return new BrentOptimizer(1e-10, 1e-12)
          .optimize(
              new MaxEval(2000),
              new UnivariateObjectiveFunction(this::energy),
              GoalType.MINIMIZE,
              new SearchInterval(heel - 0.1, heel + 0.08, heel + 0.01))
          .getPoint();
    }
  }
}
