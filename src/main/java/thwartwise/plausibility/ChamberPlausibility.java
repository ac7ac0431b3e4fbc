package thwartwise.plausibility;

import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Space;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.MeasurementNote.Fact;
import thwartwise.checks.Unit;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Chambers into which more was poured than there is room for: within their walls, or in the whole
 * boat. The smaller volume counts in any case, but the walls may be those of another place.
 */
record ChamberPlausibility(BoatModel model, PlausibleLimits limits) {
  /** Seconds. */
  private static final double DAY = 86_400;

  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    ChamberPlausibility doubts = new ChamberPlausibility(model, limits);
    return model.spaces().stream()
        .flatMap(space -> Stream.concat(doubts.of(space).stream(), doubts.testOf(space).stream()))
        .toList();
  }

  private Optional<PlausibilityFinding> of(Space space) {
    return space
        .part()
        .measuredVolume()
        .map(poured -> answer(space, poured))
        .filter(answer -> !answer.met())
        .map(
            answer ->
                answer.about(
                    new PlausibilityId(PlausibilityTopic.CHAMBER, space.name()),
                    model.boat().confirmedMeasurements()));
  }

  /** A leak test in the future, which does not count; most often the year is wrong. */
  private Optional<PlausibilityFinding> testOf(Space space) {
    return space
        .part()
        .test()
        .filter(test -> test.date().isAfter(model.today()))
        .map(
            test ->
                PlausibilityQuestion.of(Measure.LEAK_TEST_AGE, Unit.DAY)
                    .about(space.name())
                    .atLeast(
                        DAY * ChronoUnit.DAYS.between(test.date(), model.today()),
                        0,
                        "a test that counts has been made (judgement)",
                        new MeasurementNote.LeakTestToCome(test.date().toString())))
        .map(
            answer ->
                answer.about(
                    new PlausibilityId(PlausibilityTopic.LEAK_TEST, space.name()),
                    model.boat().confirmedMeasurements()));
  }

  private PlausibilityQuestion.Answer answer(Space space, double poured) {
    double drawn = space.solid().volume();
    double room = model.form().inside().volume();
    double least = limits.value("poured-over-drawn-least") * drawn;
    PlausibilityQuestion asked =
        PlausibilityQuestion.of(Measure.POURED_VOLUME, Unit.LITRE).about(space.name());
    if (poured < least) {
      return asked.atLeast(
          poured,
          least,
          limits.source("poured-over-drawn-least"),
          MeasurementNote.of(Fact.POURED_TOO_LITTLE));
    }
    return asked.atMost(
        poured,
        Math.min(limits.value("poured-over-drawn-most") * drawn, room),
        limits.source("poured-over-drawn-most"),
        MeasurementNote.of(Fact.POURED_TOO_MUCH));
  }
}
