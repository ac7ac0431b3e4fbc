package thwartwise.walk.questions;

import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.hull.Station;
import thwartwise.measure.ChoiceReader;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.rules.Canoe;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Asks whether the crew sits in the swamped boat. The crew of a canoe, known by its form, holds on
 * to it; that is not asked.
 */
public record SwampedQuestion(PlausibleLimits limits) {
  public boolean isAskedOf(List<Station> stations) {
    Outline outline = new Outline(stations);
    return !Canoe.is(outline.fore() - outline.aft(), outline.beam(), limits.rules());
  }

  public Boat asked(Replay replay, String key, Boat boat) {
    return isAskedOf(boat.hull().stations()) ? boat.whenSwamped(replay.ask(entry(key))) : boat;
  }

  private static QuestionDefinition<CrewWhenSwamped> entry(String key) {
    return WordQuestions.choice(
            key,
            "When it is swamped, people",
            ChoiceReader.of(
                    CrewWhenSwamped.SIT_IN_IT, CrewWhenSwamped.SIT_IN_IT.word(), "sit", "in it")
                .or(CrewWhenSwamped.HOLD_ON, CrewWhenSwamped.HOLD_ON.word(), "hold", "hold on"))
        .how(
            "sit in it: it must lie level with all aboard; asks most, so Enter takes it.",
            "hold on to it: it need only float, with everybody in the water.")
        .why("In cold water nobody holds on for long; only for boats meant for it.")
        .orElse(CrewWhenSwamped.SIT_IN_IT, CrewWhenSwamped.SIT_IN_IT.word());
  }
}
