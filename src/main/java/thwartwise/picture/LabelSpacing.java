package thwartwise.picture;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Labels spread along a line in their order, each as near its place as possible. */
final class LabelSpacing {
  private LabelSpacing() {}

  /**
   * @param wanted the place of each, in any order
   * @param gap least distance between two; less where the line is too short for all
   */
  static double[] moved(List<Double> wanted, double gap, double from, double to) {
    int count = wanted.size();
    double least = count > 1 ? Math.min(gap, (to - from) / (count - 1)) : gap;
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingDouble(wanted::get))
            .mapToInt(Integer::intValue)
            .toArray();
    double[] places = new double[count];
    double next = from;
    for (int i : order) {
      places[i] = Math.max(next, Math.min(to, wanted.get(i)));
      next = places[i] + least;
    }
    double last = to;
    for (int k = count - 1; k >= 0; k--) {
      places[order[k]] = Math.min(places[order[k]], last);
      last = places[order[k]] - least;
    }
    return Arrays.copyOf(places, count);
  }
}
