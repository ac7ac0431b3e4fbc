package thwartwise.checks;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.rules.RuleSet;

/**
 * How fast the bailer aboard moves water, by strokes a minute and how full each is.
 *
 * @param each what it holds, m³
 * @param named whether somebody said so
 */
record BailerRate(double each, boolean named, double strokes, double fill) {
  static BailerRate of(RuleSet rules, Boat boat) {
    Optional<Double> bailer = boat.bailer();
    return new BailerRate(
        bailer.orElse(rules.value("bailer") / 1000),
        bailer.isPresent(),
        rules.value("bailer-strokes"),
        rules.value("bailer-fill"));
  }

  /** s to move so many m³. */
  double time(double volume) {
    return 60 * volume / (each * fill * strokes);
  }

  Note note(double volume) {
    return new Note.Bailed(volume, each, named, strokes, fill);
  }
}
