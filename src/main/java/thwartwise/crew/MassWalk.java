package thwartwise.crew;

import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/**
 * Some checks of one mixture of people in one seating, asked from the lightest mass upward: how
 * heavy the heavy ones may be, every mass below included. Walked only as far as somebody asks, and
 * the same way whoever asks.
 *
 * <p>Between two masses that meet nothing is missed where the headroom at both ends, together,
 * spans the stretch; one of ten kilograms a person is taken as short enough, and none is longer
 * than fifty.
 */
public final class MassWalk {
  /** kg a person. */
  private static final double SHORT = 10;

  private static final double LONG = 50;

  /** Stretches are multiples of this, so that many walks meet the same bodies, kg a person. */
  private static final double EVEN = 5;

  private final DoubleFunction<Headroom> asked;
  private final Supplier<Headroom> atLightest;
  private final double lightest;
  private final double heaviest;
  private final double landmark;
  private final double heavyOnes;
  private boolean ended;

  /** Asked about already, and too far off to go there at once. */
  private Point ahead;

  private double carried;
  private Headroom headroom;

  private record Point(double mass, Headroom headroom) {}

  /**
   * @param asked at a mass of the heavy ones, kg
   * @param atLightest the same at the lightest mass, which other mixtures share
   * @param landmark a mass that is asked about by itself, where no stretch leads over it, kg
   * @param heavyOnes how many there are
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

  /** Whether this very mass meets, whatever those below do. */
  boolean meets(double mass) {
    return asked.apply(mass).isMet();
  }

  /**
   * The whole mass up to which all meet, kg, or as much as was asked about and perhaps more; zero
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

  /** What more than a whole mass, known to be carried, is, in steps finer than a kilogram. */
  double carriedBeyond(double whole, double step) {
    return carried(whole + 1) > whole ? whole + 1 : lastMet(whole, whole + 1, step);
  }

  /** Between a mass that meets and one that does not. */
  double lastMet(double meets, double fails, double step) {
    return Bisection.last(meets, fails, step, this::meets);
  }

  /** Whether the lightest mass, the landmark and this one meet; all others are left to others. */
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
    return new Point(most, asked.apply(most));
  }

  private static double between(double each) {
    return Math.max(SHORT, Math.min(LONG, EVEN * Math.floor(each / EVEN)));
  }

  private boolean spans(Point next) {
    double stretch = heavyOnes * (next.mass - carried);
    return next.headroom.isMet() && stretch <= headroom.mass() + next.headroom.mass();
  }
}
