package thwartwise.checks;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Does the swamped boat float level with the crew seated: little heel, one end out of the water,
 * the other near the surface?
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

  /** No readings for a boat that people hold on to from the water. */
  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return SwampedCrew.holdsOn(boat.model(), rules) ? List.of() : seated(boat);
  }

  /** The readings of a seated crew, even for a boat that is meant to be held on to. */
  List<CheckReading> seated(LoadedBoat boat) {
    Equilibria poses = boat.swampedRest(List.of());
    HullForm form = boat.model().form();
    double loss = boat.allowance().freeboardLoss();
    return List.of(
        heel(rules, Measure.HEEL, "swamped-heel", boat, poses),
        reading(
            Measure.HIGHER_END,
            true,
            rules.limit("swamped-end-above"),
            ends(StableRest.least(poses, p -> Math.max(aft(form, p), fore(form, p)) - loss), poses),
            boat,
            poses),
        reading(
            Measure.LOWER_END,
            false,
            rules.limit("swamped-end-depth"),
            ends(
                StableRest.greatest(poses, p -> loss - Math.min(aft(form, p), fore(form, p))),
                poses),
            boat,
            poses));
  }

  private static CheckQuestion asked(Measure measure) {
    return CheckQuestion.of(CheckId.SWAMPED_LEVEL, measure);
  }

  private static CheckReading heel(
      RuleSet rules, Measure measure, String limit, LoadedBoat boat, Equilibria poses) {
    OptionalDouble heel = StableRest.greatest(poses, StableRest::heel);
    return angle(rules, asked(measure), limit, heel, boat, poses);
  }

  /** The greatest angle from upright over its poses, heel and trim together. */
  static CheckReading outOfUpright(
      RuleSet rules, CheckQuestion question, String limit, LoadedBoat boat, Equilibria poses) {
    return angle(rules, question, limit, StableRest.greatest(poses, Pose::tilt), boat, poses);
  }

  private static CheckReading angle(
      RuleSet rules,
      CheckQuestion question,
      String limit,
      OptionalDouble value,
      LoadedBoat boat,
      Equilibria poses) {
    Limit most = rules.limit(limit);
    return new CheckReading(
        question,
        Margin.atMost(Math.toRadians(most.value()), value, Unit.DEGREE),
        poses.assessed(),
        most.cited(),
        boat.loadCase(),
        Note.of(poses));
  }

  /** The ends; empty where the boat is not upright, because it then has no higher and lower end. */
  private static OptionalDouble ends(OptionalDouble height, Equilibria poses) {
    return poses.allUpright() ? height : OptionalDouble.empty();
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

  private static CheckReading reading(
      Measure measure,
      boolean atLeast,
      Limit limit,
      OptionalDouble value,
      LoadedBoat boat,
      Equilibria poses) {
    Note note = Note.of(poses);
    boolean clear = !atLeast && value.orElse(0) < 0;
    return new CheckReading(
        asked(measure),
        new Margin(value, limit.value(), atLeast, Unit.METRE),
        poses.assessed(),
        limit.cited(),
        boat.loadCase(),
        clear && note.isNone() ? Note.of(Note.Fact.ABOVE_THE_WATER_IS_NEGATIVE) : note);
  }
}
