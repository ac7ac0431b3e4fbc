package thwartwise.spread;

/**
 * The search for the greatest mass that enough boats measured like this carry, in whole kilograms:
 * between the least that too few carry and the greatest that enough do, from the log odds of their
 * shares, which fall almost evenly with the mass.
 */
final class SureMass {
  /** More than enough (judgement), since these crews are judged to second order and not in full. */
  private static final double SURE = BoatSpread.ENOUGH + 0.01;

  /** The least share whose log odds count: two of the 20,000 boats drawn. */
  private static final double LEAST_SHARE = 1e-4;

  /**
   * First guess of the share of a mass that one unit of log odds is worth; it decides no result.
   */
  private static final double FIRST_STEP = 0.06;

  /**
   * The share of the mass of the screen within which shares are taken to follow a line (judgement).
   */
  private static final double STRAIGHT = 0.05;

  private static final double WANTED = odds(SURE);

  private final double straight;
  private final double lightest;
  private double carried;
  private double carriedOdds = Double.NaN;
  private double refused = Double.POSITIVE_INFINITY;
  private double refusedOdds = Double.NaN;
  private double asked;
  private Moved moved = Moved.NEITHER;

  /** The end of the search that was moved last. */
  private enum Moved {
    NEITHER,
    CARRIED,
    REFUSED
  }

  private SureMass(double carried, double lightest, double screened) {
    this.carried = carried;
    this.lightest = lightest;
    this.asked = screened;
    this.straight = STRAIGHT * screened;
  }

  /**
   * Between a mass that is carried for certain and the one of the screen, kg; the first may be the
   * greater.
   */
  static SureMass above(double known, double screened) {
    return new SureMass(Math.min(known, screened), known, screened);
  }

  /** Between the least mass that is of any use and the one of the screen, kg. */
  static SureMass from(double lightest, double screened) {
    return new SureMass(Double.NaN, Math.min(lightest, screened), screened);
  }

  /** The greatest mass known to be carried, whole kg; NaN while there is none. */
  double carried() {
    return carried;
  }

  /** The mass to be judged next. */
  double asked() {
    return asked;
  }

  /** Whether nothing heavier is worth asking about: the next kilogram is refused, or would be. */
  boolean isFound() {
    return asked <= carried || refused <= lightest || refused - carried <= 1;
  }

  static boolean isEnough(double share) {
    return share >= SURE;
  }

  /** Takes the share of boats that carry the mass asked about. */
  void judged(double share) {
    if (isEnough(share)) {
      carried = asked;
      carriedOdds = odds(share);
      asked = refused == Double.POSITIVE_INFINITY ? carried : between(Moved.CARRIED);
    } else {
      double lower = Math.floor(below(odds(share)));
      refused = asked;
      refusedOdds = odds(share);
      asked = Double.isNaN(carriedOdds) ? downTo(lower) : between(Moved.REFUSED);
    }
  }

  /**
   * Farther down, while none is known to be carried, from the share of the mass asked about; half
   * of the way to the lightest where a lighter one is no surer.
   */
  private double below(double odds) {
    if (refused == Double.POSITIVE_INFINITY) {
      return asked * (1 - FIRST_STEP * (WANTED - odds));
    }
    return refusedOdds < odds
        ? crossing(asked, odds, refused, refusedOdds)
        : (lightest + asked) / 2;
  }

  private double downTo(double lower) {
    if (Double.isNaN(carried)) {
      return Math.max(lightest, lower);
    }
    return lower > carried ? lower : halfway();
  }

  private double halfway() {
    return Math.floor((carried + 1 + refused) / 2);
  }

  /**
   * On the line between what is carried and what is refused. Halfway where the same end is moved
   * again, because a curve would be crept along, and where the line says that the next kilogram is
   * too much, but over too far or too steep a stretch.
   */
  private double between(Moved end) {
    boolean again = moved == end;
    moved = end;
    double onLine = Math.floor(crossing(carried, carriedOdds, refused, refusedOdds));
    if (onLine == carried && refused - carried <= straight && refusedOdds > 0) {
      return carried;
    }
    boolean useful = !again && onLine > carried && onLine < refused;
    return useful ? onLine : halfway();
  }

  /** The mass with the odds wanted on the line through two. */
  private static double crossing(double mass, double odds, double other, double otherOdds) {
    return mass + (WANTED - odds) * (other - mass) / (otherOdds - odds);
  }

  /** Those of the least share where there is none (NaN). */
  private static double odds(double share) {
    double within = share > LEAST_SHARE ? Math.min(1 - LEAST_SHARE, share) : LEAST_SHARE;
    return Math.log(within / (1 - within));
  }
}
