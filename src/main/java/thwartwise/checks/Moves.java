package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import thwartwise.boat.Body;
import thwartwise.boat.HullForm;
import thwartwise.boat.Loading;
import thwartwise.geometry.Vector3;

/** The ways people can move: each a trial of its own, to either side. */
final class Moves {
  private static final List<Double> SIDES = List.of(1.0, -1.0);

  private Moves() {}

  /**
   * Everyone the same share of the way out, to each side; where both sides are alike one will do.
   */
  static List<Trial> everyone(Trial trial, double share, String how) {
    return everyone(trial, trial.people(), share, how);
  }

  /** The same with everyone on the floor. */
  static List<Trial> kneeling(Trial trial, double share, String how) {
    return everyone(trial, trial.people().stream().map(Body::kneeling).toList(), share, how);
  }

  private static List<Trial> everyone(Trial trial, List<Body> people, double share, String how) {
    if (people.isEmpty()) {
      return List.of();
    }
    List<Trial> ways = new ArrayList<>();
    for (double side : trial.isSymmetric() ? List.of(1.0) : SIDES) {
      List<Body> moved = people.stream().map(b -> b.toSide(side, share)).toList();
      ways.add(trial.after(Disturbance.moved(how + sideWord(side), moved)));
    }
    return ways;
  }

  /** Each person in turn all the way out to each side, the others as they sit. */
  static List<Trial> one(Trial trial, String how) {
    return eachToEachSide(trial, how, Body::hardToSide);
  }

  /** Each person in turn standing where they sit, a little to either side. */
  static List<Trial> standing(Trial trial) {
    return eachToEachSide(
        trial,
        "standing, a little",
        (body, side) -> body.standing().at(body.y() + side * Body.STANDING_SWAY));
  }

  /** Each person in turn leaning out over the rail abreast of where they sit. */
  static List<Trial> leaningOut(Trial trial) {
    HullForm form = trial.craft().form();
    return eachToEachSide(
        trial, "leaning out", (body, side) -> body.leaningOut(form.railAt(body.x(), side > 0)));
  }

  /** Each of the crew in turn back from the water over either rail, or an adult where none is. */
  static List<Trial> climbingInOverTheSide(Trial trial, double adult) {
    HullForm form = trial.craft().form();
    List<Trial> ways = new ArrayList<>();
    for (double side : trial.isAlikeOnBothSides() ? List.of(1.0) : SIDES) {
      UnaryOperator<Vector3> rail = from -> form.railAt(from.x(), side > 0);
      ways.addAll(climbingIn(trial, adult, rail, "climbing in over the side" + sideWord(side)));
    }
    return ways;
  }

  static List<Trial> climbingInOverTheStern(Trial trial, double adult) {
    Vector3 stern = middle(trial.craft().form().aftRail());
    return climbingIn(trial, adult, from -> stern, "climbing in over the stern");
  }

  static List<Trial> climbingInOverTheBow(Trial trial, double adult) {
    Vector3 bow = middle(trial.craft().form().foreRail());
    return climbingIn(trial, adult, from -> bow, "climbing in over the bow");
  }

  private static List<Trial> climbingIn(
      Trial trial, double adult, UnaryOperator<Vector3> over, String how) {
    if (trial.people().isEmpty()) {
      Vector3 from = Vector3.of(trial.craft().form().length() / 2, 0, 0);
      return List.of(climbing(trial, List.of(), adult, over.apply(from), "somebody " + how));
    }
    List<Trial> ways = new ArrayList<>();
    for (int i = 0; i < trial.people().size(); i++) {
      Body body = trial.people().get(i);
      List<Body> others = new ArrayList<>(trial.people());
      others.remove(i);
      Vector3 at = over.apply(Vector3.of(body.x(), 0, 0));
      ways.add(climbing(trial, others, body.mass(), at, body.name() + " " + how));
    }
    return ways;
  }

  private static Trial climbing(
      Trial trial, List<Body> others, double mass, Vector3 at, String how) {
    return trial.after(Disturbance.weighed(how, others, List.of(new Loading.Weight(mass, at))));
  }

  static Vector3 middle(List<Vector3> bothSides) {
    return bothSides.get(0).toward(bothSides.get(1), 0.5);
  }

  /** Where a body comes to, moved to port (1) or starboard (−1). */
  interface ToSide {
    Body moved(Body body, double side);
  }

  private static List<Trial> eachToEachSide(Trial trial, String how, ToSide move) {
    List<Trial> ways = new ArrayList<>();
    for (int i = 0; i < trial.people().size(); i++) {
      Body body = trial.people().get(i);
      for (double side : trial.isAlikeOnBothSides() ? List.of(1.0) : SIDES) {
        List<Body> people = replaced(trial.people(), i, move.moved(body, side));
        String words = body.name() + " " + how + sideWord(side);
        ways.add(trial.after(Disturbance.moved(words, people)));
      }
    }
    return ways;
  }

  static List<Body> replaced(List<Body> people, int i, Body body) {
    List<Body> others = new ArrayList<>(people);
    others.set(i, body);
    return others;
  }

  static String sideWord(double side) {
    return side > 0 ? " to port" : " to starboard";
  }
}
