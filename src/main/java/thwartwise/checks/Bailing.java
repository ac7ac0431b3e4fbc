package thwartwise.checks;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Freeboard;
import thwartwise.afloat.SwampedWater;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Swamped, with the crew in the water beside it: is the rail out, so that it can be bailed at all,
 * how many litres are in it, and how long does that take with the bailer aboard?
 */
public record Bailing(RuleSet rules) implements Check {
  private static final String UNDER = "an edge is under: the sea comes in as fast as it is bailed";

  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    Trial beside = trial.empty("everyone in the water beside it");
    Equilibria poses = beside.swampedRest(List.of());
    double loss = trial.allowance().freeboardLoss();
    OptionalDouble out =
        Steady.least(
            poses, p -> Freeboard.least(beside.craft().edges(), p.plane()).height() - loss);
    Limit limit = rules.limit("bailing-freeboard");
    Reading rail =
        new Reading(
            "swamped, lowest edge above the water for bailing",
            out,
            poses.assessed(),
            limit.value(),
            true,
            Unit.METRE,
            limit.cited(),
            beside.condition(),
            Steady.words(poses));
    Reading minutes = minutes(beside, poses);
    String no = out.isEmpty() ? Steady.words(poses) : UNDER;
    return List.of(rail, out.orElse(-1) > 0 ? minutes : minutes.without(no));
  }

  private Reading minutes(Trial beside, Equilibria poses) {
    double litres =
        1000
            * poses.reached().stream()
                .mapToDouble(p -> SwampedWater.inside(beside.looseWater(), Bay.WHOLE, p))
                .max()
                .orElse(0);
    Limit limit = rules.limit("bailing-minutes");
    Optional<Double> bailer = beside.craft().boat().bailer();
    double litresEach = bailer.map(v -> 1000 * v).orElse(rules.value("bailer"));
    double aMinute = litresEach * rules.value("bailer-fill") * rules.value("bailer-strokes");
    return new Reading(
        "swamped, bailing it out",
        OptionalDouble.of(60 * litres / aMinute),
        true,
        60 * limit.value(),
        false,
        Unit.MINUTE,
        limit.cited(),
        beside.condition(),
        String.format(
            Locale.ROOT,
            "%.0f litres with a bailer of %.1f litres%s, %.0f strokes a minute each %.0f %% full",
            Math.ceil(litres),
            litresEach,
            bailer.isPresent() ? "" : " (none was named)",
            rules.value("bailer-strokes"),
            100 * rules.value("bailer-fill")));
  }
}
