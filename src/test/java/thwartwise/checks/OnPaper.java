package thwartwise.checks;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Cleat;
import thwartwise.boat.Place;
import thwartwise.files.report.OldNames;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * A box 3 m by 1.2 m and 0.5 m deep, so 3.6 kg of water a millimetre, whose hull's G lies 0.2 m up,
 * and the formulas of the wall-sided: they hold while bottom and rail stay where they are.
 */
public final class OnPaper {
  static final RuleSet RULES = RuleSetFile.cautiousDefault();
  static final double LENGTH = 3;
  static final double BEAM = 1.2;
  static final double DEPTH = 0.5;
  static final double PLANE = LENGTH * BEAM;
  static final double GRAVITY = 9.80665;

  private OnPaper() {}

  public static BoxBoat boat(double mass) {
    return BoxBoat.of(LENGTH, BEAM, DEPTH).hull(mass, 0.2);
  }

  /** With a tank of 0.7 m at each end, 420 l each, and a shell that displaces nothing. */
  public static BoxBoat tanks(double mass) {
    return boat(mass)
        .weightlessShell()
        .proven("stern tank", new thwartwise.geometry.Span(0, 0.7))
        .proven("bow tank", new thwartwise.geometry.Span(2.3, 3));
  }

  /**
   * Somebody amidships who gets so far out: upright the weight acts at the seat, 0.25 m, and stiff
   * 0.30 m above it.
   */
  static Body person(double mass, double reach) {
    return Body.seated("crew", mass, new Place("thwart", 1.5, 0.25, reach, 1), 0, 0.02);
  }

  static LoadedBoat trial(BoxBoat boat, Body... people) {
    return LoadedBoat.of(boat.model(), List.of(people), OldNames.loadCase("on paper"));
  }

  static LoadedBoat trial(Boat boat, Body... people) {
    return LoadedBoat.of(
        BoatModel.of(boat, BoxBoat.TODAY), List.of(people), OldNames.loadCase("on paper"));
  }

  static List<Finding> findings(Check check, LoadedBoat trial) {
    return Findings.of(check, trial, Allowance.of(RULES, trial.model()));
  }

  static double value(Finding finding) {
    return finding.value().orElseThrow();
  }

  /** The same boat with cleats, and a bailer of so many litres. */
  static Boat fitted(BoxBoat plain, List<Cleat> cleats, Optional<Double> litres) {
    Boat b = plain.boat();
    return new Boat(
        b.name(),
        b.water(),
        b.hull(),
        b.openings(),
        b.chambers(),
        b.places(),
        b.kit(),
        b.aboard(),
        b.propulsion(),
        cleats,
        litres.map(v -> v / 1000),
        b.waters(),
        b.measuredBy(),
        b.assumptions());
  }

  /**
   * Tangent of the heel of a wall-sided boat: (GM + BM t²/2) t = offset of G.
   *
   * @param volume displaced, m³
   * @param waterplane m²
   * @param inertia of the waterplane about the axis it turns about, m⁴
   * @param height of G
   * @param offset of G across that axis, m
   */
  static double tangent(
      double volume, double waterplane, double inertia, double height, double offset) {
    double bm = inertia / volume;
    double gm = volume / waterplane / 2 + bm - height;
    return root(t -> (gm + bm * t * t / 2) * t - offset, 0, 1);
  }

  /** Heel of the box with a hull at 0.2 m and one more weight out at a height. */
  static double heel(double hull, double weight, double out, double height) {
    double mass = hull + weight;
    double inertia = LENGTH * Math.pow(BEAM, 3) / 12;
    double g = (hull * 0.2 + weight * height) / mass;
    double tangent = tangent(mass / 1000, PLANE, inertia, g, weight * out / mass);
    assertThat(BEAM / 2 * tangent).as("bottom under on paper").isLessThan(mass / 1000 / PLANE);
    return Math.atan(tangent);
  }

  /** The rail on the low side above the water. */
  static double freeboard(double mass, double heel) {
    return (DEPTH - mass / 1000 / PLANE) * Math.cos(heel) - BEAM / 2 * Math.sin(heel);
  }

  public static double root(DoubleUnaryOperator f, double from, double to) {
    return new BrentSolver(1e-14).solve(300, f::applyAsDouble, from, to);
  }
}
