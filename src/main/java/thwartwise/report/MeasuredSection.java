package thwartwise.report;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Boat;
import thwartwise.boat.HullMeasurements;
import thwartwise.boat.Kit;
import thwartwise.boat.Material;
import thwartwise.boat.Person;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Station;
import thwartwise.geometry.Span;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.Property;
import thwartwise.measured.Property.Settable;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;

/** What went in, shortly: the record beside this page holds every point. */
final class MeasuredSection {
  private MeasuredSection() {}

  static Page of(Boat boat) {
    Page page = new Page();
    page.point(hull(boat.hull()), "It floats in " + boat.water().word() + " water");
    page.point(size(boat.hull().stations()));
    page.point(boat.openings().isEmpty() ? "Openings below the rail: none given" : openings(boat));
    page.point(places(boat));
    page.point(boat.kit().isEmpty() ? "Kit: none given" : kit(boat));
    if (!boat.cleats().isEmpty()) {
      page.point(cleats(boat));
    }
    for (Settable<Boat, ?> row : BoatProperties.OF_BOAT) {
      if (!row.property().shown().isBlank()) {
        row.property().inFile(boat).ifPresent(value -> page.point(line(row.property(), value)));
      }
    }
    page.point(boat.aboard().isEmpty() ? "Aboard: nobody" : aboard(boat));
    return page.point(driven(boat.propulsion()));
  }

  private static String hull(HullMeasurements hull) {
    return String.format(
        "Bare hull: %s\u00a0kg, %s counted at %s\u00a0kg/m3 when soaked, shell %s\u00a0mm thick, floor"
            + " %s\u00a0m up",
        FigureText.plain(hull.mass()),
        hull.material().map(Material::word).orElse("stuff"),
        FigureText.plain(hull.density()),
        FigureText.plain(hull.thickness() * 1000),
        FigureText.plain(hull.floor()));
  }

  private static String size(List<Station> stations) {
    HullSize size = HullSize.of(stations);
    return String.format(
        "Stations from aft to forward: %s. Length %s\u00a0m, greatest breadth %s\u00a0m",
        Sentence.list(stations.stream().map(Station::name).toList()),
        FigureText.plain(size.length()),
        FigureText.plain(size.breadth()));
  }

  private static String openings(Boat boat) {
    return "Openings below the rail: "
        + String.join("; ", boat.openings().stream().map(OpeningWords::of).toList());
  }

  private static String places(Boat boat) {
    return boat.places().isEmpty()
        ? "Places to sit: none given"
        : "Places to sit: "
            + String.join("; ", boat.places().stream().map(MeasuredSection::place).toList());
  }

  private static String place(Place place) {
    return String.format(
        Locale.ROOT,
        "%s for %d, %s\u00a0m from aft, %s\u00a0m up, %s",
        place.name(),
        place.people(),
        stretch(place.along()),
        FigureText.plain(place.z()),
        out(place));
  }

  private static String out(Place place) {
    return place.isAboutTheMiddle()
        ? FigureText.plain(place.across().to()) + FigureText.TIED + "m out"
        : "from "
            + stretch(place.across())
            + FigureText.TIED
            + "m to port of the middle (starboard with a minus)";
  }

  private static String stretch(Span span) {
    return span.length() == 0
        ? FigureText.plain(span.from())
        : FigureText.plain(span.from()) + " to " + FigureText.plain(span.to());
  }

  private static String kit(Boat boat) {
    return "Kit, "
        + FigureText.plain(boat.kitMass())
        + FigureText.TIED
        + "kg in all: "
        + String.join("; ", boat.kit().stream().map(MeasuredSection::item).toList());
  }

  private static String item(Kit kit) {
    return kit.name()
        + " "
        + FigureText.plain(kit.mass())
        + FigureText.TIED
        + "kg, "
        + FigureText.plain(kit.at().z())
        + FigureText.TIED
        + "m up"
        + toOneSide(kit.at().y())
        + (kit.fastened() ? "" : ", loose")
        + kit.in().map(in -> ", in " + in).orElse("");
  }

  private static String toOneSide(double y) {
    return y == 0
        ? ""
        : ", "
            + FigureText.plain(Math.abs(y))
            + FigureText.TIED
            + "m to "
            + (y > 0 ? "port" : "starboard");
  }

  private static String cleats(Boat boat) {
    return "Where a line is made fast: "
        + String.join("; ", boat.cleats().stream().map(CleatWords::of).toList());
  }

  /** What the boat has is rounded down. */
  private static String line(Property<Boat, ?> row, Object inFile) {
    return row.shown()
        + row.type()
            .quantity()
            .map(q -> FigureText.with(FigureText.down((Double) inFile, 1), q.unit()))
            .orElse(inFile.toString());
  }

  private static String aboard(Boat boat) {
    return "Aboard: "
        + String.join("; ", boat.aboard().stream().map(MeasuredSection::person).toList());
  }

  private static String person(Person person) {
    return person.name()
        + " "
        + FigureText.plain(person.mass())
        + FigureText.TIED
        + "kg on "
        + person.place();
  }

  private static String driven(Propulsion propulsion) {
    if (propulsion instanceof Propulsion.Outboard outboard) {
      return "Driven by a motor of " + FigureText.plain(outboard.power() / 1000) + " kW";
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
}
