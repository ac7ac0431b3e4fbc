package thwartwise.walk.borrowed;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.hull.Station;

/**
 * A hull from a few dimensions, leaner than boats of such dimensions are: the ends fine and rising,
 * no sheer, the bow a point. Every figure that is not a parameter is judgement. Metres.
 *
 * @param beam over the rails where it is widest
 * @param bottom over the chines at the same place; only a flat bottom has it
 * @param depth from the lowest point of the bottom up to the rail where that is lowest
 * @param stern over the rails at the aft end; 0 when it is pointed
 */
public record EstimatedLines(
    double length, double beam, double bottom, double depth, double stern, SectionForm form) {

  /** Where it is widest, as a share of the length from aft. */
  private static final double WIDEST = 0.45;

  /** How much of the depth the bottom has risen at the ends. */
  private static final double RISES_AFT = 0.10;

  private static final double RISES_FORWARD = 0.35;

  /** Nothing is thinner than this, so that the skin stays a skin, m. */
  private static final double STEM = 0.02;

  private static final List<Double> ALONG = List.of(0.0, 0.2, WIDEST, 0.65, 0.8, 0.92, 1.0);

  List<Station> stations() {
    return Stream.iterate(0, i -> i + 1)
        .limit(ALONG.size())
        .map(
            i ->
                Station.mirrored(
                    "drawn " + (i + 1),
                    form.points(
                        ALONG.get(i) * length,
                        keel(ALONG.get(i)),
                        depth,
                        half(ALONG.get(i)),
                        flat(ALONG.get(i)))))
        .toList();
  }

  /** Half over the rails at a share of the length; parabolas that meet where it is widest. */
  public double half(double share) {
    double end = share <= WIDEST ? Math.max(STEM, stern / 2) : STEM;
    return end + (beam / 2 - end) * (1 - square(share));
  }

  private double flat(double share) {
    return half(share) * bottom / beam;
  }

  private double keel(double share) {
    return depth * (share <= WIDEST ? RISES_AFT : RISES_FORWARD) * square(share);
  }

  /** From 0 where it is widest to 1 at either end. */
  private static double square(double share) {
    double toEnd = share <= WIDEST ? (WIDEST - share) / WIDEST : (share - WIDEST) / (1 - WIDEST);
    return toEnd * toEnd;
  }
}
