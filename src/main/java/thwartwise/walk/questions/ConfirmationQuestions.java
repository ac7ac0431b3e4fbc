package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.hull.UnusableBoat;
import thwartwise.measure.UnitFormat;
import thwartwise.plausibility.Plausibility;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.report.PlausibilityWords;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions about measurements that still look wrong at the end: are they right, and why? Without a
 * reason nothing is recommended. The last few boats are cached, because a walk comes to the same
 * one at every later question.
 */
public final class ConfirmationQuestions {
  private static final int REMEMBERED = 8;

  private final PlausibleLimits limits;
  private final LocalDate today;
  private final Map<Boat, List<PlausibilityFinding>> known = new ConcurrentHashMap<>();

  public ConfirmationQuestions(PlausibleLimits limits, LocalDate today) {
    this.limits = limits;
    this.today = today;
  }

  /** The masses of people for planning, where nobody was weighed. */
  public PlannedMasses plannedMasses() {
    return PlannedMasses.of(limits.rules());
  }

  public Boat confirmed(Replay replay, Boat boat) {
    List<ConfirmedMeasurement> kept = new ArrayList<>(boat.confirmedMeasurements());
    for (PlausibilityFinding doubt : doubts(boat)) {
      String about = doubt.id().text();
      kept.removeIf(k -> k.about().equals(about));
      replay
          .ask(entry(doubt, new UnitFormat(boat.units())))
          .map(reason -> new ConfirmedMeasurement(about, reason, Optional.of(doubt.measured())))
          .ifPresent(kept::add);
    }
    return boat.withConfirmedMeasurements(kept);
  }

  /**
   * Binds each reason to the value for which it was given, before the boat changes. A file written
   * by hand need not name the value.
   */
  public Boat bound(Boat boat) {
    if (boat.confirmedMeasurements().isEmpty()) {
      return boat;
    }
    Map<String, String> measured = new HashMap<>();
    all(boat).forEach(f -> measured.put(f.id().text(), f.measured()));
    return boat.withConfirmedMeasurements(
        boat.confirmedMeasurements().stream().map(k -> bound(k, measured)).toList());
  }

  private static ConfirmedMeasurement bound(
      ConfirmedMeasurement kept, Map<String, String> measured) {
    return kept.measured().isPresent()
        ? kept
        : new ConfirmedMeasurement(
            kept.about(), kept.reason(), Optional.ofNullable(measured.get(kept.about())));
  }

  private List<PlausibilityFinding> doubts(Boat boat) {
    if (known.size() > REMEMBERED) {
      known.clear();
    }
    return known.computeIfAbsent(boat, this::looked);
  }

  private List<PlausibilityFinding> looked(Boat boat) {
    return all(boat).stream().filter(PlausibilityFinding::withholds).toList();
  }

  /** What looks wrong. A boat that cannot be built is refused later, with the reason. */
  private List<PlausibilityFinding> all(Boat boat) {
    try {
      return Plausibility.of(BoatModel.of(boat, today), limits.rules());
    } catch (UnusableBoat e) {
      return List.of();
    }
  }

  private static QuestionDefinition<Optional<String>> entry(
      PlausibilityFinding doubt, UnitFormat units) {
    PlausibilityId id = doubt.id();
    String what =
        id.topic().isNamed()
            ? PlausibilityWords.of(id.topic()) + " " + WordQuestions.quoted(id.name())
            : PlausibilityWords.of(id.topic());
    List<String> how = new ArrayList<>(List.of("This looks wrong:"));
    how.addAll(Question.wrapped(PlausibilityWords.sentence(doubt, units)));
    how.add("Go back and measure it again; or say why it is right, and the page shows that.");
    return WordQuestions.remark(
            WordQuestions.bound("kept." + id.text(), doubt.measured()),
            "Kept, " + what + ", because")
        .how(how.toArray(String[]::new))
        .why("A wrong measurement describes another boat; nothing is recommended for that.")
        .orNone("not kept");
  }
}
