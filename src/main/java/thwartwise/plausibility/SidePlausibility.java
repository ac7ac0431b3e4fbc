package thwartwise.plausibility;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.BoatModel;
import thwartwise.boat.NamedSide;
import thwartwise.boat.Place;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Places whose name mentions a side on which they are not: everybody there would count on the
 * middle line, or on the other side.
 */
record SidePlausibility(BoatModel model, PlausibleLimits limits) {

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    SidePlausibility doubts = new SidePlausibility(model, limits);
    return model.boat().places().stream().flatMap(p -> doubts.of(p).stream()).toList();
  }

  private Optional<PlausibilityFinding> of(Place place) {
    return NamedSide.of(place.name())
        .map(side -> answer(place, side))
        .filter(answer -> !answer.met())
        .map(
            a ->
                a.about(
                    new PlausibilityId(PlausibilityTopic.PLACE_SIDE, place.name()),
                    model.boat().confirmedMeasurements()));
  }

  private PlausibilityQuestion.Answer answer(Place place, NamedSide side) {
    return PlausibilityQuestion.metres(Measure.PLACE_SIDE, place.name())
        .atLeast(
            side.offset(place),
            limits.value("side-place-out"),
            limits.source("side-place-out"),
            new MeasurementNote.NamedForSide(place.name(), place.isAboutTheMiddle(), side));
  }
}
