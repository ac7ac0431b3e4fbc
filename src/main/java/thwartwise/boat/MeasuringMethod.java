package thwartwise.boat;

import java.util.List;
import java.util.Optional;

/**
 * How one kind of measurement was taken, or one thing of that kind.
 *
 * @param item the name of the one thing it is said of: of kit, a chamber, a station or a place;
 *     empty where it is said of all of that kind
 */
public record MeasuringMethod(MeasurementKind kind, Optional<String> item, MeasuringWay way) {

  /** What was said of a thing itself, else of all of its kind; the later word counts. */
  public static Optional<MeasuringWay> of(
      List<MeasuringMethod> said, MeasurementKind kind, String item) {
    return last(said, kind, Optional.of(item)).or(() -> last(said, kind, Optional.empty()));
  }

  private static Optional<MeasuringWay> last(
      List<MeasuringMethod> said, MeasurementKind kind, Optional<String> item) {
    return said.stream()
        .filter(m -> m.kind == kind && m.item.equals(item))
        .map(MeasuringMethod::way)
        .reduce((earlier, later) -> later);
  }
}
