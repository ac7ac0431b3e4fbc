package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.walk.engine.Replay;

/**
 * Masses that nobody weighed, as the answers themselves say: a guess, or what is usual. They may be
 * off by more than what was weighed and not said how.
 */
public final class GuessedMasses {
  private GuessedMasses() {}

  /** The boat, saying so of each of them. */
  public static Boat withGuesses(Replay replay, Boat boat) {
    List<MeasuringMethod> methods = new ArrayList<>(boat.methods());
    way(replay, "hull.mass")
        .map(way -> new MeasuringMethod(MeasurementKind.HULL_WEIGHT, Optional.empty(), way))
        .ifPresent(methods::add);
    for (int i = 0; i < boat.kit().size(); i++) {
      Optional<String> item = Optional.of(boat.kit().get(i).name());
      way(replay, "kit." + (i + 1) + ".mass")
          .map(way -> new MeasuringMethod(MeasurementKind.KIT_WEIGHTS, item, way))
          .ifPresent(methods::add);
    }
    return boat.withMethods(methods);
  }

  /** Another mass of the hull: what was said of how the last one was found no longer holds. */
  public static Boat weighedAgain(Replay replay, String key, Boat boat) {
    List<MeasuringMethod> methods = new ArrayList<>(boat.methods());
    methods.removeIf(method -> method.kind() == MeasurementKind.HULL_WEIGHT);
    way(replay, key)
        .map(way -> new MeasuringMethod(MeasurementKind.HULL_WEIGHT, Optional.empty(), way))
        .ifPresent(methods::add);
    return boat.withMethods(methods);
  }

  /** A typed guess of a mass is counted heavier; what is usual is taken as it stands. */
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
