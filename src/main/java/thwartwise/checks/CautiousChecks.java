package thwartwise.checks;

import java.util.List;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.ObservedTrial;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/** The checks of the cautious default set, quick ones first so that a search fails early. */
public final class CautiousChecks {
  private CautiousChecks() {}

  /** The checks of one boat, without those that a trial in knee-deep water has answered. */
  public static List<Check> of(RuleSet rules, BoatModel model) {
    return model
        .observedTrial()
        .map(seen -> of(rules).stream().map(check -> unless(seen, check)).toList())
        .orElseGet(() -> of(rules));
  }

  private static Check unless(ObservedTrial seen, Check check) {
    return check.role() == Role.LIMITS_CREW && check.aboutSwamped()
        ? new ObservedTrialExemption(check, seen)
        : check;
  }

  public static List<Check> of(RuleSet rules) {
    return List.of(
        new FreeboardAtRest(rules),
        new ThreeFifthsToOneSide(rules),
        new StiffOffTheMiddle(rules, false),
        new SwampedLift(rules),
        new OneChamberLost(rules),
        new SwampedLevel(rules),
        new SwampedMargin(rules),
        new HardAgainstOneSide(rules),
        new OnePersonStanding(rules),
        new SittingUp(rules),
        new SuddenShift(rules),
        new StiffOffTheMiddle(rules, true),
        new LeaningOut(rules),
        new ClimbingIn(rules),
        new Anchoring(rules, true),
        new HatchLeftOpen(rules),
        new ChamberHoled(rules),
        new SittingInItSwamped(rules),
        new Kneeling(rules),
        new ShiftOverTime(rules),
        new LowSide(rules),
        new Anchoring(rules, false),
        new GreatestPull(rules),
        new WindOnTheBeam(rules),
        new MotorPush(rules),
        new WaterInTheBilge(rules),
        new BilgeBailing(rules),
        new RainAtTheMooring(rules),
        new DrainOpen(rules),
        new LeakingSeams(rules),
        new ChambersLost(rules),
        new HoldingOnToOneSide(rules),
        new Bailing(rules),
        new TurningBack(rules),
        new GettingBackIn(rules));
  }

  /**
   * A check of the swamped boat that takes no reading for people who took part in a trial in
   * knee-deep water. With the kit as listed and nothing else aboard, the observation overrides the
   * calculation.
   */
  private record ObservedTrialExemption(Check check, ObservedTrial trial) implements Check {
    @Override
    public Role role() {
      return check.role();
    }

    @Override
    public boolean aboutSwamped() {
      return check.aboutSwamped();
    }

    @Override
    public boolean byVolumesAlone() {
      return check.byVolumesAlone();
    }

    @Override
    public List<CheckReading> readings(LoadedBoat boat) {
      Loading loading = boat.loading();
      return loading.extra().isEmpty() && trial.covers(loading.people())
          ? List.of()
          : check.readings(boat);
    }
  }
}
