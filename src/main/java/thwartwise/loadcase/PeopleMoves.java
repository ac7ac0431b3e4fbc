package thwartwise.loadcase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.boat.Side;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.LoadCaseStep.Act;

/**
 * The ways people can move: one loaded boat for each, to either side. Loose kit slides to the side
 * of the move.
 */
public final class PeopleMoves {
  private static final List<Double> SIDES = List.of(1.0, -1.0);

  private PeopleMoves() {}

  /**
   * Everyone the same share of the way out, to each side; to one side only where the boat is
   * symmetric.
   */
  public static List<LoadedBoat> everyone(LoadedBoat boat, double share, Act act) {
    return everyone(boat, boat.people(), share, LoadCaseStep.of(act));
  }

  /** The same with everyone on the floor. */
  public static List<LoadedBoat> kneeling(LoadedBoat boat, double share) {
    LoadCaseStep deed = LoadCaseStep.of(Act.EVERYONE_KNEELING_PART_OF_THE_WAY);
    return everyone(boat, boat.people().stream().map(Body::kneeling).toList(), share, deed);
  }

  private static List<LoadedBoat> everyone(
      LoadedBoat boat, List<Body> people, double share, LoadCaseStep deed) {
    if (people.isEmpty()) {
      return List.of();
    }
    List<LoadedBoat> ways = new ArrayList<>();
    for (double side : boat.isSymmetric() ? List.of(1.0) : SIDES) {
      List<Body> moved = people.stream().map(b -> b.toSide(side, share)).toList();
      ways.addAll(boat.toSide(Disturbance.moved(deed.to(side(side)), moved), side));
    }
    return ways;
  }

  /**
   * A share of everybody's weight a part of the way out, to each side, the rest as they sit. People
   * who share a seat move together until their centre of gravity is there, so that bodies do not
   * overlap: the overlap would lift only once.
   */
  public static List<LoadedBoat> partly(LoadedBoat boat, double part, double share) {
    LoadCaseStep deed = LoadCaseStep.of(Act.HALF_THE_WEIGHT_PART_OF_THE_WAY);
    List<LoadedBoat> ways = new ArrayList<>();
    for (double side : sides(boat)) {
      ways.addAll(shifted(boat, deed, side, b -> part * meanShift(sharing(boat, b), side, share)));
    }
    return ways;
  }

  private static List<Body> sharing(LoadedBoat boat, Body body) {
    return boat.people().stream().filter(b -> b.across().equals(body.across())).toList();
  }

  private static double meanShift(List<Body> people, double side, double share) {
    double mass = people.stream().mapToDouble(Body::mass).sum();
    return people.stream().mapToDouble(b -> b.mass() * (b.toSide(side, share).y() - b.y())).sum()
        / mass;
  }

  /** Everyone by a distance to one side of where they sit, m, to each side. */
  public static List<LoadedBoat> offTheMiddle(LoadedBoat boat, double distance, boolean stiff) {
    LoadCaseStep deed = new LoadCaseStep.OffTheMiddle(distance, stiff, Optional.empty(), false);
    List<LoadedBoat> ways = new ArrayList<>();
    sides(boat).forEach(side -> ways.addAll(shifted(boat, deed, side, b -> side * distance)));
    return ways;
  }

  private static List<LoadedBoat> shifted(
      LoadedBoat boat, LoadCaseStep deed, double side, ToDoubleFunction<Body> distance) {
    List<Body> moved =
        boat.people().stream().map(b -> b.at(b.y() + distance.applyAsDouble(b))).toList();
    return boat.toSide(Disturbance.moved(deed.to(side(side)), moved), side);
  }

  private static List<Double> sides(LoadedBoat boat) {
    return boat.isAlikeOnBothSides() ? List.of(1.0) : SIDES;
  }

  /** Each person in turn all the way out to each side, the others as they sit. */
  public static List<LoadedBoat> one(LoadedBoat boat) {
    return eachToEachSide(boat, Act.HARD_TO_THE_SIDE, Body::hardToSide);
  }

