package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.LooseWater;
import thwartwise.afloat.WaterLimits;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * How many litres of loose water does the boat take until the first edge is under water, and until
 * it no longer comes back? Asked of the whole boat and of each bay between thwart boxes.
 */
public record WaterInTheBilge(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    LooseWater water = boat.looseWater();
    List<Bay> bays = new ArrayList<>(List.of(Bay.WHOLE));
    bays.addAll(Bay.each(boat.model()));
    return bays.stream().flatMap(bay -> of(boat, water, bay).stream()).toList();
  }

  private List<CheckReading> of(LoadedBoat boat, LooseWater water, Bay bay) {
    WaterLimits limits = boat.waterLimits(bay, rules.value("loose-water") / 1000);
    double full = water.capacity(bay);
    return List.of(
        reading(boat, bay, Measure.FIRST_EDGE_UNDER, limits.edgeUnder(), full, edge(limits)),
        reading(
            boat,
            bay,
            Measure.NO_LONGER_COMES_BACK,
            limits.noReturn(),
            limits.edgeUnder().orElse(full),
            Note.of(
                limits.noReturn().isPresent()
                    ? Note.Fact.LIES_OVER
                    : Note.Fact.COMES_BACK_WHILE_DRY)));
  }

  private static Note edge(WaterLimits limits) {
    if (limits.edgeUnder().isEmpty()) {
      return Note.of(Note.Fact.NOT_WHEN_FULL);
    }
    return limits.edgeAt().isBlank()
        ? Note.of(Note.Fact.ROLLS_OVER)
        : new Note.FirstUnder(limits.edgeAt());
  }

  private CheckReading reading(
      LoadedBoat boat,
      Bay bay,
      Measure measure,
      OptionalDouble litres,
      double otherwise,
      Note note) {
    Limit limit = rules.limit("loose-water");
    return new CheckReading(
        new CheckQuestion(
            CheckId.LOOSE_WATER, measure, bay == Bay.WHOLE ? List.of() : List.of(bay.name())),
        Margin.atLeast(
            limit.value() / 1000, OptionalDouble.of(litres.orElse(otherwise)), Unit.LITRE),
        true,
        limit.cited(),
        boat.loadCase(),
        note);
  }
}
