package thwartwise.files.boat;

import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.MethodEvidence;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import tools.jackson.databind.node.ObjectNode;

/** The methods of measuring. */
final class MeasuringMethodCodec {
  static final String KEY = "measuredHow";
  static final String[] KEYS = {"what", "name", "how"};
  private static final WordChoice<MeasurementKind> KINDS =
      WordChoice.of(MeasurementKind::word, MeasurementKind.values());
  private static final String WHAT = "Write what was measured.";
  private static final String NAME = "Name the one thing this is said of, or leave it out.";
  private static final String HOW = "Write how it was measured.";

  private MeasuringMethodCodec() {}

  static MeasuringMethod read(ObjectReader method, Boat boat) {
    MeasurementKind kind = method.oneOf("what", KINDS, WHAT);
    return new MeasuringMethod(
        kind,
        method.optional("name").map(name -> named(method, kind, name.words(NAME), boat)),
        method.oneOf("how", ways(kind), HOW));
  }

  static WordChoice<MeasuringWay> ways(MeasurementKind kind) {
    return WordChoice.of(MeasuringWay::word, kind.ways().toArray(MeasuringWay[]::new));
  }

  private static String named(ObjectReader method, MeasurementKind kind, String name, Boat boat) {
    List<String> names = new MethodEvidence(boat).names(kind);
    if (!names.contains(name)) {
      throw method
          .spot()
          .fault(
              "nothing of the %s is called \"%s\". %s"
                  .formatted(
                      kind.word(),
                      name,
                      names.isEmpty()
                          ? "Leave the name out."
                          : "Its names: " + String.join(", ", names) + "."));
    }
    return name;
  }

  /** The methods without those for things that are no longer aboard. */
  static List<MeasuringMethod> stillThere(Boat boat) {
    return boat.methods().stream()
        .filter(
            method ->
                method.item().isEmpty()
                    || new MethodEvidence(boat).names(method.kind()).contains(method.item().get()))
        .toList();
  }

  static ObjectNode write(MeasuringMethod method) {
    ObjectNode node = JsonText.object().put("what", method.kind().word());
    method.item().ifPresent(name -> node.put("name", name));
    return node.put("how", method.way().word());
  }
}
