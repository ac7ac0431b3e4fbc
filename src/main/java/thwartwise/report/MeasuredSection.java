package thwartwise.report;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Cleat;
import thwartwise.boat.HullCorrection;
import thwartwise.boat.Kit;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property.Settable;
import thwartwise.page.Page;
import thwartwise.page.Sentence;

/** The measurements in brief; the record next to this page holds every point. */
final class MeasuredSection {
  private final UnitFormat units;

  private MeasuredSection(UnitFormat units) {
    this.units = units;
  }

  static Page of(Boat boat, UnitFormat units) {
    return new MeasuredSection(units).page(boat);
  }

  private Page page(Boat boat) {
    Page page = new Page();
    page.point(hull(boat.hull()), "It floats in " + boat.water().word() + " water");
    page.point(size(boat.hull().stations()));
    page.point(boat.openings().isEmpty() ? "Openings below the rail: none given" : openings(boat));
    page.point(places(boat));
    page.point(boat.kit().isEmpty() ? "Kit: none given" : kit(boat));
    if (!boat.cleats().isEmpty()) {
      page.point(cleats(boat));
    }
    outfit(page, boat.outfit());
    PropertyWords.of(BoatProperties.OF_BOAT.stream().map(Settable::property).toList(), boat, units)
        .forEach(page::point);
    boat.observedTrial().ifPresent(seen -> page.point(ObservedTrialWords.any(boat, seen)));
    boat.proofs().forEach(proof -> page.point(ProofWords.of(proof, units)));
    HullCorrection.of(boat)
        .ifPresent(correction -> page.point(ProofWords.counting(correction, units)));
    page.point(boat.aboard().isEmpty() ? "Aboard: nobody" : aboard(boat));
    if (!boat.electrics().isEmpty()) {
      page.point("Battery, motor, panel or wires are stated: range and wiring work them out");
    }
    return page.point(driven(boat.propulsion()));
  }

  private String hull(HullMeasurements hull) {
    return String.format(
            "Bare hull: %s, %s counted at %s when soaked, shell %s thick, floor %s up",
            units.scales(hull.mass()),
            hull.material().map(Material::word).orElse("stuff"),
            units.density(hull.density()),
            units.thickness(hull.thickness()),
            units.tape(hull.floor()))
        + PropertyWords.behind(BoatProperties.OF_HULL, hull, units);
  }

  private String size(List<Station> stations) {
    HullSize size = HullSize.of(stations);
    return String.format(
        "Stations from aft to forward: %s. Length %s, greatest breadth %s",
        Sentence.list(stations.stream().map(Station::name).toList()),
        units.tape(size.length()),
        units.tape(size.breadth()));
  }

  private String openings(Boat boat) {
    return "Openings below the rail: "
        + String.join("; ", boat.openings().stream().map(o -> OpeningWords.of(o, units)).toList());
  }

  private String places(Boat boat) {
    return boat.places().isEmpty()
        ? "Places to sit: none given"
        : "Places to sit: " + String.join("; ", boat.places().stream().map(this::place).toList());
  }

  private String place(Place place) {
    return String.format(
            Locale.ROOT,
            "%s for %d, %s from aft, %s up, %s",
            place.name(),
            place.people(),
            stretch(place.along()),
            units.tape(place.z()),
            out(place))
        + PropertyWords.behind(PartProperties.OF_PLACE, place, units);
  }

  private String out(Place place) {
    return place.isAboutTheMiddle()
        ? units.tape(place.across().to()) + " out"
        : "from " + stretch(place.across()) + " to port of the middle (starboard with a minus)";
  }

  private String stretch(Span span) {
    if (span.length() == 0) {
      return units.tape(span.from());
    }
    String from = units.system().isMetric() ? Rounding.plain(span.from()) : units.tape(span.from());
    return from + " to " + units.tape(span.to());
  }

  private String kit(Boat boat) {
    return "Kit, "
        + units.scales(boat.kitMass())
        + " in all: "
        + String.join("; ", boat.kit().stream().map(this::item).toList());
  }

  private String item(Kit kit) {
    return kit.name()
        + " "
        + units.scales(kit.mass())
        + ", "
        + units.tape(kit.at().z())
        + " up"
        + toOneSide(kit.at().y())
        + (kit.fastened() ? "" : ", loose")
        + PropertyWords.behind(BoatProperties.OF_KIT, kit, units);
  }

  private String toOneSide(double y) {
    return y == 0 ? "" : ", " + units.tape(Math.abs(y)) + " to " + (y > 0 ? "port" : "starboard");
  }

  private String cleats(Boat boat) {
    return "Where a line is made fast: "
        + String.join("; ", boat.cleats().stream().map(c -> CleatWords.of(c, units)).toList());
  }

  private void outfit(Page page, Outfit outfit) {
    if (!outfit.rowlocks().isEmpty()) {
      page.point(
          "Rowlocks, forward of the aft end: "
              + Sentence.list(outfit.rowlocks().stream().map(r -> units.tape(r.x())).toList()));
    }
    if (!outfit.leaks().isEmpty()) {
      page.point("Leaks: " + Sentence.list(outfit.leaks().stream().map(this::leak).toList()));
    }
  }

  private String leak(SeamLeak leak) {
    return String.format(
        Locale.ROOT,
        "%s %s in %.0f minutes",
        leak.seam(),
        units.jug(leak.volume()),
        Math.floor(leak.time() / 60));
  }

  private String aboard(Boat boat) {
    return "Aboard: " + String.join("; ", boat.aboard().stream().map(this::person).toList());
  }

  private String person(Person person) {
    return person.name()
        + " "
        + units.scales(person.mass())
        + " on "
        + person.place()
        + PropertyWords.behind(BoatProperties.OF_PERSON, person, units);
  }

  private String driven(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Outboard outboard) {
      return "Driven by a motor of " + units.motor(outboard.power());
    }
    if (propulsion instanceof Propulsion.Sail) {
      return "Driven by sails";
    }
    if (propulsion instanceof Propulsion.Tow) {
      return "Towing, or towed faster than a walk";
    }
    return propulsion instanceof Propulsion.Manual
        ? "Driven by oars or paddles"
        : "How it is driven was not said";
  }

  /** Length and greatest breadth of a hull by its stations, metres. */
  private record HullSize(double length, double breadth) {
    static HullSize of(List<Station> stations) {
      return new HullSize(extent(stations, Vector3::x), extent(stations, Vector3::y));
    }

    private static double extent(List<Station> stations, ToDoubleFunction<Vector3> axis) {
      var figures = points(stations).mapToDouble(axis).summaryStatistics();
      return figures.getMax() - figures.getMin();
    }

    private static Stream<Vector3> points(List<Station> stations) {
      return stations.stream()
          .flatMap(station -> Stream.concat(station.port().stream(), station.starboard().stream()));
    }
  }

  /** The position of a cleat, in distances to measure with a tape. */
  static final class CleatWords {
    private CleatWords() {}

    static String of(Cleat cleat, UnitFormat units) {
      return String.format(
          "%s (%s, %s, %s up)",
          cleat.name(),
          along(cleat.at().x(), units),
          across(cleat.at().y(), units),
          units.tape(cleat.at().z()));
    }

    private static String along(double x, UnitFormat units) {
      return x < 0
          ? units.tape(-x) + " behind the aft end"
          : units.tape(x) + " forward of the aft end";
    }

    private static String across(double y, UnitFormat units) {
      return y == 0
          ? "on the middle line"
          : units.tape(Math.abs(y)) + (y > 0 ? " to port" : " to starboard");
    }
  }
}
