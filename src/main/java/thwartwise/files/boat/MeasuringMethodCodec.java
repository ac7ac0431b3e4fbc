package thwartwise.files.boat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Kit;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.Place;
import thwartwise.hull.Station;
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
    List<String> names = names(kind, boat).toList();
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
                          : "Its names: "
                              + names.stream().collect(Collectors.joining(", "))
                              + "."));
    }
    return name;
  }

  /** The things whose methods can be given one by one. */
  private static Stream<String> names(MeasurementKind kind, Boat boat) {
    return switch (kind) {
      case KIT_WEIGHTS -> boat.kit().stream().map(Kit::name);
      case HALF_BREADTHS, BOTTOM_HEIGHTS -> boat.hull().stations().stream().map(Station::name);
      case CHAMBER_LITRES ->
          boat.chambers().stream().flatMap(c -> c.parts().stream()).map(ChamberPart::name);
      case SEAT_HEIGHTS -> boat.places().stream().map(Place::name);
      case HULL_WEIGHT,
          PEOPLE_WEIGHTS,
          HULL_BALANCE,
          HULL_INCLINED,
          EDGE_HEIGHTS,
          SHELL_THICKNESS,
          SOAKED_DENSITY ->
          Stream.empty();
    };
  }

  /** The methods without those for things that are no longer aboard. */
  static List<MeasuringMethod> stillThere(Boat boat) {
    return boat.methods().stream()
        .filter(
            method ->
                method.item().isEmpty()
                    || names(method.kind(), boat).anyMatch(method.item().get()::equals))
        .toList();
  }

  static ObjectNode write(MeasuringMethod method) {
    ObjectNode node = JsonText.object().put("what", method.kind().word());
    method.item().ifPresent(name -> node.put("name", name));
    return node.put("how", method.way().word());
  }
}
