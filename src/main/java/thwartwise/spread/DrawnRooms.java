package thwartwise.spread;

import java.util.List;
import thwartwise.uncertainty.PropagatedResult;

/**
 * The rooms of figures in boats drawn at random, to second order.
 *
 * @param deviations of each measurement from its mean, in standard deviations, by boat
 * @param boats their number
 * @param rooms by figure and boat; NaN where a boat has none
 */
record DrawnRooms(
    List<PropagatedResult> results, double[][] deviations, int boats, List<double[]> rooms) {

  static DrawnRooms of(List<PropagatedResult> results, double[][] deviations, int boats) {
    return new DrawnRooms(
        results,
        deviations,
        boats,
        results.parallelStream().map(r -> r.at(deviations, boats)).toList());
  }

  /** The share of boats in which all of some figures are met. */
  double share(int[] figures) {
    int met = 0;
    for (int boat = 0; boat < boats; boat++) {
      met += allMet(figures, boat) ? 1 : 0;
    }
    return (double) met / boats;
  }

  private boolean allMet(int[] figures, int boat) {
    for (int figure : figures) {
      if (!(rooms.get(figure)[boat] >= 0)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The same boats with one measurement repeated in a better way, and its value one spread better.
   *
   * @param side to which it is better
   * @param left of its spread
   */
  DrawnRooms measuredAgain(int input, double side, double left) {
    double[][] others = deviations.clone();
    others[input] = new double[boats];
    for (int boat = 0; boat < boats; boat++) {
      others[input][boat] = side + left * deviations[input][boat];
    }
    return of(results, others, boats);
  }
}
