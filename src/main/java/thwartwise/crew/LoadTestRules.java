package thwartwise.crew;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Formula.FormulaMethod;
import thwartwise.rules.FormulaNote;
import thwartwise.rules.FormulaResult;
import thwartwise.rules.Formulas;
import thwartwise.rules.Parameters;
import thwartwise.rules.RatedBoat;

/**
 * Rules whose number comes from a test: more and more people until the test fails or no place is
 * left. As measured, without our allowance, because they are others' rules.
 */
public final class LoadTestRules {
  private static final List<Boolean> BOTH = List.of(true, false);

  private LoadTestRules() {}

  /** The tests by the name of the formula. */
  static Map<String, FormulaMethod> all() {
    return Map.of(
        Formulas.OFFSET_LOAD, LoadTestRules::offsetLoad,
        Formulas.SWAMPED_WEIGHT, LoadTestRules::swampedWeight);
  }

  /**
   * Everyone as far to either side as possible, within the heel and dry: in every seating, and in
   * the best one of each number, because one poor seat says little about a boat whose crew sits
   * well.
   */
  private static List<FormulaResult> offsetLoad(RatedBoat boat, Parameters values) {
    double each = values.number("each");
    double most = heel(values.number("heel-base"), boat.length());
    int people = most(boat.room(), n -> staysUp(boat.model(), n, each, most));
    int best = most(boat.room(), n -> mayStayUp(boat.model(), n, each, most));
    return List.of(
        FormulaResult.persons("everyone hard to one side", people)
            .withNote(
                new FormulaNote.SideLoad(
                    each, Math.toDegrees(most), best > people ? best : 0, isFull(people, boat))));
  }

  /** A weight under water over the side, a third of the length from each end in turn. */
  private static List<FormulaResult> swampedWeight(RatedBoat boat, Parameters values) {
    double each = values.number("each");
    double least = values.number("least");
    int people = most(boat.room(), n -> staysUpright(boat, Math.max(least, n * each)));
    return List.of(
        FormulaResult.persons("swamped with a weight over the side", people)
            .withNote(new FormulaNote.SwampedWeight(each, least, isFull(people, boat))));
  }

  /** Whether the places ended the test and not the boat. */
  private static boolean isFull(int people, RatedBoat boat) {
    return people == boat.room();
  }

  /** 10 + (24 − L)³/600 degrees, in radians. */
  static double heel(double base, double length) {
    return Math.toRadians(base + Math.pow(24 - length, 3) / 600);
  }

  /** To port; to starboard too where the boat is not symmetric. */
  private static List<Boolean> sides(BoatModel model) {
    return model.isSymmetric() ? List.of(true) : BOTH;
  }

  private static int most(int room, IntPredicate holds) {
    int people = 0;
    while (people < room && holds.test(people + 1)) {
      people++;
    }
    return people;
  }

  private static boolean staysUp(BoatModel model, int people, double each, double heel) {
    return Seating.of(people, model.boat().places()).parallelStream()
        .allMatch(s -> staysUp(model, s, each, heel));
  }

  private static boolean mayStayUp(BoatModel model, int people, double each, double heel) {
    return Seating.of(people, model.boat().places()).parallelStream()
        .anyMatch(s -> staysUp(model, s, each, heel));
  }

  private static boolean staysUp(BoatModel model, Seating seating, double each, double heel) {
    return seating.ways(model, Collections.nCopies(seating.people(), each)).stream()
        .allMatch(bodies -> sides(model).stream().allMatch(port -> dry(model, bodies, port, heel)));
  }

  private static boolean dry(BoatModel model, List<Body> bodies, boolean port, double heel) {
    List<Body> out = bodies.stream().map(b -> b.hardToSide(port ? 1 : -1)).toList();
    Equilibria rest = LoadedBoat.of(model, out).atRest();
    return rest.allStable()
        && rest.reached().stream()
            .allMatch(
                p ->
                    Math.abs(p.heel()) <= heel
                        && Freeboard.least(model.edges(), p.plane()).height() >= 0);
  }

  private static boolean staysUpright(RatedBoat boat, double mass) {
    BoatModel model = boat.model();
    List<Vector3> over = new ArrayList<>();
    for (double third : List.of(1 / 3.0, 2 / 3.0)) {
      double x = boat.aftEnd() + third * boat.length();
      sides(model).forEach(port -> over.add(model.form().railAt(x, port)));
    }
    return over.stream()
        .map(at -> LoadedBoat.of(model, List.of()).with(new Loading.Weight(mass, at)))
        .allMatch(t -> t.swampedRest(List.of()).allUpright());
  }
}
