package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.electrics.Circuit;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.ElectricalProperties;
import tools.jackson.databind.node.ObjectNode;

/** Two wires, what they feed, and what guards and switches them. */
final class CircuitFields {
  static final String[] KEYS =
      ElectricsFields.keys(ElectricalProperties.OF_CIRCUIT, "name", "awg", "switch");
  private static final String NAME = "Name what the wires feed, as in lamp.";
  private static final String AWG = "Read the gauge printed on the wire, as in 10 AWG.";
  private static final String SWITCH = "Write what switches it off, or leave it out.";

  private CircuitFields() {}

  static Circuit read(ObjectReader circuit) {
    if (circuit.has("mm2")) {
      circuit.refuse("awg", "\"mm2\" says the same. Keep one of them.");
    }
    return new Circuit(
        circuit.text("name", NAME),
        circuit.required(ElectricalProperties.USE),
        circuit.required(ElectricalProperties.CURRENT),
        circuit.required(ElectricalProperties.LENGTH),
        circuit.optional(ElectricalProperties.AREA),
        circuit.optional("awg").map(value -> value.whole(BoatQuantity.GAUGE, AWG)),
        circuit.optional(ElectricalProperties.INSULATION),
        circuit.optional(ElectricalProperties.ALONE),
        circuit.optional(ElectricalProperties.FUSE),
        circuit.optional(ElectricalProperties.FUSE_DISTANCE),
        circuit.optional(ElectricalProperties.SHEATHED),
        circuit.optional("switch").map(value -> value.words(SWITCH)),
        circuit.optional(ElectricalProperties.HOURS_A_DAY));
  }

  static ObjectNode write(Circuit circuit) {
    ObjectNode node =
        ElectricsFields.put(
            ElectricsFields.named("name", Optional.of(circuit.name())),
            ElectricalProperties.OF_CIRCUIT,
            circuit);
    circuit.gauge().ifPresent(gauge -> node.put("awg", gauge));
    circuit.switched().ifPresent(name -> node.put("switch", name));
    return node;
  }
}
