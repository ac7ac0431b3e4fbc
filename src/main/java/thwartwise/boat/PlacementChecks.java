package thwartwise.boat;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.hull.UnusableBoat;

/**
 * Refuses places, openings, kit and cleats at impossible positions, because such an error moves a
 * person by metres and changes every answer. Bounds are judgement.
 */
final class PlacementChecks {
  /**
   * How far kit may be beyond the ends: a motor hangs behind the transom, an anchor on a short
   * bowsprit.
   */
  private static final double OVERHANG = 1.0;

  /** The greatest height of a seat above the rail. */
  private static final double ABOVE_RAIL = 0.3;

  private static final double TAPE = 0.02;

  /** How far a cleat may be beyond the ends: a ring may be at the stem or on a short bowsprit. */
  private static final double CLEAT_BEYOND_END = 0.3;

  /** An opening as near to the rail as this is cut into it; a well or a case is not. */
  private static final double EDGE = 0.1;

  private static final double CLEAT_BEYOND_SIDE = 0.1;
  private static final double CLEAT_ABOVE_RAIL = 0.15;

  private final Span length;
  private final double halfBeam;
  private final double top;

  private PlacementChecks(HullForm form) {
    this.length = form.outside().extent(Vector3.of(1, 0, 0));
    this.halfBeam = form.beam() / 2;
    this.top = form.outside().extent(Vector3.of(0, 0, 1)).to();
  }

  static void check(Boat boat, HullForm form) {
    PlacementChecks bounds = new PlacementChecks(form);
    bounds.floor(boat.hull().floor());
    boat.hull().decked().forEach(bounds::deck);
    boat.places().forEach(p -> bounds.place(p, boat.hull().floor()));
    boat.openings().forEach(bounds::opening);
    boat.kit().forEach(bounds::kit);
    boat.cleats().forEach(bounds::cleat);
    boat.outfit().rowlocks().forEach(bounds::rowlocks);
    boat.aboard().forEach(p -> bounds.person(p, boat.places()));
  }

  /**
   * Refuses a notch above the rail it is cut into: water would seem to come in later than it does.
   * For boats as measured only; one of the two may be moved a little above the other.
   */
  static void checkNotches(Boat boat, HullForm form) {
    PlacementChecks bounds = new PlacementChecks(form);
    boat.openings().stream()
        .filter(Opening::floodsTheBoat)
        .filter(o -> boat.hull().decked().stream().noneMatch(d -> d.contains(o.middle().x())))
        .forEach(o -> bounds.notch(o, form));
  }

