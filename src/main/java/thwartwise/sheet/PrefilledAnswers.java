package thwartwise.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Kit;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.Opening;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.measure.Dimension;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import thwartwise.walk.questions.ChamberKind;
import thwartwise.walk.questions.OpeningKind;
import thwartwise.walk.questions.Outline;

/**
 * What is known of a boat, as answers to the walk by the keys of its questions, rounded to what a
 * tape shows. A leak test that is out of date is not known.
 */
final class PrefilledAnswers {
  private final Map<String, String> answers = new HashMap<>();
  private final UnitSystem units;
  private final UnitFormat shown;
  private final LocalDate today;
  private final Outline outline;

  private PrefilledAnswers(UnitSystem units, Outline outline, LocalDate today) {
    this.outline = outline;
    this.units = units;
    this.shown = new UnitFormat(units);
    this.today = today;
  }

  static Map<String, String> of(Boat boat, LocalDate today) {
    PrefilledAnswers known =
        new PrefilledAnswers(boat.units(), new Outline(boat.hull().stations()), today);
    known.boat(boat);
    return Map.copyOf(known.answers);
  }

  private void boat(Boat boat) {
    put("name", boat.name());
    boat.measuredBy().ifPresent(by -> put("measuredBy", by));
    put("units", units.isMetric() ? "metric" : "feet");
    put("water", boat.water().word());
    propulsion(boat.propulsion());
    hull(boat.hull());
    each("opening", boat.openings(), this::opening);
    each("chamber", boat.chambers(), this::chamber);
    each("place", boat.places(), this::place);
    each("kit", boat.kit(), this::kit);
    BoatProperties.EQUIPMENT.forEach(row -> single(row.property(), boat));
    answers.putAll(PrefilledOutfit.of(boat));
    answers.putAll(PrefilledElectrics.of(boat.electrics(), units));
    each("person", boat.aboard(), this::person);
    boat.whenSwamped().ifPresent(what -> put("whenSwamped", what.word()));
    methods(boat);
  }

  private void methods(Boat boat) {
    List<MeasuringMethod> ofThings = new ArrayList<>();
    for (MeasuringMethod said : boat.methods()) {
      put("measuredHow.any", "yes");
      if (said.item().isPresent()) {
        ofThings.add(said);
      } else {
        put("measuredHow." + said.kind().word(), said.way().word());
      }
    }
    if (!ofThings.isEmpty()) {
      each("measuredHow.other", ofThings, this::ofThing);
    }
  }

  private void ofThing(String key, MeasuringMethod said) {
    put(key + ".kind", said.kind().word());
    put(key + ".name", said.item().orElse(""));
    put(key + ".how", said.way().word());
  }

  /** Litres are the same in both systems of units. */
  private void single(Property<Boat, Double> property, Boat boat) {
    BoatQuantity quantity = property.type().quantity().orElseThrow();
    property
        .value()
        .apply(boat)
        .ifPresent(
            si ->
                put(
                    property.key(),
                    quantity.dimension() == Dimension.VOLUME
                        ? litres(si)
                        : quantity.shown(si, shown)));
  }

  private interface Described<T> {
    void by(String key, T thing);
  }

  private <T> void each(String kind, List<T> things, Described<T> described) {
    for (int i = 0; i < things.size(); i++) {
      String key = kind + "." + (i + 1);
      put(key + ".any", "yes");
      described.by(key, things.get(i));
    }
    put(kind + "." + (things.size() + 1) + ".any", "no");
  }

  private void propulsion(Propulsion driven) {
    if (driven instanceof Propulsion.Outboard outboard) {
      put("propulsion", "outboard");
      put("propulsion.power", Rounding.plain(outboard.power()) + " W");
    } else if (driven instanceof Propulsion.Manual) {
      put("propulsion", "manual");
    } else if (driven instanceof Propulsion.Sail) {
      put("propulsion", "sail");
    } else if (driven instanceof Propulsion.Tow) {
      put("propulsion", "tow");
    }
  }

  private void hull(HullMeasurements hull) {
    put("hull.material", hull.material().map(Material::word).orElse("other"));
    put("hull.density", Rounding.plain(hull.density()));
    put("hull.thickness", shown.thickness(hull.thickness()));
    put("hull.length", length(fore(hull)));
    put("hull.stations", Integer.toString(hull.stations().size()));
    put("hull.points", Integer.toString(hull.stations().get(0).port().size()));
    boolean alike = hull.stations().stream().allMatch(Station::isSymmetric);
    put("hull.alike", alike ? "yes" : "no");
    for (int i = 0; i < hull.stations().size(); i++) {
      station("hull.station." + (i + 1), hull.stations().get(i));
    }
    put("hull.weighed", "total");
    put("hull.mass", mass(hull.mass()));
    put("hull.centre", hull.centre().isPresent() ? "yes" : "no");
    hull.centre().ifPresent(centre -> put("hull.centre.x", length(centre.x())));
    hull.centre().ifPresent(centre -> put("hull.centre.z", length(centre.z())));
    put("hull.floor", length(hull.floor()));
    each("hull.decked", hull.decked(), this::span);
  }

  private static double fore(HullMeasurements hull) {
    return hull.stations().stream()
        .flatMap(s -> s.port().stream())
        .mapToDouble(Vector3::x)
        .max()
        .orElse(0);
  }

