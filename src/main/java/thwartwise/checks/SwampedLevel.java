package thwartwise.checks;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.Pose;
import thwartwise.boat.HullForm;
import thwartwise.geometry.Vector3;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Swamped with the crew seated, does the boat lie level: not heeled, one end out, the other near?
 */
public record SwampedLevel(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return true;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    Equilibria poses = Equilibrium.from(trial.swamped(Optional.empty()));
    HullForm form = trial.craft().form();
    double loss = trial.allowance().freeboardLoss();
    return List.of(
        reading(
            "swamped, heel",
            Unit.DEGREE,
            false,
            limit("swamped-heel"),
            worst(poses, p -> Math.abs(p.heel()), true),
            trial,
            poses),
        reading(
            "swamped, higher end above the water",
            Unit.METRE,
            true,
            limit("swamped-end-above"),
            worst(poses, p -> Math.max(aft(form, p), fore(form, p)) - loss, false),
            trial,
            poses),
        reading(
            "swamped, lower end under the water",
            Unit.METRE,
            false,
            limit("swamped-end-depth"),
            worst(poses, p -> loss - Math.min(aft(form, p), fore(form, p)), true),
            trial,
            poses));
  }

  private Limit limit(String name) {
    return rules.limit(name);
  }

  private static OptionalDouble worst(
      Equilibria poses, ToDoubleFunction<Pose> value, boolean greatest) {
    if (!poses.allStable()) {
      return OptionalDouble.empty();
    }
    var values = poses.reached().stream().mapToDouble(value);
    return greatest ? values.max() : values.min();
  }

  private static double aft(HullForm form, Pose pose) {
    return highest(form.aftRail(), pose);
  }

  private static double fore(HullForm form, Pose pose) {
    return highest(form.foreRail(), pose);
  }

  private static double highest(List<Vector3> points, Pose pose) {
    return points.stream().mapToDouble(pose::above).max().orElseThrow();
  }

  private static Reading reading(
      String check,
      Unit unit,
      boolean atLeast,
      Limit limit,
      OptionalDouble value,
      Trial trial,
      Equilibria poses) {
    double si = unit == Unit.DEGREE ? Math.toRadians(limit.value()) : limit.value();
    String note = note(poses);
    boolean clear = !atLeast && unit == Unit.METRE && value.orElse(0) < 0;
    return new Reading(
        check,
        value,
        poses.assessed(),
        si,
        atLeast,
        unit,
        limit.cited(),
        trial.condition(),
        clear && note.isEmpty() ? "minus means above the water" : note);
  }

  private static String note(Equilibria poses) {
    if (!poses.exist()) {
      return poses.noneBecause();
    }
    if (!poses.allStable()) {
      return "it does not come to a steady rest";
    }
    String word = poses.worst().orElseThrow().word();
    return word.equals("upright") ? "" : "it ends " + word;
  }
}
