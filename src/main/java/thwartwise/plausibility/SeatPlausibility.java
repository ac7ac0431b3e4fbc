package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.boat.Space;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.MeasurementNote.Fact;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Heights of seats and of the boxes under them: nobody sits inside a sealed box, nor a few
 * centimetres above the floor. A seat written too low steadies the boat; a box written too high
 * lifts it.
 */
final class SeatPlausibility {
  private static final Vector3 UP = Vector3.of(0, 0, 1);

  private final BoatModel model;
  private final PlausibleLimits limits;
  private final double top;
  private final List<PlausibilityFinding> found = new ArrayList<>();

  private SeatPlausibility(BoatModel model, PlausibleLimits limits) {
    this.model = model;
    this.limits = limits;
    this.top = model.form().outside().extent(UP).to();
  }

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    SeatPlausibility doubts = new SeatPlausibility(model, limits);
    model.boat().places().forEach(doubts::seat);
    model.boat().chambers().forEach(doubts::chamber);
    return doubts.found;
  }

  private void seat(Place place) {
    Optional<Space> around = model.spaces().stream().filter(s -> holds(s.box(), place)).findFirst();
    if (around.isPresent()) {
      inside(place, around.get());
    } else if (place.posture() == Posture.SITTING) {
      aboveTheFloor(place);
      offItsBox(place);
    }
  }

  /** Whether the seat's middle is in a box, deeper under its top than the error of the tape. */
  private boolean holds(Box box, Place place) {
    Vector3 seat = Vector3.of(place.x(), place.across().middle(), place.z());
    return box.contains(seat) && place.z() < top(box) - limits.value("seat-in-box");
  }

  private double top(Box box) {
    return Math.min(top, box.z().to());
  }

  private void inside(Place place, Space around) {
    add(
        new PlausibilityId(PlausibilityTopic.SEAT, place.name()),
        PlausibilityQuestion.metres(Measure.SEAT_HEIGHT, place.name())
            .atLeast(
                place.z(),
                top(around.box()),
                limits.source("seat-in-box"),
                new MeasurementNote.InsideChamber(around.name())));
  }

  private void aboveTheFloor(Place place) {
    tooHigh(place);
    add(
        new PlausibilityId(PlausibilityTopic.SEAT, place.name()),
        PlausibilityQuestion.metres(Measure.SEAT_ABOVE_FLOOR, place.name())
            .atLeast(
                place.z() - model.boat().hull().floor(),
                limits.value("seat-above-floor"),
                limits.source("seat-above-floor"),
                MeasurementNote.of(Fact.SEAT_NEAR_FLOOR)));
  }

  /** A seat named as the box under it is on that box, with a cushion at most. */
  private void offItsBox(Place place) {
    for (Chamber box : model.boat().chambers()) {
      if (box.name().equalsIgnoreCase(place.name())) {
        add(
            new PlausibilityId(PlausibilityTopic.SEAT, place.name()),
            PlausibilityQuestion.metres(Measure.SEAT_ABOVE_CHAMBER, place.name())
                .atMost(
                    place.z() - Math.min(top, box.box().z().to()),
                    limits.value("seat-over-its-box"),
                    limits.source("seat-over-its-box"),
                    MeasurementNote.of(Fact.SEAT_ABOVE_ITS_CHAMBER)));
      }
    }
  }

  /**
   * A seat too high to sit on is excluded from every seating, and the remaining ones may look
   * better.
   */
  private void tooHigh(Place place) {
    double floor = model.boat().hull().floor();
    double rail = model.form().railAt(place.x(), place.across().middle() >= 0).z();
    double overFloor = limits.value("seat-above-floor-most");
    double overRail = limits.value("seat-above-rail");
    boolean byRail = rail + overRail < floor + overFloor;
    add(
        new PlausibilityId(PlausibilityTopic.SEAT, place.name()),
        PlausibilityQuestion.metres(Measure.SEAT_HEIGHT, place.name())
            .atMost(
                place.z(),
                limits.seatMost(rail, floor),
                limits.source(byRail ? "seat-above-rail" : "seat-above-floor-most"),
                MeasurementNote.of(Fact.SEAT_TOO_HIGH)));
  }

  /** A top above all of the hull is cut off there, and nobody would know. */
  private void chamber(Chamber chamber) {
    double written = chamber.box().z().to();
    if (Double.isInfinite(written)) {
      return;
    }
    add(
        new PlausibilityId(PlausibilityTopic.CHAMBER_TOP, chamber.name()),
        PlausibilityQuestion.metres(Measure.CHAMBER_TOP, chamber.name())
            .atMost(
                written,
                top + limits.value("chamber-above-rail"),
                limits.source("chamber-above-rail"),
                MeasurementNote.of(Fact.CHAMBER_ABOVE_HULL)));
  }

  /** One finding for each thing, the first. */
  private void add(PlausibilityId id, PlausibilityQuestion.Answer answer) {
    if (!answer.met() && found.stream().noneMatch(f -> f.id().equals(id))) {
      found.add(answer.about(id, model.boat().confirmedMeasurements()));
    }
  }
}
