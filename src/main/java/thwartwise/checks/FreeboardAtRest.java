package thwartwise.checks;

import java.util.List;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.LowestEdge;
import thwartwise.loadcase.UsualPosture;
import thwartwise.rules.Canoe;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** With everyone seated, how far is the lowest rail or opening above the water? */
public record FreeboardAtRest(RuleSet rules) implements Check {
  private static final CheckQuestion QUESTION =
      CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD);

  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    Limit limit = limitFor(boat.model().form());
    LowestEdge lowest = LowestEdge.of(UsualPosture.of(rules, boat).atRest(), boat);
    return List.of(
        new CheckReading(
            QUESTION,
            Margin.atLeast(limit.value(), lowest.height(), Unit.METRE),
            lowest.assessed(),
            limit.cited(),
            boat.loadCase(),
            Note.of(lowest)));
  }

  private Limit limitFor(HullForm form) {
    return rules.limit(Canoe.is(form, rules) ? "freeboard-at-rest-canoe" : "freeboard-at-rest");
  }
}
