package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Body;

/** The ways people can move: each a trial of its own, to either side. */
final class Moves {
  private Moves() {}

  /**
   * Everyone the same share of the way out, to each side; where both sides are alike one will do.
   */
  static List<Trial> everyone(Trial trial, double share, String how) {
    if (trial.people().isEmpty()) {
      return List.of();
    }
    List<Trial> ways = new ArrayList<>();
    for (double side : trial.isSymmetric() ? List.of(1.0) : List.of(1.0, -1.0)) {
      List<Body> moved = trial.people().stream().map(b -> b.at(side * share * b.reach())).toList();
      ways.add(trial.moved(moved, how + sideWord(side)));
    }
    return ways;
  }

  /** Each person in turn all the way out to each side, the others as they sit. */
  static List<Trial> one(Trial trial, String how) {
    List<Trial> ways = new ArrayList<>();
    for (int i = 0; i < trial.people().size(); i++) {
      Body body = trial.people().get(i);
      for (double side : List.of(1.0, -1.0)) {
        ways.add(
            trial.moved(
                replaced(trial.people(), i, body.at(side * body.reach())),
                body.name() + " " + how + sideWord(side)));
      }
    }
    return ways;
  }

  /** Each person in turn standing where they sit, a little to either side. */
  static List<Trial> standing(Trial trial) {
    List<Trial> ways = new ArrayList<>();
    for (int i = 0; i < trial.people().size(); i++) {
      Body body = trial.people().get(i);
      for (double side : List.of(1.0, -1.0)) {
        Body standing = body.standing().at(body.y() + side * Body.STANDING_SWAY);
        ways.add(
            trial.moved(
                replaced(trial.people(), i, standing),
                body.name() + " standing, a little" + sideWord(side)));
      }
    }
    return ways;
  }

  private static List<Body> replaced(List<Body> people, int i, Body body) {
    List<Body> others = new ArrayList<>(people);
    others.set(i, body);
    return others;
  }

  private static String sideWord(double side) {
    return side > 0 ? " to port" : " to starboard";
  }
}
