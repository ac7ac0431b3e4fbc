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
import thwartwise.plausibility.Plausibility;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * What looks wrong of the whole shape is told as soon as the last station is measured, while the
 * tape is at hand. The last few shapes are remembered, as a walk comes to the same one at every
 * question after it.
 */
public final class ShapeQuestions {
  private static final int REMEMBERED = 8;

  private final PlausibleLimits limits;
  private final Map<List<Station>, List<PlausibilityFinding>> known = new ConcurrentHashMap<>();

  public ShapeQuestions(PlausibleLimits limits) {
    this.limits = limits;
  }

  void ask(Replay replay, List<Station> stations) {
    doubts(stations).forEach(doubt -> replay.ask(entry(doubt)));
  }

  private List<PlausibilityFinding> doubts(List<Station> stations) {
    if (known.size() > REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(stations, this::looked);
  }

  /** Stations that make no hull are refused when the boat is built. */
  private List<PlausibilityFinding> looked(List<Station> stations) {
    try {
      HullMeasurements hull =
          new HullMeasurements(
              1, Optional.empty(), Optional.empty(), 1000, 0.001, 0, stations, List.of());
      return Plausibility.ofShape(hull, limits.rules());
    } catch (UnusableBoat e) {
      return List.of();
    }
  }

  private static Entry<Boolean> entry(PlausibilityFinding doubt) {
    List<String> how = new ArrayList<>(Question.wrapped(doubt.sentence()));
    how.add("keep: it stays as typed, and its reason is asked for at the end.");
    how.add("Else type back, or list and change with a number, and measure it again.");
    return WordQuestions.choice(
            WordQuestions.bound("hull.doubt." + doubt.id().text(), doubt.measured()),
            "This looks wrong, " + doubt.id().words(),
            ChoiceReader.of(true, "keep"))
        .how(how.toArray(String[]::new))
        .why("What looks wrong makes another boat of it; nothing is recommended for that one.")
        .orElse(true, "keep");
  }
}