  private void notch(Opening opening, HullForm form) {
    Vector3 at = opening.middle();
    Vector3 port = form.railAt(at.x(), true);
    Vector3 starboard = form.railAt(at.x(), false);
    double rail = Math.max(port.z(), starboard.z());
    boolean atAnEnd =
        at.x() < form.aftRail().get(0).x() + EDGE || at.x() > form.foreRail().get(0).x() - EDGE;
    boolean atASide = at.y() > port.y() - EDGE || at.y() < starboard.y() + EDGE;
    if ((atAnEnd || atASide) && at.z() > rail + TAPE) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "Opening \"%s\": its lowest edge is %.2f m up, above the rail it is cut into (%.2f m"
                  + " there). Measure it again, straight up from the lowest point of the bottom.",
              opening.name(),
              at.z(),
              rail));
    }
  }

  /** Refuses a floor above the rail; checked before the places, which are above the floor. */
  private void floor(double floor) {
    if (!(floor <= top)) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "Hull: the floor is %.2f m up, above the highest point of the rail (%.2f m). Measure"
                  + " it from the lowest point of the bottom up to what people stand on, in metres.",
              floor,
              top));
    }
  }

  private void deck(Span deck) {
    Span near = new Span(length.from() - TAPE * 5, length.to() + TAPE * 5);
    if (!(near.contains(deck.from()) && near.contains(deck.to()))) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "Hull: the deck from %.2f to %.2f m reaches beyond the boat, which lies between %.2f"
                  + " and %.2f m. Measure both ends of it from the aft end, in metres.",
              deck.from(),
              deck.to(),
              length.from(),
              length.to()));
    }
  }

  private void place(Place place, double floor) {
    String name = "Place \"" + place.name() + "\"";
    ends(name, "x", place.along(), length, "Measure it from the aft end, in metres");
    within(
        name,
        "z",
        place.z(),
        new Span(floor - TAPE, top + ABOVE_RAIL),
        "Measure the seat's height up from the lowest point of the bottom, in metres");
    if (place.isAboutTheMiddle()) {
      within(
          name,
          "halfWidth",
          place.across().to(),
          new Span(0, halfBeam),
          "It is how far from the middle line the middle of a person can get, in metres");
    } else {
      ends(
          name,
          "y",
          place.across(),
          new Span(-halfBeam, halfBeam),
          "It is from where to where the middle of a person can be, to port of the middle line, in"
              + " metres");
    }
  }

  private static void ends(String what, String key, Span ends, Span span, String remedy) {
    within(what, key, ends.from(), span, remedy);
    within(what, key, ends.to(), span, remedy);
  }

  private void opening(Opening opening) {
    String name = "Opening \"" + opening.name() + "\"";
    Span near = new Span(length.from() - TAPE * 5, length.to() + TAPE * 5);
    within(name, "x", opening.middle().x(), near, "Measure it from the aft end, in metres");
    double out = halfBeam + TAPE;
    within(
        name,
        "y",
        opening.middle().y(),
        new Span(-out, out),
        "Measure it from the middle line, in metres");
    within(
        name,
        "z",
        opening.middle().z(),
        new Span(-TAPE, top + TAPE),
        "Measure its lowest edge up from the lowest point of the bottom, in metres");
  }

  private void kit(Kit kit) {
    String name = "Kit \"" + kit.name() + "\"";
    Span reach = new Span(length.from() - OVERHANG, length.to() + OVERHANG);
    within(name, "x", kit.at().x(), reach, "Measure it from the aft end, in metres");
    double out = halfBeam + OVERHANG;
    within(
        name, "y", kit.at().y(), new Span(-out, out), "Measure it from the middle line, in metres");
  }

  private void cleat(Cleat cleat) {
    String name = "Cleat \"" + cleat.name() + "\"";
    double beyond = CLEAT_BEYOND_END;
    Span along = new Span(length.from() - beyond, length.to() + beyond);
    within(name, "x", cleat.at().x(), along, "Measure it from the aft end, in metres");
    double out = halfBeam + CLEAT_BEYOND_SIDE;
    within(
        name,
        "y",
        cleat.at().y(),
        new Span(-out, out),
        "Measure it from the middle line, in metres");
    within(
        name,
        "z",
        cleat.at().z(),
        new Span(-TAPE, top + CLEAT_ABOVE_RAIL),
        "Measure it up from the lowest point of the bottom, in metres");
  }

  private void rowlocks(Rowlocks pair) {
    within("Rowlocks", "x", pair.x(), length, "Measure it from the aft end, in metres");
  }

  private void person(Person person, List<Place> places) {
    String name = "\"" + person.name() + "\"";
    within(
        name,
        "y",
        person.y(),
        new Span(-halfBeam, halfBeam),
        "Measure it from the middle line, in metres");
    places.stream()
        .filter(p -> p.name().equals(person.place()))
        .forEach(p -> onPlace(name, person, p));
  }

  /**
   * Refuses a person outside the place. On a thwart the middle line is as good as any y, so only a
   * seat to one side is checked across.
   */
  private static void onPlace(String name, Person person, Place place) {
    if (place.isToOneSide()) {
      onPlace(name, "y", person.y(), place.across(), place);
    }
    person.x().ifPresent(x -> onPlace(name, "x", x, place.along(), place));
  }

  private static void onPlace(String who, String key, double value, Span span, Place place) {
    if (!(value >= span.from() - TAPE && value <= span.to() + TAPE)) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "%s: %s is %.2f m, outside the %.2f to %.2f m of \"%s\". Measure to the middle of"
                  + " the person, or leave it out.",
              who,
              key,
              value,
              span.from(),
              span.to(),
              place.name()));
    }
  }

  private static void within(String what, String key, double value, Span span, String remedy) {
    if (!span.contains(value)) {
      throw new UnusableBoat(
          String.format(
              Locale.ROOT,
              "%s: %s is %.2f m, outside the %.2f to %.2f m that this hull leaves. %s.",
              what,
              key,
              value,
              span.from(),
              span.to(),
              remedy));
    }
  }
}
