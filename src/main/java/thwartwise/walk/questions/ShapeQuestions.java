package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.hull.UnusableBoat;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.plausibility.Plausibility;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.report.PlausibilityWords;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions about a shape that looks wrong, asked right after the last station, while the tape is
 * at hand. The last few shapes are cached, because a walk comes to the same one at every later
 * question.
 */
public final class ShapeQuestions {
  private static final int REMEMBERED = 8;

  private final PlausibleLimits limits;
  private final Map<Shape, List<PlausibilityFinding>> known = new ConcurrentHashMap<>();

  private record Shape(List<Station> stations, UnitSystem units) {}

  public ShapeQuestions(PlausibleLimits limits) {
    this.limits = limits;
  }

  void ask(Replay replay, List<Station> stations, UnitSystem units) {
    doubts(new Shape(stations, units))
        .forEach(doubt -> replay.ask(entry(doubt, new UnitFormat(units))));
  }

  private List<PlausibilityFinding> doubts(Shape shape) {
    if (known.size() > REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(shape, this::looked);
  }

  /** What looks wrong. Stations that make no hull are refused when the boat is built. */
  private List<PlausibilityFinding> looked(Shape shape) {
    try {
      HullMeasurements hull =
          new HullMeasurements(
              1, Optional.empty(), Optional.empty(), 1000, 0.001, 0, shape.stations(), List.of());
      return Plausibility.ofShape(hull, limits.rules(), shape.units());
    } catch (UnusableBoat e) {
      return List.of();
    }
  }

  private static QuestionDefinition<Boolean> entry(PlausibilityFinding doubt, UnitFormat units) {
    List<String> how = new ArrayList<>(Question.wrapped(PlausibilityWords.sentence(doubt, units)));
    how.add("keep: it stays as typed, and its reason is asked for at the end.");
    how.add("Else type back, or list and change with a number, and measure it again.");
    return WordQuestions.choice(
            WordQuestions.bound("hull.doubt." + doubt.id().text(), doubt.measured()),
            "This looks wrong, " + PlausibilityWords.of(doubt.id()),
            ChoiceReader.of(true, "keep"))
        .how(how.toArray(String[]::new))
        .why("A wrong measurement describes another boat; nothing is recommended for that.")
        .orElse(true, "keep");
  }
}
