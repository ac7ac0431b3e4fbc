package thwartwise.boat;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Filling.SealTest;
import thwartwise.electrics.Battery;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * A short text that changes when a measurement of a chamber, opening, piece of kit, battery, cleat
 * or person changes. Boat files store it with each answer about that thing, so the text below is a
 * file format: a new component of a record is added at the end, and only where it is stated, so
 * that a thing is not looked at again without a reason.
 */
final class ItemFingerprint {
  private ItemFingerprint() {}

  /** The fingerprint of everything in the boat with this name. */
  static String of(Boat boat, String name) {
    String measured =
        Stream.of(
                boat.chambers().stream()
                    .filter(c -> c.name().equals(name))
                    .map(ItemFingerprint::chamber),
                boat.openings().stream()
                    .filter(o -> o.name().equals(name))
                    .map(ItemFingerprint::opening),
                boat.kit().stream().filter(k -> k.name().equals(name)).map(ItemFingerprint::kit),
                boat.electrics().battery().stream()
                    .filter(b -> b.kit().equals(name))
                    .map(ItemFingerprint::battery),
                boat.cleats().stream()
                    .filter(c -> c.name().equals(name))
                    .map(ItemFingerprint::cleat),
                boat.aboard().stream()
                    .filter(p -> p.name().equals(name))
                    .map(ItemFingerprint::person))
            .flatMap(texts -> texts)
            .collect(Collectors.joining());
    return Integer.toHexString(measured.hashCode());
  }

  private static String chamber(Chamber chamber) {
    Chamber.Twin twin = chamber.twin();
    return text(
        "Chamber",
        "name=" + chamber.name(),
        "box=" + box(chamber.box()),
        "filling=" + filling(chamber.filling()),
        "measuredVolume=" + chamber.measuredVolume(),
        "mirrored=" + chamber.mirrored(),
        "limberHole=" + chamber.limberHole(),
        "twin="
            + text(
                "Twin",
                "filling=" + optional(twin.filling(), ItemFingerprint::filling),
                "measuredVolume=" + twin.measuredVolume()));
  }

  private static String filling(Filling filling) {
    if (filling instanceof Filling.Air air) {
      return text(
          "Air",
          "seal=" + air.seal().name(),
          "test="
              + optional(air.test(), ItemFingerprint::test)
              + stated(", repaired=", air.repaired()));
    }
    Filling.Foam foam = (Filling.Foam) filling;
    return text("Foam", "closedCell=" + foam.closedCell(), "fastened=" + foam.fastened());
  }

  private static String test(SealTest test) {
    return text(
        "SealTest",
        "date=" + test.date(),
        "how=" + test.how(),
        "minutes=" + test.minutes(),
        "litresIn=" + test.litresIn(),
        "by=" + test.by() + stated(", head=", test.head()));
  }

  private static String opening(Opening opening) {
    return text(
        "Opening",
        "name=" + opening.name(),
        "middle=" + vector(opening.middle()),
        "width=" + opening.width(),
        "athwart=" + opening.athwart(),
        "closedBy=" + opening.closedBy(),
        "into=" + opening.into(),
        "diameter=" + opening.diameter());
  }

  private static String kit(Kit kit) {
    return text(
        "Kit",
        "name=" + kit.name(),
        "mass=" + kit.mass(),
        "at=" + vector(kit.at()),
        "volume=" + kit.volume(),
        "fastened=" + kit.fastened(),
        "in=" + kit.in());
  }

  private static String battery(Battery battery) {
    return text(
        "Battery",
        "kit=" + battery.kit(),
        "volts=" + battery.volts(),
        "charge=" + battery.charge(),
        "chemistry=" + optional(battery.chemistry(), Enum::name),
        "ratedTime=" + battery.ratedTime(),
        "exponent=" + battery.exponent(),
        "since=" + battery.since(),
        "starter=" + battery.starter(),
        "strapped=" + battery.strapped(),
        "terminalsCovered=" + battery.terminalsCovered());
  }

  private static String cleat(Cleat cleat) {
    return text("Cleat", "name=" + cleat.name(), "at=" + vector(cleat.at()));
  }

  /** The place of a person does not matter, because it does not change what fits them. */
  private static String person(Person person) {
    return text("Person", "name=" + person.name(), "mass=" + person.mass());
  }

  private static String vector(Vector3 vector) {
    return text("Vector3", "x=" + vector.x(), "y=" + vector.y(), "z=" + vector.z());
  }

  private static String box(Box box) {
    return text("Box", "x=" + span(box.x()), "y=" + span(box.y()), "z=" + span(box.z()));
  }

  private static String span(Span span) {
    return text("Span", "from=" + span.from(), "to=" + span.to());
  }

  private static <T> String optional(Optional<T> value, Function<T, String> text) {
    return String.valueOf(value.map(text));
  }

  private static String stated(String name, Optional<?> value) {
    return value.map(v -> name + v).orElse("");
  }

  private static String text(String type, String... components) {
    return type + "[" + String.join(", ", components) + "]";
  }
}
