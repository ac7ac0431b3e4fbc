package thwartwise.files;

import java.util.Optional;
import thwartwise.boat.Propulsion;
import tools.jackson.databind.node.ObjectNode;

/** How the boat is driven. */
final class PropulsionFields {
  static final String[] KEYS = {"kind", "kilowatts"};
  private static final Choice<String> KINDS = Choice.of(word -> word, "manual", "outboard");
  private static final String KIND = "Write manual for oars or paddles, outboard for a motor.";
  private static final String KILOWATTS = "Read the power on the motor and write kilowatts.";

  private PropulsionFields() {}

  static Propulsion read(Fields propulsion) {
    if (propulsion.oneOf("kind", KINDS, KIND).equals("outboard")) {
      double kilowatts = propulsion.number("kilowatts", Quantity.KILOWATTS, KILOWATTS);
      return new Propulsion.Outboard(Typed.scaled(kilowatts, 3));
    }
    propulsion.refuse("kilowatts", "oars have none. Take it out, or write \"kind\": \"outboard\".");
    return new Propulsion.Manual();
  }

  static Optional<ObjectNode> write(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Outboard outboard) {
      return Optional.of(
          JsonText.object()
              .put("kind", "outboard")
              .put("kilowatts", Typed.scaled(outboard.power(), -3)));
    }
    return propulsion instanceof Propulsion.Manual
        ? Optional.of(JsonText.object().put("kind", "manual"))
        : Optional.empty();
  }
}
