package thwartwise.walk.questions;

import static thwartwise.boat.MeasurementKind.KIT_WEIGHTS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.walk.engine.Replay;

/**
 * Masses that the answers mark as a guess or as usual. They may be off by more than weighed masses
 * for which no way of weighing was named.
 */
public final class GuessedMasses {
  private GuessedMasses() {}

  /** The boat with each of them marked as a guess. */
  public static Boat withGuesses(Replay replay, Boat boat) {
    List<MeasuringMethod> methods = new ArrayList<>(boat.methods());
    way(replay, "hull.mass")
        .map(way -> new MeasuringMethod(MeasurementKind.HULL_WEIGHT, Optional.empty(), way))
        .ifPresent(methods::add);
    for (int i = 0; i < boat.kit().size(); i++) {
      Optional<String> item = Optional.of(boat.kit().get(i).name());
      way(replay, "kit." + (i + 1) + ".mass")
          .map(way -> new MeasuringMethod(KIT_WEIGHTS, item, way))
          .ifPresent(methods::add);
    }
    return boat.withMethods(methods);
  }

  /** Removes how the hull's mass was found, because the hull has been weighed again. */
  public static Boat weighedAgain(Replay replay, String key, Boat boat) {
    List<MeasuringMethod> methods = new ArrayList<>(boat.methods());
    methods.removeIf(method -> method.kind() == MeasurementKind.HULL_WEIGHT);
    way(replay, key)
        .map(way -> new MeasuringMethod(MeasurementKind.HULL_WEIGHT, Optional.empty(), way))
        .ifPresent(methods::add);
    return boat.withMethods(methods);
  }

  /** The boat with one more piece of kit, saying so where its mass is a guess. */
  public static Boat added(Replay replay, String key, Kit kit, Boat boat) {
    List<MeasuringMethod> methods = new ArrayList<>(removed(kit, boat).methods());
    way(replay, key)
        .map(way -> new MeasuringMethod(KIT_WEIGHTS, Optional.of(kit.name()), way))
        .ifPresent(methods::add);
    return boat.withMethods(methods);
  }

  /** The boat without what was said of a piece of kit: another one may be called the same. */
  public static Boat removed(Kit kit, Boat boat) {
    return boat.withMethods(
        boat.methods().stream()
            .filter(m -> m.kind() != KIT_WEIGHTS || !m.item().equals(Optional.of(kit.name())))
            .toList());
  }

  /** The boat with other people: how those before were weighed does not hold for a guess. */
  public static Boat ofOthers(Replay replay, String key, Boat boat) {
    boolean guessed =
        IntStream.rangeClosed(1, boat.aboard().size())
            .anyMatch(i -> way(replay, key + "." + i + ".mass").isPresent());
    return guessed
        ? boat.withMethods(
            boat.methods().stream()
                .filter(m -> m.kind() != MeasurementKind.PEOPLE_WEIGHTS)
                .toList())
        : boat;
  }

  /** The basis of a mass. A typed guess is counted heavier, a usual mass as it stands. */
  private static Optional<MeasuringWay> way(Replay replay, String key) {
    return replay
        .basis(key)
        .filter(AnswerBasis::isGuess)
        .map(
            basis ->
                basis == AnswerBasis.GUESS_COUNTED_POORER
                    ? MeasuringWay.GUESS
                    : MeasuringWay.USUAL_VALUE);
  }
}
