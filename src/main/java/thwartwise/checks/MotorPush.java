package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.boat.Propulsion;
import thwartwise.electrics.ElectricMotor;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.Disturbance;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;
import thwartwise.rules.RuleSet;

/** How far does the motor at full thrust, hard over, heel the boat? No reading without a motor. */
public record MotorPush(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    return boat.model().boat().propulsion() instanceof Propulsion.Outboard motor
        ? new HeelReadings(rules).readings(CheckId.MOTOR_HARD_OVER, bothSides(boat, motor))
        : List.of();
  }

  private List<LoadedBoat> bothSides(LoadedBoat boat, Propulsion.Outboard motor) {
    double push = push(boat, motor);
    double angle = Math.toRadians(rules.value("motor-over"));
    Vector3 at = propeller(boat);
    double lever = Lever.of(boat, at, Vector3.of(0, 1, 0));
    List<LoadedBoat> ways = new ArrayList<>();
    for (double side : List.of(1.0, -1.0)) {
      Force force = new Force(at, push * Math.cos(angle), side * push * Math.sin(angle));
      LoadCaseStep over =
          new LoadCaseStep.MotorPush(push, lever, Optional.of(PeopleMoves.side(side)));
      ways.add(boat.after(Disturbance.withForces(over, boat.people(), List.of(force))));
    }
    return ways;
  }

  /** The thrust, N, by its power, or by its plate where that is more. */
  private double push(LoadedBoat boat, Propulsion.Outboard motor) {
    double byPower = rules.value("motor-thrust") * Math.cbrt(motor.power() * motor.power());
    return Math.max(byPower, plate(boat).flatMap(ElectricMotor::thrust).orElse(0.0));
  }

  private static Optional<ElectricMotor> plate(LoadedBoat boat) {
    return boat.model().boat().electrics().motor();
  }

  /**
   * The propeller is under the transom, or at the measured depth of the motor where that is deeper.
   */
  private Vector3 propeller(LoadedBoat boat) {
    HullForm form = boat.model().form();
    double foot = form.outside().within(aftEnd(form)).extent(Vector3.of(0, 0, 1)).from();
    double usual = foot - rules.value("motor-depth");
    double measured = -plate(boat).flatMap(ElectricMotor::reach).orElse(-usual);
    Vector3 stern = PeopleMoves.middle(form.aftRail());
    return Vector3.of(stern.x(), 0, Math.min(usual, measured));
  }

  private static Box aftEnd(HullForm form) {
    double aft = form.outside().extent(Vector3.of(1, 0, 0)).from();
    return new Box(new Span(aft, aft + 0.1 * form.length()), Span.ALL, Span.ALL);
  }
}
