package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Swamped with the crew seated, does the boat still come to rest when people are not exactly on the
 * middle line? Half of every person's weight three fifths of the way to one side, within the heel
 * of 33 CFR 183.230; and everyone a little to one side, upright.
 */
public record SwampedMargin(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return true;
  }

  /** A boat that is held on to is not sat in. */
  @Override
  public List<Reading> readings(Trial trial) {
    return SwampedCrew.holdsOn(trial.craft(), rules) ? List.of() : seated(trial);
  }

  /** The same whatever the crew is meant to do; nobody in it is nobody off the middle line. */
  List<Reading> seated(Trial trial) {
    if (trial.people().isEmpty()) {
      return List.of();
    }
    List<Trial> half =
        Moves.partly(
            trial,
            rules.value("swamped-side-share"),
            rules.value("offset-share"),
            "half of everyone's weight three fifths of the way");
    List<Trial> off = Moves.offTheMiddle(trial, rules.value("off-middle"), "everyone");
    return List.of(
        reading("swamped, half the crew's weight to one side", "swamped-side-heel", half),
        reading("swamped, everyone a little off the middle", "swamped-off-middle-heel", off));
  }

  private Reading reading(String check, String limit, List<Trial> ways) {
    Limit most = rules.limit(limit);
    Equilibria poses = Equilibria.of(ways.stream().map(w -> w.swampedRest(List.of())).toList());
    OptionalDouble value = Steady.greatest(poses, Pose::tilt);
    return new Reading(
        check,
        value,
        poses.assessed(),
        Math.toRadians(most.value()),
        false,
        Unit.DEGREE,
        most.cited(),
        ways.get(0).condition(),
        Steady.words(poses));
  }
}