  /** Each person in turn standing where they sit, a little to either side. */
  public static List<LoadedBoat> standing(LoadedBoat boat) {
    return eachToEachSide(
        boat,
        Act.STANDING,
        (body, side) -> body.standing().at(body.y() + side * Body.STANDING_SWAY));
  }

  /** Each person in turn leaning out over the rail abreast of their seat. */
  public static List<LoadedBoat> leaningOut(LoadedBoat boat) {
    HullForm form = boat.model().form();
    return eachToEachSide(
        boat, Act.LEANING_OUT, (body, side) -> body.leaningOut(form.railAt(body.x(), side > 0)));
  }

  /**
   * Each member of the crew in turn climbing in over either rail; an adult where there is no crew.
   */
  public static List<LoadedBoat> climbingInOverTheSide(LoadedBoat boat, double adult) {
    HullForm form = boat.model().form();
    List<LoadedBoat> ways = new ArrayList<>();
    for (double side : sides(boat)) {
      UnaryOperator<Vector3> rail = from -> form.railAt(from.x(), side > 0);
      climbingIn(boat, adult, rail, Act.CLIMBING_IN_OVER_THE_SIDE)
          .forEach(d -> ways.addAll(boat.toSide(d.toward(side(side)), side)));
    }
    return ways;
  }

  public static List<LoadedBoat> climbingInOverTheStern(LoadedBoat boat, double adult) {
    Vector3 stern = middle(boat.model().form().aftRail());
    return climbingInOverAnEnd(boat, adult, stern, Act.CLIMBING_IN_OVER_THE_STERN);
  }

  public static List<LoadedBoat> climbingInOverTheBow(LoadedBoat boat, double adult) {
    Vector3 bow = middle(boat.model().form().foreRail());
    return climbingInOverAnEnd(boat, adult, bow, Act.CLIMBING_IN_OVER_THE_BOW);
  }

  private static List<LoadedBoat> climbingInOverAnEnd(
      LoadedBoat boat, double adult, Vector3 end, Act act) {
    return climbingIn(boat, adult, from -> end, act).stream().map(boat::after).toList();
  }

  private static List<Disturbance> climbingIn(
      LoadedBoat boat, double adult, UnaryOperator<Vector3> over, Act act) {
    if (boat.people().isEmpty()) {
      Vector3 from = Vector3.of(boat.model().form().length() / 2, 0, 0);
      return List.of(climbing(List.of(), adult, over.apply(from), LoadCaseStep.of(act)));
    }
    List<Disturbance> ways = new ArrayList<>();
    for (int i = 0; i < boat.people().size(); i++) {
      Body body = boat.people().get(i);
      List<Body> others = new ArrayList<>(boat.people());
      others.remove(i);
      Vector3 at = over.apply(Vector3.of(body.x(), 0, 0));
      ways.add(climbing(others, body.mass(), at, LoadCaseStep.of(act, body.name())));
    }
    return ways;
  }

  private static Disturbance climbing(
      List<Body> others, double mass, Vector3 at, LoadCaseStep deed) {
    return Disturbance.weighed(deed, others, List.of(new Loading.Weight(mass, at)));
  }

  public static Vector3 middle(List<Vector3> bothSides) {
    return bothSides.get(0).toward(bothSides.get(1), 0.5);
  }

  /** The place of a body after a move to port (1) or starboard (−1). */
  interface ToSide {
    Body moved(Body body, double side);
  }

  private static List<LoadedBoat> eachToEachSide(LoadedBoat boat, Act act, ToSide move) {
    List<LoadedBoat> ways = new ArrayList<>();
    for (int i = 0; i < boat.people().size(); i++) {
      Body body = boat.people().get(i);
      for (double side : sides(boat)) {
        List<Body> people = replaced(boat.people(), i, move.moved(body, side));
        LoadCaseStep deed = LoadCaseStep.of(act, body.name()).to(side(side));
        ways.addAll(boat.toSide(Disturbance.moved(deed, people), side));
      }
    }
    return ways;
  }

  public static List<Body> replaced(List<Body> people, int i, Body body) {
    List<Body> others = new ArrayList<>(people);
    others.set(i, body);
    return others;
  }

  public static Side side(double side) {
    return side > 0 ? Side.PORT : Side.STARBOARD;
  }
}
