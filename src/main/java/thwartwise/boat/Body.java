package thwartwise.boat;

import java.util.List;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * A person aboard: mass with clothes and life jacket, where the weight acts, and the body as two
 * upright boxes.
 *
 * <p>Somebody who sits or kneels keeps the trunk upright while the boat heels slowly, so the weight
 * acts where it is carried, as a hanging weight acts at its point of suspension (any textbook of
 * stability). Somebody stiff leans with the boat: the weight acts at the centre of gravity.
 *
 * @param x along the boat
 * @param y to port
 * @param seat height of the seat
 * @param floor height of the floor
 * @param centreHeight height at which the weight acts
 * @param stiffHeight height at which it acts for somebody stiff: the centre of gravity
 * @param across the ends, across the boat, of where the middle of this person can be
 * @param place name of the place where this person sits
 */
public record Body(
    String name,
    double mass,
    double x,
    double y,
    double seat,
    double floor,
    double centreHeight,
    double stiffHeight,
    Span across,
    String place) {
  /** IMO Res. A.749(18) 3.5.2.7 (READ). */
  private static final double SEATED = 0.30;

  /**
   * Height of the centre above the floor when kneeling (judgement); people kneel at a seat near the
   * floor.
   */
  private static final double KNEELING = 0.45;

  /**
   * Height above the floor at which an upright kneeling person's weight is carried: two thirds of
   * it, trunk and arms, at the hips 0.20 m up, the legs on the floor (judgement).
   */
  private static final double KNEELING_CARRIED = 0.15;

  /** Height above the rail when leaning out over it (judgement). */
  private static final double LEANING = 0.10;

  /** Nobody sits so still that their middle never moves this far out (judgement). */
  private static final double LEAST_REACH = 0.15;

  /** Nobody stands up exactly over the middle line (judgement). */
  public static final double STANDING_SWAY = 0.10;

  /** IMO Res. A.749(18) 3.5.2.7 (READ). */
  private static final double STANDING = 1.0;

  /** Height of the legs above what somebody stands on (judgement). */
  private static final double STANDING_LEGS = 0.80;

  /** The share of both legs, 2 × .161 of the mass (Winter 2005 as quoted, READ). */
  private static final double LEGS = 0.32;

  /** Height from seat to crown (sitting heights .80 to .98 m, READ; judgement). */
  private static final double UPPER_HEIGHT = 0.85;

  /** With a seat at floor height the legs lie along it, at least this thick (judgement). */
  private static final double LEAST_LEG_HEIGHT = 0.10;

  /** Density of a body, kg/m³; no lift from a life jacket is counted. */
  private static final double DENSITY = 1000;

  /** The figures from which a body is drawn, for code that relies on them. */
  public static List<MethodAssumption> assumptions() {
    return List.of(
        new MethodAssumption.StillPerson(KNEELING_CARRIED),
        new MethodAssumption.StiffPerson(SEATED, STANDING, KNEELING, LEANING),
        new MethodAssumption.MovingPerson(LEAST_REACH, STANDING_SWAY),
        new MethodAssumption.BodyInWater(DENSITY, LEGS, UPPER_HEIGHT));
  }

  /** A person at the middle of the length of a place, at a distance to port. */
  public static Body seated(String name, double mass, Place place, double y, double floor) {
    return at(name, mass, place, Vector3.of(place.x(), y, place.z()), floor);
  }

  /** A person on a place, sitting, kneeling or standing as people do there. */
  public static Body at(String name, double mass, Place place, Vector3 spot, double floor) {
    Body seated =
        new Body(
            name,
            mass,
            spot.x(),
            spot.y(),
            place.z(),
            floor,
            place.z(),
            Math.max(place.z() + SEATED, floor + KNEELING),
            reach(place.across()),
            place.name());
    return switch (place.posture()) {
      case SITTING -> seated;
      case KNEELING -> seated.on(place.z(), place.z(), KNEELING_CARRIED, KNEELING);
      case STANDING -> seated.on(place.z(), place.z() + STANDING_LEGS, STANDING, STANDING);
    };
  }

  /**
   * How far people move across. At the middle line they move over it, however narrow their seat;
   * the others stay on their seat.
   */
  private static Span reach(Span across) {
    return across.contains(0)
        ? new Span(Math.min(-LEAST_REACH, across.from()), Math.max(LEAST_REACH, across.to()))
        : across;
  }

  private Body on(double footing, double lap, double carried, double above) {
    return new Body(
        name, mass, x, y, lap, footing, footing + carried, footing + above, across, place);
  }

  private Body acting(double height, double stiff) {
    return new Body(name, mass, x, y, seat, floor, height, stiff, across, place);
  }

  /** Whether this person keeps the trunk upright while the boat heels slowly. */
  public boolean keepsUpright() {
    return centreHeight < stiffHeight;
  }

  /** A copy that leans with the boat, the weight at the centre of gravity. */
  public Body stiff() {
    return acting(stiffHeight, stiffHeight);
  }

  /** A copy that stands; always stiff. */
  public Body standing() {
    return acting(floor + STANDING, floor + STANDING);
  }

  /** A copy on the floor at the same place. */
  public Body kneeling() {
    return acting(floor + KNEELING_CARRIED, floor + KNEELING);
  }

  /** A copy that leans out over the rail, the weight on it; always stiff. */
  public Body leaningOut(Vector3 rail) {
    return acting(rail.z() + LEANING, rail.z() + LEANING).at(rail.y());
  }

  public Body at(double newY) {
    return new Body(name, mass, x, newY, seat, floor, centreHeight, stiffHeight, across, place);
  }

  public Body along(double newX) {
    return new Body(name, mass, newX, y, seat, floor, centreHeight, stiffHeight, across, place);
  }

  /** Whether this person can move equally far to either side. */
  public boolean isAboutTheMiddle() {
    return across.from() == -across.to();
  }

  /**
   * A copy moved to port (1) or starboard (−1), by a share of the way out from the middle line.
   * Somebody on a seat to one side comes no farther than its inner end, and somebody moved out
   * stays if already farther out.
   */
  public Body toSide(double side, double share) {
    double end = side > 0 ? across.to() : across.from();
    if (across.contains(0)) {
      return at(share * end);
    }
    double out = Math.max(side * share * end, side * y);
    return at(Math.max(across.from(), Math.min(across.to(), side * out)));
  }

  /** A copy as far to port (1) or starboard (−1) as this person can be. */
  public Body hardToSide(double side) {
    return at(side > 0 ? across.to() : across.from());
  }

  public Body withMass(double newMass) {
    return new Body(name, newMass, x, y, seat, floor, centreHeight, stiffHeight, across, place);
  }

  /** Where the weight acts. */
  public Vector3 centre() {
    return Vector3.of(x, y, centreHeight);
  }

  /** The centre of gravity. */
  public Vector3 middle() {
    return Vector3.of(x, y, stiffHeight);
  }

  /**
   * Two boxes: legs from the floor to the seat, the rest above it. {@link BoatModel#boxes} knows
   * the obstacles.
   */
  public List<Box> boxes() {
    double legHeight = Math.max(LEAST_LEG_HEIGHT, seat - floor);
    double legArea = LEGS * mass / DENSITY / legHeight;
    double upperArea = (1 - LEGS) * mass / DENSITY / UPPER_HEIGHT;
    double lap = Math.max(seat, floor + legHeight);
    return List.of(
        Box.upright(x, y, lap - legHeight, legArea, legHeight),
        Box.upright(x, y, lap, upperArea, UPPER_HEIGHT));
  }
}
