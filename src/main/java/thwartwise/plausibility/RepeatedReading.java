package thwartwise.plausibility;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import thwartwise.hull.ReadingDirection;

/**
 * A reading that is the same, to the last figure, as the one before it and off the fair curve: most
 * often the eye slipped back a line. The same figure twice is rare enough that a smaller distance
 * is doubted than for any other reading. Of two equal ones the one farther from its own curve is
 * reported.
 *
 * @param x of each station, m
 * @param value of the line in question, m
 * @param below half-breadths of the line under it; none for heights, which are equal on a flat
 *     bottom
 */
record RepeatedReading(double[] x, double[] value, double[] below) {
  /** A reading so far off its curve is no coincidence, m (judgement: tape and an uneven build). */
  private static final double OFF = 0.025;

  /**
   * An end has no curve on its other side: the distance off the line through the two before it, m
   * (judgement).
   */
  private static final double END_OFF = 0.06;

  private static final double SAME = 1e-9;

  /** The station, and the value that would be in line there. */
  record Found(int station, double fair) {}

  Optional<Found> found(ReadingDirection direction) {
    OptionalInt worst =
        IntStream.range(1, x.length - 1)
            .filter(i -> isRepeated(i) && fair(i).off(value[i]) > OFF)
            .reduce((a, b) -> fair(b).off(value[b]) > fair(a).off(value[a]) ? b : a);
    if (worst.isPresent()) {
      int i = worst.getAsInt();
      return Optional.of(new Found(i, fair(i).nearest(value[i])));
    }
    return direction == ReadingDirection.HALF_BREADTH ? atAnEnd() : Optional.empty();
  }

  private FairRange fair(int i) {
    return FairRange.of(x, value, i);
  }

  private boolean isRepeated(int i) {
    return isSame(value[i], value[i - 1]) || isSame(value[i], value[i + 1]) || isAsBelow(i);
  }

  /** Where sides are plumb at the next station as well, two points have one breadth. */
  private boolean isAsBelow(int i) {
    return below.length > 0
        && isSame(value[i], below[i])
        && !(isSame(value[i - 1], below[i - 1]) && isSame(value[i + 1], below[i + 1]));
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(a) > SAME && Math.abs(a - b) < SAME;
  }

  private Optional<Found> atAnEnd() {
    int last = x.length - 1;
    return atAnEnd(last, last - 1, last - 2).or(() -> atAnEnd(0, 1, 2));
  }

  /** Whether it is broader than the line through the next two, because hulls narrow ever faster. */
  private Optional<Found> atAnEnd(int end, int next, int third) {
    double led =
        value[next] + (value[next] - value[third]) * (x[end] - x[next]) / (x[next] - x[third]);
    return isSame(value[end], value[next]) && value[end] - led > END_OFF
        ? Optional.of(new Found(end, Math.max(0, led)))
        : Optional.empty();
  }
}
