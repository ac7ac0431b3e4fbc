package thwartwise.walk.borrowed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.boat.Assumption.Simplification;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Vector3;
import thwartwise.measured.BoatQuantity;
import thwartwise.rules.MotorWeights;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.questions.Outline;

/** The kit of a borrowed boat: a motor by its power, everything else by one weight. */
record BorrowedKit(
    Replay replay, QuantityQuestions quantities, Outline outline, List<Assumption> assumed) {
  /** The height above the bottom at which things on the floor have their middle, m (judgement). */
  private static final double LIES_HIGH = 0.15;

  Propulsion propulsion() {
    Optional<Double> power =
        replay.ask(
            quantities
                .power("short.motor", "Motor on the stern, its power")
                .how(
                    "From its plate: 2.2 kW, 3 hp, 400 W. no when there is none. In a row: then the",
                    "weight of all else that is carried, in one bag on the scales; 0 for nothing.")
                .why("A motor weighs on the stern, and rules ask for its power.")
                .within(quantities.usual(BoatQuantity.KILOWATTS))
                .orNone("none")
                .withoutDefault()
                .row("Motor and kit", List.of("its power or no", "all else together")));
    return power.<Propulsion>map(Propulsion.Outboard::new).orElseGet(Propulsion.Manual::new);
  }

  List<Kit> kit(Propulsion propulsion) {
    List<Kit> kit = new ArrayList<>();
    if (propulsion instanceof Propulsion.Outboard motor) {
      kit.add(motor(motor.power()));
    }
    double other = other();
    if (other > 0) {
      Vector3 middle =
          Vector3.of((outline.aft() + outline.fore()) / 2, 0, outline.lowest() + LIES_HIGH);
      kit.add(new Kit("other kit", other, middle, Optional.empty(), false, Optional.empty()));
      assumed.add(new Assumption.KitAsOneWeight(LIES_HIGH));
    }
    return kit;
  }

  private Kit motor(double power) {
    assumed.add(new Assumption.Simplified(Simplification.MOTOR_WEIGHT_BY_POWER));
    Vector3 transom = Vector3.of(outline.aft(), 0, outline.highest());
    double mass = MotorWeights.equippedMass(power);
    return new Kit("motor", mass, transom, Optional.empty(), false, Optional.empty());
  }

  private double other() {
    return replay.ask(
        quantities
            .mass("short.kit", "All else that is carried, together")
            .how("Oars, anchor, line, bags, bottles: on the scales in one bag; 0 for nothing.")
            .why("The heavier the kit, the fewer people.")
            .within(quantities.mass(0, 200, "mass of what such a boat carries").unlessInsisted()));
  }
}
