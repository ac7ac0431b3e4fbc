package thwartwise.walk.questions;

import java.util.List;
import thwartwise.boat.Assumption;
import thwartwise.hull.HullMeasurements;

/**
 * The hull with what was taken for granted because nobody measured it.
 *
 * @param assumed in words, for the report
 */
public record MeasuredHull(HullMeasurements hull, List<Assumption> assumed) {

  public MeasuredHull {
    assumed = List.copyOf(assumed);
  }
}
