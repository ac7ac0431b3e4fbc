package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.boat.Propulsion;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ObjectNode;

/** The drive of the boat. */
final class PropulsionCodec {
  static final String[] KEYS = Property.keys(PartProperties.OF_PROPULSION);

  private PropulsionCodec() {}

  static Propulsion read(ObjectReader propulsion) {
    Propulsion.Kind kind = propulsion.required(PartProperties.DRIVE);
    if (kind == Propulsion.Kind.OUTBOARD) {
      return new Propulsion.Outboard(propulsion.required(PartProperties.KILOWATTS));
    }
    propulsion.refuse(
        "kilowatts",
        (kind == Propulsion.Kind.MANUAL ? "oars have" : "\"" + kind.word() + "\" has")
            + " none. Take it out, or write \"kind\": \"outboard\".");
    return switch (kind) {
      case SAIL -> new Propulsion.Sail();
      case TOW -> new Propulsion.Tow();
      default -> new Propulsion.Manual();
    };
  }

  /** Nothing, if nobody named it. */
  static Optional<ObjectNode> write(Propulsion propulsion) {
    ObjectNode node = JsonText.object();
    PartProperties.OF_PROPULSION.forEach(each -> JsonText.put(node, each, propulsion));
    return node.isEmpty() ? Optional.empty() : Optional.of(node);
  }
}
