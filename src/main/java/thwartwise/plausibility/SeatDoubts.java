package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.boat.Craft;
import thwartwise.boat.Place;
import thwartwise.boat.Posture;
import thwartwise.boat.Space;
import thwartwise.checks.Unit;
import thwartwise.geometry.Box;
import thwartwise.geometry.Vector3;

/**
 * Heights of seats and of the boxes under them: nobody sits inside a sealed box, nor a few
 * centimetres above the floor. A seat written too low steadies the boat; a box written too high
 * lifts it.
 */
final class SeatDoubts {
  private static final Vector3 UP = Vector3.of(0, 0, 1);

  private final Craft craft;
  private final PlausibleLimits limits;
  private final double top;
  private final List<PlausibilityFinding> found = new ArrayList<>();

  private SeatDoubts(Craft craft, PlausibleLimits limits) {
    this.craft = craft;
    this.limits = limits;
    this.top = craft.form().outside().extent(UP).to();
  }

  static List<PlausibilityFinding> of(Craft craft, PlausibleLimits limits) {
    SeatDoubts doubts = new SeatDoubts(craft, limits);
    craft.boat().places().forEach(doubts::seat);
    craft.boat().chambers().forEach(doubts::chamber);
    return doubts.found;
  }

  private void seat(Place place) {
    Optional<Space> around = craft.spaces().stream().filter(s -> holds(s.box(), place)).findFirst();
    if (around.isPresent()) {
      inside(place, around.get());
    } else if (place.posture() == Posture.SITTING) {
      aboveTheFloor(place);
    }
  }

  /** Whether the seat's middle lies in a box, deeper under its top than the tape may be off. */
  private boolean holds(Box box, Place place) {
    Vector3 seat = Vector3.of(place.x(), place.across().middle(), place.z());
    return box.contains(seat) && place.z() < top(box) - limits.value("seat-in-box");
  }

  private double top(Box box) {
    return Math.min(top, box.z().to());
  }

  private void inside(Place place, Space around) {
    add(
        new DoubtId(Topic.SEAT, place.name()),
        metres("seat \"" + place.name() + "\", height")
            .atLeast(
                place.z(),
                top(around.box()),
                limits.source("seat-in-box"),
                String.format(
                    Locale.ROOT,
                    "that is inside the chamber \"%s\": measure the seat's height and the chamber's"
                        + " top again",
                    around.name())));
  }

  private void aboveTheFloor(Place place) {
    add(
        new DoubtId(Topic.SEAT, place.name()),
        metres("seat \"" + place.name() + "\", height above the floor")
            .atLeast(
                place.z() - craft.boat().hull().floor(),
                limits.value("seat-above-floor"),
                limits.source("seat-above-floor"),
                "measure it from the lowest point of the bottom, in centimetres or inches as asked;"
                    + " who kneels or stands there has a posture of its own"));
  }

  /** A top that stands above all of the hull is cut off there, and nobody would know. */
  private void chamber(Chamber chamber) {
    double written = chamber.box().z().to();
    if (Double.isInfinite(written)) {
      return;
    }
    add(
        new DoubtId(Topic.CHAMBER_TOP, chamber.name()),
        metres("chamber \"" + chamber.name() + "\", height of its top")
            .atMost(
                written,
                top + limits.value("chamber-above-rail"),
                limits.source("chamber-above-rail"),
                "",
                "that is above the whole hull: measure it again, or leave it out where the chamber"
                    + " reaches the rail"));
  }

  private static Asked metres(String check) {
    return new Asked(check, Unit.METRE, Asked.MEASURED);
  }

  private void add(DoubtId id, Asked.Answer answer) {
    if (!answer.met()) {
      found.add(answer.about(id, craft.boat().kept()));
    }
  }
}
