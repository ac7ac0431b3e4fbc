package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.LooseWater;
import thwartwise.boat.BoatModel;
import thwartwise.geometry.Box;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** How much rain does the boat take, left at its mooring with nobody in it? */
public record RainAtTheMooring(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    LoadedBoat moored = boat.empty(Act.LEFT_AT_THE_MOORING);
    LooseWater water = moored.looseWater();
    double area = open(boat.model());
    Limit limit = rules.limit("rain");
    double trouble =
        moored
            .waterLimits(Bay.WHOLE, limit.value() / 1000 * area)
            .trouble()
            .orElse(water.capacity(Bay.WHOLE));
    return List.of(
        new CheckReading(
            CheckQuestion.of(CheckId.RAIN_AT_THE_MOORING, Measure.RAIN),
            Margin.atLeast(
                limit.value() / 1000, OptionalDouble.of(trouble / area), Unit.MILLIMETRE),
            true,
            limit.cited(),
            moored.loadCase(),
            new Note.RainTaken(trouble, area)));
  }

  /** The area that takes rain: the plan inside the rail without the decked lengths, m². */
  private static double open(BoatModel model) {
    Vector3 up = Vector3.of(0, 0, 1);
    Solid outside = model.form().outside();
    double covered = 0;
    for (Span deck : model.boat().hull().decked()) {
      covered += Profile.of(outside.within(new Box(deck, Span.ALL, Span.ALL)), up).area();
    }
    return Math.max(1e-6, Profile.of(outside, up).area() - covered);
  }
}
