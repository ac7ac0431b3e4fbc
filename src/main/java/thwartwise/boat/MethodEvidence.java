package thwartwise.boat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.hull.Station;

/**
 * The evidence for ways of measuring: what of a boat was measured at all. Of what nobody measured,
 * no way of measuring it counts, whatever a boat file says. That something was guessed always
 * counts.
 */
public record MethodEvidence(Boat boat) {

  /** The kinds of measurement that were taken of this boat. */
  public List<MeasurementKind> kinds() {
    return Arrays.stream(MeasurementKind.values()).filter(this::isMeasured).toList();
  }

  /** The methods stated of things that nobody measured; they count for nothing. */
  public List<MeasuringMethod> unmeasured() {
    return boat.methods().stream().filter(said -> !counts(said, said.item().orElse(""))).toList();
  }

  /** The methods that count. */
  public List<MeasuringMethod> counting() {
    return boat.methods().stream().filter(said -> counts(said, said.item().orElse(""))).toList();
  }

  /**
   * Whether what was said of a thing counts.
   *
   * @param item of which it is asked; empty for something there is only one of
   */
  private boolean counts(MeasuringMethod said, String item) {
    return said.way().isGuessed() || isMeasured(said.kind(), item);
  }

  /**
   * The way in which a thing was measured, as stated of it, else of all of its kind. Empty where a
   * way of measuring was said of what nobody measured.
   */
  public Optional<MeasuringWay> way(MeasurementKind kind, String item) {
    if (boat.methods().isEmpty()) {
      return Optional.empty();
    }
    List<MeasuringMethod> counting =
        boat.methods().stream().filter(said -> said.kind() != kind || counts(said, item)).toList();
    return MeasuringMethod.lastWay(counting, kind, Optional.of(item))
        .or(() -> MeasuringMethod.lastWay(counting, kind, Optional.empty()));
  }

  /** The names of the things of a kind of which it can be said one by one. */
  public List<String> names(MeasurementKind kind) {
    return named(kind).toList();
  }

  private Stream<String> named(MeasurementKind kind) {
    return switch (kind) {
      case KIT_WEIGHTS -> boat.kit().stream().map(Kit::name);
      case HALF_BREADTHS, BOTTOM_HEIGHTS -> boat.hull().stations().stream().map(Station::name);
      case CHAMBER_LITRES -> parts().map(ChamberPart::name);
      case SEAT_HEIGHTS -> boat.places().stream().map(Place::name);
      case HULL_WEIGHT,
          PEOPLE_WEIGHTS,
          HULL_BALANCE,
          HULL_INCLINED,
          EDGE_HEIGHTS,
          SHELL_THICKNESS,
          SOAKED_DENSITY ->
          Stream.empty();
    };
  }

  /** The names of those of them that were measured. */
  public List<String> measuredNames(MeasurementKind kind) {
    return named(kind).filter(name -> isMeasured(kind, name)).toList();
  }

  private Stream<ChamberPart> parts() {
    return boat.chambers().stream().flatMap(chamber -> chamber.parts().stream());
  }

  private boolean isMeasured(MeasurementKind kind) {
    return isMeasured(kind, "")
        && (kind != MeasurementKind.KIT_WEIGHTS || !boat.kit().isEmpty())
        && (kind != MeasurementKind.PEOPLE_WEIGHTS || !boat.aboard().isEmpty());
  }

  private boolean isMeasured(MeasurementKind kind, String item) {
    if (isSimplified() && kind != MeasurementKind.HULL_WEIGHT) {
      return false;
    }
    return switch (kind) {
      case HULL_WEIGHT -> !assumes(Assumption.HullByArea.class);
      case HULL_BALANCE, HULL_INCLINED -> boat.hull().centre().isPresent();
      case SHELL_THICKNESS ->
          !assumes(Assumption.UsualShell.class) && !assumes(Assumption.ThickShell.class);
      case SOAKED_DENSITY -> boat.hull().material().isEmpty();
      case CHAMBER_LITRES ->
          parts()
              .filter(part -> item.isEmpty() || part.name().equals(item))
              .anyMatch(part -> part.measuredVolume().isPresent());
      case KIT_WEIGHTS, PEOPLE_WEIGHTS, HALF_BREADTHS, BOTTOM_HEIGHTS, EDGE_HEIGHTS, SEAT_HEIGHTS ->
          true;
    };
  }

  /** A borrowed boat is drawn from a few dimensions. */
  private boolean isSimplified() {
    return boat.assumptions().stream()
        .anyMatch(
            a ->
                a instanceof Assumption.Simplified simplified
                    && simplified.what() == Simplification.SHORT_WALK);
  }

  private boolean assumes(Class<? extends Assumption> what) {
    return boat.assumptions().stream().anyMatch(what::isInstance);
  }
}
