package thwartwise.loadcase;

import java.util.List;
import java.util.function.DoubleFunction;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.afloat.Gravity;
import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Cleat;
import thwartwise.boat.Loading;
import thwartwise.boat.Outfit;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.rules.RuleSet;

/**
 * A line from a cleat down to the ground, away from the boat. The water's reaction balances the
 * level component of its pull; the vertical component is a weight at the cleat.
 *
 * @param astern whether it leads away over the stern
 */
public record LineOut(RuleSet rules, Cleat cleat, boolean astern) {
  /** A steeper line is being hauled in; a boat does not lie to it (judgement). */
  private static final double STEEPEST = Math.toRadians(75);

  /** Tolerance of the search for a pull, N. */
  private static final double TOLERANCE = 10;

  private static final DryStepSearch.Trial NO_EQUILIBRIUM =
      new DryStepSearch.Trial(Double.NaN, Vector3.of(0, 0, 1), 0);

  /** Cleats in one half of the boat; without a stated one, the middle of the rail at that end. */
  public static List<LineOut> of(RuleSet rules, LoadedBoat boat, boolean astern) {
    HullForm form = boat.model().form();
    double middle = form.outside().extent(Vector3.of(1, 0, 0)).middle();
    List<LineOut> lines =
        boat.model().boat().cleats().stream()
            .filter(c -> c.at().x() < middle == astern)
            .map(c -> new LineOut(rules, c, astern))
            .toList();
    if (!lines.isEmpty()) {
      return lines;
    }
    Vector3 end = PeopleMoves.middle(astern ? form.aftRail() : form.foreRail());
    String name = astern ? "middle of the stern" : "stem";
    return List.of(new LineOut(rules, new Cleat(name, end), astern));
  }

  /** Unit vector along the line, away from the boat. */
  public Vector3 toward() {
    return Vector3.of(astern ? -1 : 1, 0, 0);
  }

  /**
   * The level pull of current and wind on a boat that lies end on to both, snatch included, N: the
   * drag of the immersed hull, of the hull above the water and of the people.
   */
  public double expected(LoadedBoat boat) {
    Vector3 toward = toward();
    Solid hull = boat.model().form().outside();
    Equilibria rest = boat.atRest();
    double wet =
        rest.worst().map(p -> Profile.of(hull.under(p.plane()), toward).area()).orElse(0.0);
    double speed = rules.value("current");
    double water =
        boat.model().waterDensity() / 2 * rules.value("drag-water") * wet * speed * speed;
    double air = rest.worst().map(p -> Wind.of(rules).push(boat, p, toward)).orElse(0.0);
    return rules.value("snatch") * (water + air);
  }

  /** The least pull of the current, N: the drag measured on towed boats of this size. */
  public double towed() {
    return rules.value("towing-drag");
  }

  /** The loaded boat with a level pull on the line, N, leading away over the end. */
  public LoadedBoat pulling(LoadedBoat boat, double newtons) {
    return pulling(boat, newtons, new Force(cleat.at(), astern ? -newtons : newtons, 0));
  }

  /** The same with the line leading out over one side, to port (1) or starboard (−1). */
  LoadedBoat pullingAbeam(LoadedBoat boat, double newtons, double side) {
    return pulling(boat, newtons, new Force(cleat.at(), 0, side * newtons));
  }

  /**
   * The angle at which it leads down, radians: as assumed for every line, or more where a short
   * anchor line is known. A straight line to the ground leads down by the arc sine of depth and
   * height of the cleat over its length (closed form); the height is that above the keel, a little
   * too much.
   */
  public double downAngle(Outfit outfit) {
    double taken = Math.toRadians(rules.value("line-angle"));
    if (!outfit.isAnchorLineKnown()) {
      return taken;
    }
    double down = outfit.anchorDepth().get() + cleat.at().z();
    double steep = Math.asin(Math.min(1, down / outfit.anchorLine().get()));
    return Math.max(taken, Math.min(steep, STEEPEST));
  }

  /** The height above the keel of the bow cleat from which the anchor line leads out, m. */
  public static double bowHeight(BoatModel model) {
    double middle = model.form().outside().extent(Vector3.of(1, 0, 0)).middle();
    return model.boat().cleats().stream()
        .map(Cleat::at)
        .filter(at -> at.x() >= middle)
        .mapToDouble(Vector3::z)
        .max()
        .orElseGet(() -> PeopleMoves.middle(model.form().foreRail()).z());
  }

  private LoadedBoat pulling(LoadedBoat boat, double newtons, Force force) {
    double down = newtons * Math.tan(downAngle(boat.model().boat().outfit()));
    return boat.after(
        Disturbance.withForces(
                LoadCaseStep.of(Act.LINE_OUT, cleat.name()), boat.people(), List.of(force))
            .and(new Loading.Weight(down / Gravity.STANDARD, cleat.at())));
  }

  /**
   * The level pull at which water first comes in or the boat first has no stable equilibrium, N,
   * lying end on to a current that raises the water at that end. For a hurried boat the answer only
   * says whether it is at least {@code enough}.
   */
  public double greatest(LoadedBoat boat, double enough) {
    StreamHead head = StreamHead.of(rules, boat.model().form(), astern);
    return greatest(boat, List.of(this), newtons -> pulling(boat, newtons), head, enough);
  }

  /** The same with the line out over the side, whichever side is worse. */
  public double greatestAbeam(LoadedBoat boat, double enough) {
    return Math.min(greatestAbeam(boat, 1, enough), greatestAbeam(boat, -1, enough));
  }

  private double greatestAbeam(LoadedBoat boat, double side, double enough) {
    return greatest(
        boat,
        List.of(this, side),
        newtons -> pullingAbeam(boat, newtons, side),
        StreamHead.NONE,
        enough);
  }

  private static double asked(LoadedBoat boat, double enough) {
    return boat.isHurried() ? enough : Double.NaN;
  }

  private double greatest(
      LoadedBoat boat,
      Object search,
      DoubleFunction<LoadedBoat> pulled,
      StreamHead head,
      double enough) {
    double asked = asked(boat, enough);
    int steps = 1;
    while (rules.value("greatest-pull") / steps > TOLERANCE) {
      steps *= 2;
    }
    int most = steps;
    double step = rules.value("greatest-pull") / most;
    DryStepSearch last =
        new DryStepSearch(
            trial(boat, head),
            k -> trial(pulled.apply(k * step), head),
            most,
            (dry, wet) -> dry * step >= asked || wet * step <= asked);
    return step * boat.search(search, DryStepSearch.Found.class, last::from).step();
  }

  private static DryStepSearch.Trial trial(LoadedBoat boat, StreamHead head) {
    Equilibria rest = boat.atRest();
    double height = LowestEdge.of(rest, boat, head).height().orElse(Double.NaN);
    return rest.worst()
        .map(pose -> new DryStepSearch.Trial(height, pose.plane().up(), stiffness(pose)))
        .orElse(NO_EQUILIBRIUM);
  }

  private static double stiffness(Pose pose) {
    return pose.restoring().softest() / pose.neededVolume();
  }
}
