package thwartwise.walk;

import java.util.List;
import thwartwise.boat.HullMeasurements;

/**
 * The hull with what was taken for granted because nobody measured it.
 *
 * @param assumed in words, for the report
 */
record MeasuredHull(HullMeasurements hull, List<String> assumed) {

  MeasuredHull {
    assumed = List.copyOf(assumed);
  }
}
