package thwartwise.boat;

import java.util.List;
import java.util.Locale;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;

/**
 * A person aboard: mass with clothes and life jacket, centre of gravity, and the body as two
 * upright boxes.
 *
 * @param x along the boat
 * @param y to port
 * @param seat height of the seat
 * @param floor height of the floor
 * @param centreHeight height of the centre of gravity
 * @param reach how far out from the middle of the boat this person can get
 */
public record Body(
    String name,
    double mass,
    double x,
    double y,
    double seat,
    double floor,
    double centreHeight,
    double reach) {
  /** IMO Res. A.749(18) 3.5.2.7 (READ). */
  private static final double SEATED = 0.30;

  /** Kneeling, above the floor (judgement); a seat near the floor is knelt at. */
  private static final double KNEELING = 0.45;

  /** Above the rail, leaning out over it (judgement). */
  private static final double LEANING = 0.10;

  /** Nobody sits so still that their middle never gets this far out (judgement). */
  private static final double LEAST_REACH = 0.15;

  /** Nobody stands up exactly over the middle line (judgement). */
  public static final double STANDING_SWAY = 0.10;

  /** IMO Res. A.749(18) 3.5.2.7 (READ). */
  private static final double STANDING = 1.0;

  /** Both legs, 2 × .161 of the mass (Winter 2005 as quoted, READ). */
  private static final double LEGS = 0.32;

  /** From seat to crown (sitting heights .80 to .98 m, READ; judgement). */
  private static final double UPPER_HEIGHT = 0.85;

  /** With a seat at floor height the legs lie along it, not thinner than this (judgement). */
  private static final double LEAST_LEG_HEIGHT = 0.10;

  /** Density of a body in kg/m³; no lift from a life jacket is counted. */
  private static final double DENSITY = 1000;

  /** The figures a body is drawn from, with their sources, for whoever relies on them. */
  public static List<String> figures() {
    return List.of(
        String.format(
            Locale.ROOT,
            "A person's centre of gravity: %.2f m above the seat seated, %.2f m above the floor"
                + " standing (IMO Res. A.749(18) 3.5.2.7, READ), never under %.2f m above the"
                + " floor, as when kneeling, and %.2f m above and over the rail leaning out"
                + " (judgement).",
            SEATED,
            STANDING,
            KNEELING,
            LEANING),
        String.format(
            Locale.ROOT,
            "People move: at least %.2f m out from the middle line whatever the seat allows, and"
                + " %.2f m to one side in standing up (judgement).",
            LEAST_REACH,
            STANDING_SWAY),
        String.format(
            Locale.ROOT,
            "In the water a body is %.0f kg to the cubic metre, %.0f %% of it legs (Winter 2005 as"
                + " quoted, READ), the rest %.2f m high above the seat (judgement); a life jacket"
                + " lifts nothing here.",
            DENSITY,
            100 * LEGS,
            UPPER_HEIGHT));
  }

  public static Body seated(String name, double mass, Place place, double y, double floor) {
    return new Body(
        name,
        mass,
        place.x(),
        y,
        place.z(),
        floor,
        Math.max(place.z() + SEATED, floor + KNEELING),
        Math.max(LEAST_REACH, place.halfWidth()));
  }

  public Body standing() {
    return new Body(name, mass, x, y, seat, floor, floor + STANDING, reach);
  }

  /** On the floor at the same place. */
  public Body kneeling() {
    return new Body(name, mass, x, y, seat, floor, floor + KNEELING, reach);
  }

  /** Out over the rail, the weight on it. */
  public Body leaningOut(Vector3 rail) {
    return new Body(name, mass, x, rail.y(), seat, floor, rail.z() + LEANING, reach);
  }

  public Body at(double newY) {
    return new Body(name, mass, x, newY, seat, floor, centreHeight, reach);
  }

  public Body withMass(double newMass) {
    return new Body(name, newMass, x, y, seat, floor, centreHeight, reach);
  }

  public Vector3 centre() {
    return Vector3.of(x, y, centreHeight);
  }

  /** Legs from the floor to the seat, the rest above it. */
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
