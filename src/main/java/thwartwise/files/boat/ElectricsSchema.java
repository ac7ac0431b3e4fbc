package thwartwise.files.boat;

import static thwartwise.files.boat.SchemaPart.list;
import static thwartwise.files.boat.SchemaPart.text;

import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.WireProperties;
import tools.jackson.databind.node.ObjectNode;

/** The schema of the electrical equipment; {@link ElectricsCodec} reads and writes it. */
final class ElectricsSchema {
  private ElectricsSchema() {}

  static ObjectNode electrics() {
    return new SchemaPart()
        .optional("battery", battery())
        .optional("motor", inKit().optional(ElectricalProperties.OF_MOTOR).object())
        .optional("runs", list(run(), 0))
        .optional(
            "panel",
            inKit()
                .required(ElectricalProperties.WATTS)
                .optional(ElectricalProperties.OF_PANEL)
                .object())
        .optional(ElectricalProperties.OF_SYSTEM)
        .optional("mainWire", new SchemaPart().optional(WireProperties.OF_MAIN_WIRE).object())
        .optional("circuits", list(circuit(), 0))
        .object();
  }

  private static SchemaPart inKit() {
    return new SchemaPart().optional("kit", text("The name it has among the kit."));
  }

  private static ObjectNode battery() {
    return new SchemaPart()
        .required("kit", text("The name it has among the kit."))
        .required(ElectricalProperties.VOLTS)
        .required(ElectricalProperties.CHARGE)
        .optional(ElectricalProperties.OF_BATTERY)
        .object();
  }

  private static ObjectNode run() {
    return new SchemaPart()
        .required("setting", text("What the motor's handle stood at."))
        .required(ElectricalProperties.DISTANCE)
        .required(ElectricalProperties.TIME_THERE)
        .required(ElectricalProperties.TIME_BACK)
        .optional(ElectricalProperties.OF_RUN)
        .object();
  }

  private static ObjectNode circuit() {
    return BoatSchema.named(new SchemaPart())
        .required(WireProperties.USE)
        .required(WireProperties.CURRENT)
        .required(WireProperties.LENGTH)
        .optional(WireProperties.OF_CIRCUIT)
        .object();
  }
}
