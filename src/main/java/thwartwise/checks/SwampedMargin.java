package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Swamped with the crew seated, does the boat still come to rest when people are not exactly on the
 * middle line? Half of every person's weight three fifths of the way to one side, within the heel
 * of 33 CFR 183.230; and everyone a little to one side, upright.
 */
public record SwampedMargin(RuleSet rules) implements Check {
  private static final CheckQuestion HALF_TO_ONE_SIDE =
      CheckQuestion.of(CheckId.SWAMPED_MARGIN, Measure.HALF_TO_ONE_SIDE);
  private static final CheckQuestion OFF_THE_MIDDLE =
      CheckQuestion.of(CheckId.SWAMPED_MARGIN, Measure.OFF_THE_MIDDLE);

  @Override
  public Role role() {
    return Role.LIMITS_CREW;
  }

  @Override
  public boolean aboutSwamped() {
    return true;
  }

  /** No readings for a boat that people hold on to from the water. */
  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return SwampedCrew.holdsOn(boat.model(), rules) ? List.of() : seated(boat);
  }

  /**
   * The readings of a seated crew, even for a boat that is meant to be held on to; none without
   * people.
   */
  List<CheckReading> seated(LoadedBoat boat) {
    if (boat.people().isEmpty()) {
      return List.of();
    }
    double off = rules.value("off-middle");
    List<LoadedBoat> half =
        PeopleMoves.partly(boat, rules.value("swamped-side-share"), rules.value("offset-share"));
    CheckReading side = reading(HALF_TO_ONE_SIDE, "swamped-side-heel", boat, half);
    boolean answered =
        boat.isHurried()
            && side.met()
            && half.stream().allMatch(way -> isFartherThan(off, boat, way));
    return List.of(
        side,
        answered
            ? side.of(OFF_THE_MIDDLE)
            : reading(
                OFF_THE_MIDDLE,
                "swamped-off-middle-heel",
                boat,
                PeopleMoves.offTheMiddle(boat, off, false)));
  }

  /**
   * Whether the first move took everyone farther than the second one does. A boat that comes to
   * rest within the smaller heel after the longer move also does after the shorter one.
   */
  private static boolean isFartherThan(double off, LoadedBoat before, LoadedBoat after) {
    return IntStream.range(0, before.people().size())
        .allMatch(i -> Math.abs(after.people().get(i).y() - before.people().get(i).y()) >= off);
  }

  private CheckReading reading(
      CheckQuestion question, String limit, LoadedBoat boat, List<LoadedBoat> ways) {
    Limit most = rules.limit(limit);
    double greatest = Math.toRadians(most.value());
    Equilibria poses = rest(boat, ways, greatest);
    OptionalDouble value = StableRest.greatest(poses, Pose::tilt);
    return new CheckReading(
        question,
        Margin.atMost(greatest, value, Unit.DEGREE),
        poses.assessed(),
        most.cited(),
        ways.get(0).loadCase(),
        Note.of(poses));
  }

  /** A hurried boat is not asked further once it has gone over. */
  private static Equilibria rest(LoadedBoat boat, List<LoadedBoat> ways, double greatest) {
    List<Equilibria> found = new ArrayList<>();
    for (LoadedBoat way : ways) {
      if (way.isOutdoneSwamped(boat)) {
        continue;
      }
      Equilibria rest = way.swampedRest(List.of());
      found.add(rest);
      if (way.isHurried() && !(StableRest.greatest(rest, Pose::tilt).orElse(Math.PI) <= greatest)) {
        break;
      }
    }
    return Equilibria.of(found);
  }
}
