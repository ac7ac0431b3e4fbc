package thwartwise.boat;

import java.util.List;
import java.util.Optional;

/**
 * The method for one kind of measurement, or for one thing of that kind.
 *
 * @param item the name of the thing: kit, a chamber, a station or a place; empty for all of that
 *     kind
 */
public record MeasuringMethod(MeasurementKind kind, Optional<String> item, MeasuringWay way) {

  /** The way last stated for a thing, or for all of a kind. */
  public static Optional<MeasuringWay> lastWay(
      List<MeasuringMethod> said, MeasurementKind kind, Optional<String> item) {
    return said.stream()
        .filter(m -> m.kind == kind && m.item.equals(item))
        .map(MeasuringMethod::way)
        .reduce((earlier, later) -> later);
  }
}
