package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Cleat;
import thwartwise.boat.Kit;
import thwartwise.boat.Opening;
import thwartwise.boat.Place;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.MeasurementNote.Fact;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Kit, cleats, places and openings whose position or size is unlikely. What no hull of this shape
 * can have is refused earlier, when the boat is built.
 */
final class EquipmentPlausibility {
  private static final Vector3 UP = Vector3.of(0, 0, 1);
  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);

  private final BoatModel model;
  private final Boat boat;
  private final PlausibleLimits limits;
  private final Span length;
  private final double keel;
  private final double top;
  private final List<PlausibilityFinding> found = new ArrayList<>();

  private EquipmentPlausibility(BoatModel model, PlausibleLimits limits) {
    this.model = model;
    this.boat = model.boat();
    this.limits = limits;
    this.length = model.form().outside().extent(AHEAD);
    Span height = model.form().outside().extent(UP);
    this.top = height.to();
    this.keel =
        model.form().skeg().triangleCount() == 0
            ? height.from()
            : Math.min(height.from(), model.form().skeg().extent(UP).from());
  }

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    EquipmentPlausibility doubts = new EquipmentPlausibility(model, limits);
    doubts.boat.kit().forEach(doubts::kit);
    doubts.boat.cleats().forEach(doubts::cleat);
    doubts.boat.places().forEach(doubts::place);
    doubts.boat.openings().forEach(doubts::opening);
    return doubts.found;
  }

  private void kit(Kit kit) {
    PlausibilityId id = new PlausibilityId(PlausibilityTopic.KIT, kit.name());
    Vector3 at = kit.at();
    if (at.z() < keel - limits.value("kit-under-keel")) {
      add(
          id,
          PlausibilityQuestion.metres(Measure.KIT_HEIGHT, kit.name())
              .atLeast(
                  at.z(),
                  keel,
                  limits.source("kit-under-keel"),
                  MeasurementNote.of(Fact.KIT_UNDER_KEEL)));
      return;
    }
    add(
        id,
        PlausibilityQuestion.metres(Measure.KIT_OUTSIDE, kit.name())
            .atMost(
                outside(at, limits.value("kit-above-rail")),
                limits.value("kit-outside"),
                limits.source("kit-outside"),
                MeasurementNote.of(Fact.KIT_OUTSIDE)));
  }

  private void cleat(Cleat cleat) {
    add(
        new PlausibilityId(PlausibilityTopic.CLEAT, cleat.name()),
        PlausibilityQuestion.metres(Measure.CLEAT_OUTSIDE, cleat.name())
            .atMost(
                Math.max(outside(cleat.at(), 0), keel - cleat.at().z()),
                limits.value("cleat-outside"),
                limits.source("cleat-outside"),
                MeasurementNote.of(Fact.CLEAT_OUTSIDE)));
  }

  /**
   * The distance of a point beyond the ends, the rail abreast of it, or a height above the rail,
   * the greatest of these; zero inside.
   */
  private double outside(Vector3 at, double aboveRail) {
    double ends = Math.max(length.from() - at.x(), at.x() - length.to());
    double side = Math.abs(at.y()) - Math.abs(model.form().railAt(at.x(), at.y() >= 0).y());
    double above = at.z() - top - aboveRail;
    return Math.max(0, Math.max(ends, Math.max(side, above)));
  }

  // The limits of a place are for the middle of a person, so half a seat lies beyond each; on one
  // with a length people also sit in rows.
  private void place(Place place) {
    double each = limits.value("seat-each");
    double room = (place.across().length() + each) * (place.along().length() + each) / each;
    if (place.isAboutTheMiddle() && place.across().to() > 0) {
      add(
          new PlausibilityId(PlausibilityTopic.PLACE, place.name()),
          PlausibilityQuestion.metres(Measure.PLACE_REACH, place.name())
              .atLeast(
                  place.across().to(),
                  limits.value("seat-out-least"),
                  limits.source("seat-out-least"),
                  MeasurementNote.of(Fact.SEAT_ON_MIDDLE_LINE)));
    }
    add(
        new PlausibilityId(PlausibilityTopic.PLACE, place.name()),
        PlausibilityQuestion.metres(Measure.PLACE_LENGTH, place.name())
            .atMost(
                place.people() * each,
                room,
                limits.source("seat-each"),
                MeasurementNote.of(Fact.SEAT_TOO_SHORT)));
  }

  /**
   * Only what is closed under way is assumed to keep water out, and a large lid low down does not.
   */
  private void opening(Opening opening) {
    if (opening.closedBy().isEmpty() || opening.into().isPresent()) {
      return;
    }
    double height = opening.middle().z() - keel;
    double low = limits.value("low-opening-share") * (top - keel);
    if (height < low) {
      add(
          new PlausibilityId(PlausibilityTopic.OPENING, opening.name()),
          PlausibilityQuestion.metres(Measure.LOW_OPENING_WIDTH, opening.name())
              .atMost(
                  opening.width(),
                  limits.value("low-opening-width"),
                  limits.source("low-opening-width"),
                  MeasurementNote.of(Fact.OPENING_TOO_LOW)));
    }
  }

  private void add(PlausibilityId id, PlausibilityQuestion.Answer answer) {
    if (!answer.met() && found.stream().noneMatch(f -> f.id().equals(id))) {
      found.add(answer.about(id, boat.confirmedMeasurements()));
    }
  }
}