  private void station(String key, Station station) {
    List<Vector3> port = station.port();
    put(key + ".name", station.name());
    boolean plumb = port.stream().allMatch(p -> p.x() == port.get(0).x());
    put(key + ".upright", plumb ? "yes" : "no");
    put(key + ".x", length(port.get(0).x()));
    for (int i = 0; i < port.size(); i++) {
      String at = key + ".point." + (i + 1);
      put(at + ".x", length(port.get(i).x()));
      put(at + ".y", length(port.get(i).y()));
      put(at + ".z", length(port.get(i).z()));
      Vector3 starboard = station.starboard().get(i);
      put(key + ".starboard." + (i + 1) + ".y", length(-starboard.y()));
      put(key + ".starboard." + (i + 1) + ".z", length(starboard.z()));
    }
  }

  private void opening(String key, Opening opening) {
    put(key + ".kind", OpeningKind.of(opening, outline).word());
    put(key + ".into", opening.into().orElse("boat"));
    put(key + ".name", opening.name());
    at(key, opening.middle());
    put(key + ".side", opening.middle().y() < 0 ? "starboard" : "port");
    put(key + ".width", length(opening.width()));
    opening.diameter().ifPresent(across -> put(key + ".diameter", shown.hole(across)));
    put(key + ".closedBy", opening.closedBy().orElse("no"));
    put(key + ".edge", opening.athwart() ? "across" : "along");
  }

  private void chamber(String key, Chamber chamber) {
    ChamberKind kind = ChamberKind.of(chamber, outline);
    put(key + ".kind", kind.word());
    put(key + ".name", chamber.name());
    boolean starboard = chamber.box().y().to() <= 0;
    put(key + ".side", chamber.mirrored() ? "both" : starboard ? "starboard" : "port");
    limits(key + ".x", chamber.box().x());
    boolean drawnToPort = kind == ChamberKind.SIDE && starboard;
    limits(key + ".y", drawnToPort ? chamber.box().y().mirrored() : chamber.box().y());
    limits(key + ".z", chamber.box().z());
    put(key + ".mirrored", chamber.mirrored() ? "yes" : "no");
    filling(key, chamber.filling());
    chamber.measuredVolume().ifPresent(volume -> put(key + ".litres", litres(volume)));
    if (chamber.mirrored()) {
      filling(key + ".twin", chamber.twin().filling().orElse(chamber.filling()));
      chamber.twin().measuredVolume().ifPresent(v -> put(key + ".twin.litres", litres(v)));
    }
  }

  private void filling(String key, Filling filling) {
    if (filling instanceof Filling.Foam foam) {
      put(key + ".filling", "foam");
      put(key + ".closed", foam.closedCell() ? "yes" : "no");
      put(key + ".fastened", foam.fastened() ? "yes" : "no");
      return;
    }
    Filling.Air air = (Filling.Air) filling;
    put(key + ".filling", "air");
    Optional<SealTest> fresh = air.test().filter(test -> !air.isTestOutdated(today));
    if (air.test().isEmpty() || fresh.isPresent()) {
      put(key + ".seal", air.seal().word());
    }
    fresh.ifPresent(test -> test(key + ".test", test));
  }

  private void test(String key, SealTest test) {
    put(key + ".date", test.date().toString());
    put(key + ".how", test.how());
    put(key + ".minutes", Rounding.plain(test.minutes()));
    put(key + ".litresIn", Rounding.plain(test.litresIn()));
    put(key + ".by", test.by());
    test.head().ifPresent(head -> put(key + ".head", length(head)));
  }

  private void place(String key, Place place) {
    put(key + ".name", place.name());
    put(key + ".lies", lies(place));
    put(key + ".x", length(place.x()));
    put(key + ".x.from", length(place.along().from()));
    put(key + ".x.to", length(place.along().to()));
    put(key + ".z", length(place.z()));
    put(key + ".posture", place.posture().word());
    put(key + ".halfWidth", length(place.across().to()));
    double one = Math.abs(place.across().from());
    double other = Math.abs(place.across().to());
    put(key + ".y.in", length(Math.min(one, other)));
    put(key + ".y.out", length(Math.max(one, other)));
    put(key + ".people", Integer.toString(place.people()));
  }

  private static String lies(Place place) {
    if (place.isToOneSide()) {
      return place.across().from() > 0 ? "port" : "starboard";
    }
    return place.hasLength() ? "area" : "across";
  }

  private void kit(String key, Kit kit) {
    put(key + ".name", kit.name());
    put(key + ".mass", mass(kit.mass()));
    at(key, kit.at());
    kit.volume().ifPresent(volume -> put(key + ".litres", litres(volume)));
    put(key + ".fastened", kit.fastened() ? "yes" : "no");
    put(key + ".in", kit.in().orElse("none"));
  }

  private void person(String key, Person person) {
    put(key + ".name", person.name());
    put(key + ".mass", mass(person.mass()));
    put(key + ".place", person.place());
    put(key + ".y", length(person.y()));
    person.x().ifPresent(x -> put(key + ".x", length(x)));
  }

  private void at(String key, Vector3 at) {
    put(key + ".x", length(at.x()));
    put(key + ".y", length(at.y()));
    put(key + ".z", length(at.z()));
  }

  private void span(String key, Span span) {
    put(key + ".from", length(span.from()));
    put(key + ".to", length(span.to()));
  }

  private void limits(String key, Span span) {
    put(key + ".from", Double.isInfinite(span.from()) ? "hull" : length(span.from()));
    put(key + ".to", Double.isInfinite(span.to()) ? "hull" : length(span.to()));
  }

  private String length(double metres) {
    return shown.tape(metres);
  }

  private String mass(double kilograms) {
    return shown.scales(kilograms);
  }

  private static String litres(double cubicMetres) {
    return Rounding.plain(cubicMetres * 1000);
  }

  private void put(String key, String typed) {
    answers.put(key, typed);
  }
}
