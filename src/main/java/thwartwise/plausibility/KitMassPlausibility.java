package thwartwise.plausibility;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.checks.Measure;
import thwartwise.checks.MeasurementNote;
import thwartwise.checks.Unit;
import thwartwise.geometry.Span;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;

/**
 * Kit with a mass that such a thing does not have. More weight low in the hull steadies it, so a
 * misplaced decimal point gives room for people who are not safe there.
 */
record KitMassPlausibility(BoatModel model, PlausibleLimits limits) {
  static List<PlausibilityFinding> of(BoatModel model, PlausibleLimits limits) {
    KitMassPlausibility doubts = new KitMassPlausibility(model, limits);
    return model.boat().kit().stream().flatMap(kit -> doubts.of(kit).stream()).toList();
  }

  private Optional<PlausibilityFinding> of(Kit kit) {
    PlausibilityQuestion.Answer answer = answer(kit);
    return answer.met()
        ? Optional.empty()
        : Optional.of(
            answer.about(
                new PlausibilityId(PlausibilityTopic.KIT_MASS, kit.name()),
                model.boat().confirmedMeasurements()));
  }

  private PlausibilityQuestion.Answer answer(Kit kit) {
    Propulsion driven = model.boat().propulsion();
    Span usual = limits.kitMass(kit.name(), driven);
    String source = limits.kitMassSource(kit.name(), driven);
    PlausibilityQuestion asked =
        PlausibilityQuestion.of(Measure.KIT_MASS, Unit.KILOGRAM).about(kit.name());
    MeasurementNote note =
        new MeasurementNote.UnusualMass(
            kit.mass(),
            UsualKit.withPointMoved(kit.mass(), usual)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty()));
    return kit.mass() < usual.from()
        ? asked.atLeast(kit.mass(), usual.from(), source, note)
        : asked.atMost(kit.mass(), usual.to(), source, note);
  }
}
