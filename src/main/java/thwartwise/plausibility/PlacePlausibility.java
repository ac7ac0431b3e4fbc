package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Chamber;
import thwartwise.boat.NamedEnd;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.MeasurementNote.Fact;
import thwartwise.checks.Unit;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Places whose position along the boat is unlikely: with a chamber in the back of the person, in
 * another part of the boat than the one they are named for, off the box of their name, or on top of
 * another. One finding for each place.
 */
final class PlacePlausibility {
  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);

  private final BoatModel model;
  private final PlausibleLimits limits;
  private final Span hull;

  private PlacePlausibility(BoatModel model, PlausibleLimits limits) {
    this.model = model;
    this.limits = limits;
    this.hull = model.form().outside().extent(AHEAD);
  }

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    PlacePlausibility doubts = new PlacePlausibility(model, limits);
    List<PlausibilityFinding> found = new ArrayList<>();
    for (Place place : model.boat().places()) {
      doubts
          .answer(place)
          .map(
              a ->
                  a.about(
                      new PlausibilityId(PlausibilityTopic.PLACE_ALONG, place.name()),
                      model.boat().confirmedMeasurements()))
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<PlausibilityQuestion.Answer> answer(Place place) {
    return atAnEnd(place)
        .or(() -> namedForAnotherPart(place))
        .or(() -> offItsBox(place))
        .or(() -> onTopOfAnother(place));
  }

  private Optional<PlausibilityQuestion.Answer> atAnEnd(Place place) {
    double least = limits.value("seat-from-end");
    double aft = place.along().from() - hull.from();
    double fore = hull.to() - place.along().to();
    return doubtful(
        PlausibilityQuestion.metres(Measure.PLACE_FROM_END, place.name())
            .atLeast(
                Math.min(aft, fore),
                least,
                limits.source("seat-from-end"),
                MeasurementNote.of(Fact.PLACE_AT_AN_END)));
  }

  private Optional<PlausibilityQuestion.Answer> namedForAnotherPart(Place place) {
    return NamedEnd.of(place.name())
        .flatMap(
            end -> {
              PlausibilityQuestion asked =
                  PlausibilityQuestion.of(Measure.PLACE_ALONG, Unit.PERCENT).about(place.name());
              double share = (place.x() - hull.from()) / hull.length();
              String limit = end == NamedEnd.MIDDLE ? "middle-place-least" : "fore-place-least";
              double least = limits.value(limit);
              MeasurementNote note = new MeasurementNote.NamedForEnd(end);
              boolean low = end == NamedEnd.FORE || end == NamedEnd.MIDDLE && share < 0.5;
              return doubtful(
                  low
                      ? asked.atLeast(share, least, limits.source(limit), note)
                      : asked.atMost(share, 1 - least, limits.source(limit), note));
            });
  }

  /** A seat named as the box under it is on that box. */
  private Optional<PlausibilityQuestion.Answer> offItsBox(Place place) {
    return model.boat().chambers().stream()
        .filter(c -> c.name().equalsIgnoreCase(place.name()))
        .findFirst()
        .flatMap(
            box ->
                doubtful(
                    PlausibilityQuestion.metres(Measure.PLACE_FROM_CHAMBER, place.name())
                        .atMost(
                            distance(place.x(), box),
                            limits.value("place-from-its-box"),
                            limits.source("place-from-its-box"),
                            MeasurementNote.of(Fact.PLACE_OFF_ITS_CHAMBER))));
  }

  private static double distance(double x, Chamber box) {
    Span along = box.box().x();
    return Math.max(0, Math.max(along.from() - x, x - along.to()));
  }

  /** Benches may cross a thwart, and a place to kneel may be before one. */
  private Optional<PlausibilityQuestion.Answer> onTopOfAnother(Place place) {
    return model.boat().places().stream()
        .takeWhile(other -> other != place)
        .filter(other -> isThwart(place) && isThwart(other))
        .filter(other -> place.across().overlaps(other.across()))
        .filter(other -> Math.abs(place.x() - other.x()) < limits.value("places-apart"))
        .findFirst()
        .map(
            other ->
                PlausibilityQuestion.metres(Measure.PLACES_APART, place.name(), other.name())
                    .atLeast(
                        Math.abs(place.x() - other.x()),
                        limits.value("places-apart"),
                        limits.source("places-apart"),
                        MeasurementNote.of(Fact.PLACE_ON_ANOTHER)));
  }

  private static boolean isThwart(Place place) {
    return !place.hasLength() && place.posture() == Posture.SITTING;
  }

  private static Optional<PlausibilityQuestion.Answer> doubtful(
      PlausibilityQuestion.Answer answer) {
    return Optional.of(answer).filter(a -> !a.met());
  }
}
