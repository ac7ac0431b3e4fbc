package thwartwise.crew;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/**
 * The walk of some checks upward in mass, for one mixture of people in one seating: the greatest
 * mass of the heavy people, with every smaller mass allowed. It is walked only as far as needed,
 * and in the same steps for every caller.
 *
 * <p>Between two masses that meet nothing is missed where the headroom at both ends, together,
 * spans the range; a range of ten kilograms a person counts as short enough, and none is longer
 * than fifty.
 */
public final class MassWalk {
  /** kg a person. */
  private static final double SHORT = 10;

  private static final double LONG = 50;

  /** The ranges are multiples of this, so that many walks meet the same bodies, kg a person. */
  private static final double EVEN = 5;

  private final DoubleFunction<Headroom> asked;
  private final Supplier<Headroom> atLightest;
  private final double lightest;
  private final double heaviest;
  private final double landmark;
  private final double heavyOnes;
  private final Map<Double, Headroom> known = new ConcurrentHashMap<>();
  private boolean ended;

  /** Masses computed already that are too far ahead to step to at once. */
  private Point ahead;

  private double carried;
  private Headroom headroom;

  private record Point(double mass, Headroom headroom) {}

  /**
   * @param asked the checks at a mass of the heavy people, kg
   * @param atLightest the same at the lightest mass, which other mixtures share
   * @param landmark a mass that is always computed, where no step leads over it, kg
   * @param heavyOnes the number of heavy people
   */
  MassWalk(
      DoubleFunction<Headroom> asked,
      Supplier<Headroom> atLightest,
      double lightest,
      double heaviest,
      double landmark,
      double heavyOnes) {
    this.asked = asked;
    this.atLightest = atLightest;
    this.lightest = lightest;
    this.heaviest = heaviest;
    this.landmark = Math.min(landmark, heaviest);
    this.heavyOnes = heavyOnes;
  }

  /** Whether this exact mass meets, whatever smaller ones do. */
  boolean meets(double mass) {
    return headroom(mass).isMet();
  }

  // This is not computed within the map, because other threads would wait for it.
  private Headroom headroom(double mass) {
    Headroom before = known.get(mass);
    if (before != null) {
      return before;
    }
    Headroom now = asked.apply(mass);
    known.put(mass, now);
    return now;
  }

  /**
   * The whole mass up to which all meet, kg, or as much as was asked for and perhaps more; zero
   * when the lightest does not.
   */
  synchronized double carried(double enough) {
    if (headroom == null) {
      headroom = atLightest.get();
      carried = headroom.isMet() ? lightest : 0;
      ended = !headroom.isMet();
    }
    while (!ended && carried < Math.min(enough, heaviest)) {
      goOn();
    }
    return carried;
  }

  /** The amount beyond a whole mass known to be carried, in steps finer than a kilogram. */
  double carriedBeyond(double whole, double step) {
    return carried(whole + 1) > whole ? whole + 1 : lastMet(whole, whole + 1, step);
  }

  /** The last mass that meets, between one that meets and one that does not. */
  double lastMet(double meets, double fails, double step) {
    return BracketedSearch.lastMet(meets, fails, step, this::headroom);
  }

  /** Whether the lightest mass, the landmark and this one meet; no other mass is tried. */
  boolean meetsAtEnds(double mass) {
    return mass == 0
        || atLightest.get().isMet()
            && meets(Math.min(mass, heaviest))
            && (mass <= landmark || meets(landmark));
  }

  private void goOn() {
    Point next = ahead == null ? at(carried + between(2 * headroom.mass() / heavyOnes)) : ahead;
    ahead = next;
    double sure = carried + between(headroom.mass() / heavyOnes);
    if (next.mass > sure && !spans(next)) {
      next = at(sure);
    }
    if (next.mass == ahead.mass) {
      ahead = null;
    }
    if (next.headroom.isMet()) {
      carried = next.mass;
      headroom = next.headroom;
      ended = carried == heaviest;
    } else {
      carried = lastMet(carried, next.mass, 1);
      ended = true;
    }
  }

  private Point at(double mass) {
    double most = Math.min(carried < landmark ? landmark : heaviest, mass);
    return new Point(most, headroom(most));
  }

  private static double between(double each) {
    return Math.max(SHORT, Math.min(LONG, EVEN * Math.floor(each / EVEN)));
  }

  private boolean spans(Point next) {
    double stretch = heavyOnes * (next.mass - carried);
    return next.headroom.isMet() && stretch <= headroom.mass() + next.headroom.mass();
  }
}
