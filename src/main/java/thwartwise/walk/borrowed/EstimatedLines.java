package thwartwise.walk.borrowed;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.hull.Station;

/**
 * A hull estimated from a few dimensions. It has less volume than boats of these dimensions have:
 * fine rising ends, no sheer, a pointed bow. Figures that are not parameters are judgement. Metres.
 *
 * @param beam over the rails where it is widest
 * @param bottom over the chines at the same place; only a flat bottom has it
 * @param depth from the lowest point of the bottom up to the rail where that is lowest
 * @param stern over the rails at the aft end; 0 when it is pointed
 */
public record EstimatedLines(
    double length, double beam, double bottom, double depth, double stern, SectionForm form) {

  /** The widest place, as a share of the length from aft. */
  private static final double WIDEST = 0.45;

  /** The rise of the bottom at the ends, as a share of the depth. */
  private static final double RISES_AFT = 0.10;

  private static final double RISES_FORWARD = 0.35;

  /** The least breadth, so that the skin stays a skin, m. */
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

  /**
   * The half-breadth over the rails at a share of the length: parabolas that meet at the widest
   * place.
   */
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

  /** A square law from 0 at the widest place to 1 at either end. */
  private static double square(double share) {
    double toEnd = share <= WIDEST ? (WIDEST - share) / WIDEST : (share - WIDEST) / (1 - WIDEST);
    return toEnd * toEnd;
  }
}
