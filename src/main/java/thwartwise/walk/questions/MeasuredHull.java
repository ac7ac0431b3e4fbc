package thwartwise.walk.questions;

import java.util.List;
import thwartwise.boat.Assumption;
import thwartwise.hull.HullMeasurements;

/**
 * A hull and the assumptions for what nobody measured of it.
 *
 * @param assumed for the report
 */
public record MeasuredHull(HullMeasurements hull, List<Assumption> assumed) {

  public MeasuredHull {
    assumed = List.copyOf(assumed);
  }
}
