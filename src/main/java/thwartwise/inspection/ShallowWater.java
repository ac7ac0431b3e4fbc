package thwartwise.inspection;

import java.time.LocalDate;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.geometry.Vector3;

/**
 * The depth of water that a boat with its motor needs, and the effect of tilting the motor.
 *
 * @param down at rest with the motor as under way
 * @param tilted the same with it tilted; empty where nobody measured how far aft it then moves
 * @param reach from the water's surface to the lowest point of the motor, m
 * @param tiltedReach the same, tilted; not over zero when it is out of the water
 * @param moment of the weight that moves aft, N·m
 * @param motorAboveBottom whether it reaches no deeper than the bottom line under way
 */
public record ShallowWater(
    RestFigures down,
    Optional<RestFigures> tilted,
    Optional<Double> reach,
    Optional<Double> tiltedReach,
    Optional<Double> moment,
    boolean motorAboveBottom) {

  private static final double GRAVITY = 9.80665;

  /** Empty where the motor is not among the kit, or where nobody measured its position. */
  public static Optional<ShallowWater> of(Boat boat, LocalDate today) {
    Optional<ElectricMotor> motor = boat.electrics().motor();
    boolean measured =
        motor.filter(m -> m.reach().or(m::tiltedReach).or(m::tiltShift).isPresent()).isPresent();
    Optional<Kit> kit =
        motor
            .flatMap(ElectricMotor::kit)
            .flatMap(name -> boat.kit().stream().filter(k -> k.name().equals(name)).findFirst());
    return measured && kit.isPresent()
        ? RestFigures.of(boat, today).map(down -> of(boat, motor.get(), kit.get(), down, today))
        : Optional.empty();
  }

  private static ShallowWater of(
      Boat boat, ElectricMotor motor, Kit kit, RestFigures down, LocalDate today) {
    Optional<RestFigures> tilted =
        motor.tiltShift().flatMap(aft -> RestFigures.of(tilted(boat, kit, aft), today));
    // Where the shift is not known the boat floats as before: the motor's own depth is still given.
    RestFigures then = tilted.orElse(down);
    double x = kit.at().x() - motor.tiltShift().orElse(0.0);
    return new ShallowWater(
        down,
        tilted,
        motor.reach().map(r -> down.depthOf(Vector3.of(kit.at().x(), kit.at().y(), -r))),
        motor.tiltedReach().map(r -> then.depthOf(Vector3.of(x, kit.at().y(), -r))),
        motor.tiltShift().map(aft -> kit.mass() * GRAVITY * aft),
        motor.reach().filter(r -> !(r > 0)).isPresent());
  }

  private static Boat tilted(Boat boat, Kit motor, double aft) {
    Kit there = motor.movedTo(motor.at().plus(Vector3.of(-aft, 0, 0)));
    return boat.withKit(boat.kit().stream().map(k -> k == motor ? there : k).toList());
  }
}
