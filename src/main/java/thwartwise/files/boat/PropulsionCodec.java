package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Propulsion;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.PlainNumber;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** How the boat is driven. */
final class PropulsionCodec {
  static final String[] KEYS = {"kind", "kilowatts"};
  private static final WordChoice<String> KINDS =
      WordChoice.of(word -> word, "manual", "outboard", "sail", "tow");
  private static final String KIND =
      "Write manual for oars or paddles, outboard for a motor, sail or tow for those.";
  private static final String KILOWATTS = "Read the power on the motor and write kilowatts.";

  private PropulsionCodec() {}

  /** What a file may say. */
  static List<String> kinds() {
    return KINDS.words();
  }

  static Propulsion read(ObjectReader propulsion) {
    String kind = propulsion.oneOf("kind", KINDS, KIND);
    if (kind.equals("outboard")) {
      double kilowatts = propulsion.number("kilowatts", BoatQuantity.KILOWATTS, KILOWATTS);
      return new Propulsion.Outboard(PlainNumber.scaled(kilowatts, 3));
    }
    propulsion.refuse(
        "kilowatts",
        (kind.equals("manual") ? "oars have" : "\"" + kind + "\" has")
            + " none. Take it out, or write \"kind\": \"outboard\".");
    return without(kind);
  }

  private static Propulsion without(String kind) {
    return switch (kind) {
      case "sail" -> new Propulsion.Sail();
      case "tow" -> new Propulsion.Tow();
      default -> new Propulsion.Manual();
    };
  }

  static Optional<ObjectNode> write(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Outboard outboard) {
      return Optional.of(
          JsonText.object()
              .put("kind", "outboard")
              .put("kilowatts", PlainNumber.scaled(outboard.power(), -3)));
    }
    return word(propulsion).map(kind -> JsonText.object().put("kind", kind));
  }

  private static Optional<String> word(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Manual) {
      return Optional.of("manual");
    }
    if (propulsion instanceof Propulsion.Sail) {
      return Optional.of("sail");
    }
    return propulsion instanceof Propulsion.Tow ? Optional.of("tow") : Optional.empty();
  }
}
