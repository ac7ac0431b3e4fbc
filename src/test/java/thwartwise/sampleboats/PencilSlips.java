package thwartwise.sampleboats;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;

/** Slips with scales, jug and list: masses, kit, chambers, places, dates. */
final class PencilSlips {
  private static final double POUND = 0.4536;
  private static final double INCH = 2.54;
  private static final double US_GALLON = 3.785;

  private static final String LEFT_OUT =
      "what was left out shows in nothing; the page lists what was counted";

  private static final String SCALES =
      "only the scales tell what a thing weighs within what such things weigh; the page lists each"
          + " with its mass";

  private static final String BALLAST =
      "a hull built heavier weighs as much, and steadies the boat as truly; the page says what it"
          + " weighs and all kit beside it";

  private static final String LIGHT =
      "a light boat of the same size weighs as little: a published one 0.93 of its soaked skin; the"
          + " page says what it weighs and how thick it is";

  private static final String BOTH_SIDES =
      "a boat with such a chamber on either side is as likely; the plan shows both";

  private static final String NO_CLOCK = "nothing but the paper tells when a test was made";

  private static final String NARROW_SEAT =
      "a seat about the middle may be as narrow; the page says how far out it reaches";

  private static final String SEAT_THERE =
      "a seat of that name may stand there; the page says how far from aft";

  private static final String NOT_POURED =
      "a box may be as long; litres poured into it would show it";

  private static final String ON_THE_FLOOR =
      "things lie on the floor as well as under the rail; the page says how high each lies";

  private static final String BOARDS =
      "a boat without floor boards is as likely; the page says how high the floor lies";

  private PencilSlips() {}

  static List<SlipKind> all() {
    List<SlipKind> all = new ArrayList<>(hull());
    all.addAll(kit());
    all.addAll(chambers());
    all.addAll(places());
    return List.copyOf(all);
  }

  private static List<SlipKind> hull() {
    return List.of(
        whole("hull weighed with kit in it", b -> b.withHullMass(b.hull().mass() + b.kitMass()))
            .unseen(BALLAST),
        mass("hull weighed without its fittings", 0.8).unseen(LIGHT),
        mass("hull weighed at one end only", 0.5).unseen(LIGHT),
        mass("hull in kilograms taken for pounds", POUND).unseen(LIGHT),
        mass("hull in pounds taken for kilograms", 1 / POUND),
        mass("decimal of the hull's mass slipped left", 0.1),
        mass("decimal of the hull's mass slipped right", 10),
        thickness("decimal of the thickness slipped left", 0.1),
        thickness("decimal of the thickness slipped right", 10),
        thickness("thickness of two layers for one", 2),
        thickness("thickness in inches taken for centimetres", 1 / INCH),
        density("decimal of the density slipped left", 0.1),
        density("density in pounds a cubic foot", 0.0624),
        whole("other metal or mould called plywood", PencilSlips::calledPlywood),
        floor("floor height left out", 0).unseen(BOARDS),
        floor("decimal of the floor's height slipped right", 10));
  }

  private static List<SlipKind> kit() {
    return List.of(
        eachKit("one thing written down twice", b -> i -> b.withKit(BoatEdits.twice(b.kit(), i))),
        eachKit("one thing forgotten", b -> i -> b.withKit(BoatEdits.without(b.kit(), i)))
            .unseen(LEFT_OUT),
        whole("all kit forgotten", b -> b.withKit(List.of())).unseen(LEFT_OUT),
        kit("decimal of one mass slipped left", k -> mass(k, 0.1)).unseen(SCALES),
        kit("decimal of one mass slipped right", k -> mass(k, 10)),
        kit("one mass in kilograms taken for pounds", k -> mass(k, POUND)).unseen(SCALES),
        kit("litres of one thing taken for gallons", k -> litres(k, US_GALLON)),
        kit("height of one thing below the keel", k -> at(k, 0, -1)),
        kit("decimal of one thing's height slipped left", k -> at(k, 0, 0.1)).unseen(ON_THE_FLOOR),
        SlipKind.of("port for starboard, one thing", PencilSlips::otherSide),
        SlipKind.of("people aboard forgotten", PencilSlips::peopleForgotten).unseen(LEFT_OUT));
  }

  private static List<SlipKind> chambers() {
    return List.of(
        SlipKind.of("two chambers written down where one is", PencilSlips::oneForTwo)
            .unseen(BOTH_SIDES),
        SlipKind.of("one of two chambers written down", PencilSlips::twoForOne),
        SlipKind.of("test of one chamber written down for both", PencilSlips::testForBoth)
            .unseen(BOTH_SIDES),
        SlipKind.of("last year's leak test dated this year", PencilSlips::freshDate)
            .unseen(NO_CLOCK),
        SlipKind.of("this year's leak test dated last year", PencilSlips::staleDate),
        SlipKind.of("leak test dated next year", PencilSlips::futureDate),
        SlipKind.of("gallons poured written down as litres", b -> poured(b, 1 / US_GALLON)),
        SlipKind.of("litres poured written down as gallons", b -> poured(b, US_GALLON)),
        SlipKind.of("one chamber written down twice", PencilSlips::chamberTwice),
        chamber(
            "decimal of a chamber's top slipped right",
            c -> box(c, UnaryOperator.identity(), s -> to(s, 10))),
        chamber(
            "centimetres for inches, a chamber's top",
            c -> box(c, UnaryOperator.identity(), s -> to(s, INCH))),
        chamber(
            "inches for centimetres, a chamber's top",
            c -> box(c, UnaryOperator.identity(), s -> to(s, 1 / INCH))),
        chamber(
                "a chamber's end written twice as far forward",
                c -> box(c, s -> to(s, 2), UnaryOperator.identity()))
            .unseen(NOT_POURED));
  }

  private static List<SlipKind> places() {
    return List.of(
        place("full breadth of a seat for half", p -> place(p, 1, 1, 2, 1)),
        place("half of a seat's half breadth", p -> place(p, 1, 1, 0.5, 1)).unseen(NARROW_SEAT),
        place("decimal of a seat's half breadth slipped left", p -> place(p, 1, 1, 0.1, 1))
            .unseen(NARROW_SEAT),
        place("inches for centimetres, height of a seat", p -> place(p, 1, 1 / INCH, 1, 1)),
        place("centimetres for inches, height of a seat", p -> place(p, 1, INCH, 1, 1)),
        place("decimal of a seat's height slipped left", p -> place(p, 1, 0.1, 1, 1)),
        place("decimal of a seat's place along slipped left", p -> place(p, 0.1, 1, 1, 1)),
        place("feet for metres, a seat's place along", p -> place(p, 3.28, 1, 1, 1))
            .unseen(SEAT_THERE),
        place("ten times as many people on a seat", p -> place(p, 1, 1, 1, 10)),
        SlipKind.of("one place written down twice", PencilSlips::placeTwice));
  }

  private static SlipKind whole(String name, UnaryOperator<Boat> edit) {
    return SlipKind.of(name, b -> changed(List.of(new SlippedBoat(b, edit.apply(b), ""))));
  }

  private static SlipKind mass(String name, double factor) {
    return whole(name, b -> b.withHullMass(BoatEdits.written(b.hull().mass() * factor)));
  }

  private static SlipKind thickness(String name, double factor) {
    return whole(name, b -> BoatEdits.withThickness(b, b.hull().thickness() * factor));
  }

  private static SlipKind density(String name, double factor) {
    return whole(name, b -> BoatEdits.withDensity(b, b.hull().density() * factor));
  }

  private static SlipKind floor(String name, double factor) {
    return whole(name, b -> BoatEdits.withFloor(b, b.hull().floor() * factor));
  }

  private static Boat calledPlywood(Boat boat) {
    HullMeasurements h = boat.hull();
    return BoatEdits.withHull(
        boat,
        new HullMeasurements(
            h.mass(),
            h.centre(),
            Optional.of(Material.PLYWOOD),
            Material.PLYWOOD.swampedDensity(),
            h.thickness(),
            h.floor(),
            h.stations(),
            h.decked(),
            h.skeg()));
  }

  private interface AtIndex {
    Boat of(int index);
  }

  private static SlipKind eachKit(String name, java.util.function.Function<Boat, AtIndex> edit) {
    return SlipKind.of(
        name, b -> each(b, b.kit().size(), i -> b.kit().get(i).name(), edit.apply(b)));
  }

  private static SlipKind kit(String name, UnaryOperator<Kit> other) {
    return eachKit(name, b -> i -> BoatEdits.withKit(b, i, other));
  }

  private static SlipKind chamber(String name, UnaryOperator<Chamber> other) {
    return SlipKind.of(
        name,
        b ->
            each(
                b,
                b.chambers().size(),
                i -> b.chambers().get(i).name(),
                i -> BoatEdits.withChamber(b, i, other)));
  }

  private static SlipKind place(String name, UnaryOperator<Place> other) {
    return SlipKind.of(
        name,
        b ->
            each(
                b,
                b.places().size(),
                i -> b.places().get(i).name(),
                i -> BoatEdits.withPlace(b, i, other)));
  }

  private interface Title {
    String of(int index);
  }

  private static List<SlippedBoat> each(Boat boat, int count, Title title, AtIndex edit) {
    return changed(
        IntStream.range(0, count)
            .mapToObj(i -> new SlippedBoat(boat, edit.of(i), title.of(i)))
            .toList());
  }

  private static List<SlippedBoat> changed(List<SlippedBoat> slips) {
    return slips.stream().filter(s -> !s.truth().equals(s.entered())).toList();
  }

  private static Kit mass(Kit k, double factor) {
    double mass = BoatEdits.written(k.mass() * factor);
    return new Kit(k.name(), mass, k.at(), k.volume(), k.fastened(), k.in());
  }

  private static Kit litres(Kit k, double factor) {
    Optional<Double> volume = k.volume().map(v -> v * factor);
    return new Kit(k.name(), k.mass(), k.at(), volume, k.fastened(), k.in());
  }

  private static Kit at(Kit k, double y, double upFactor) {
    Vector3 at = Vector3.of(k.at().x(), y, BoatEdits.written(k.at().z() * upFactor));
    return new Kit(k.name(), k.mass(), at, k.volume(), k.fastened(), k.in());
  }

  /** Two things on one side, one of them written down on the other. */
  private static List<SlippedBoat> otherSide(Boat boat) {
    if (boat.kit().isEmpty()) {
      return List.of();
    }
    double out = 0.3 * boat.hull().stations().get(2).portRail().y();
    UnaryOperator<Kit> port = k -> at(k, BoatEdits.written(out), 1);
    UnaryOperator<Kit> starboard = k -> at(k, BoatEdits.written(-out), 1);
    return each(
        BoatEdits.withKit(boat, 0, port),
        1,
        i -> boat.kit().get(i).name(),
        i -> BoatEdits.withKit(boat, i, starboard));
  }

  private static List<SlippedBoat> peopleForgotten(Boat boat) {
    Boat manned =
        boat.withAboard(
            List.of(new thwartwise.boat.Person("rower", 80, boat.places().get(0).name(), 0)));
    return List.of(new SlippedBoat(manned, boat, "rower"));
  }

  private static List<SlippedBoat> chambersThat(
      Boat boat, Predicate<Chamber> which, BiFunction<Boat, Integer, SlippedBoat> slip) {
    return IntStream.range(0, boat.chambers().size())
        .filter(i -> which.test(boat.chambers().get(i)))
        .mapToObj(i -> slip.apply(boat, i))
        .toList();
  }

  private static Chamber single(Chamber c) {
    return new Chamber(c.name(), c.box(), c.filling(), c.measuredVolume(), false, c.limberHole());
  }

  private static List<SlippedBoat> oneForTwo(Boat boat) {
    return chambersThat(
        boat,
        Chamber::mirrored,
        (b, i) ->
            new SlippedBoat(
                BoatEdits.withChamber(b, i, PencilSlips::single), b, b.chambers().get(i).name()));
  }

  private static List<SlippedBoat> twoForOne(Boat boat) {
    return chambersThat(
        boat,
        Chamber::mirrored,
        (b, i) ->
            new SlippedBoat(
                b, BoatEdits.withChamber(b, i, PencilSlips::single), b.chambers().get(i).name()));
  }

  /** The truth: the other of the two was never tested. */
  private static List<SlippedBoat> testForBoth(Boat boat) {
    Filling claimed = new Filling.Air(Seal.CLAIMED, Optional.empty());
    return chambersThat(
        boat,
        c -> c.mirrored() && c.filling() instanceof Filling.Air,
        (b, i) ->
            new SlippedBoat(
                BoatEdits.withChamber(b, i, c -> c.filledWith(c.parts().get(1), claimed)),
                b,
                b.chambers().get(i).name()));
  }

  private static List<SlippedBoat> freshDate(Boat boat) {
    return aired(boat, (b, i) -> new SlippedBoat(dated(b, i, -14), b, b.chambers().get(i).name()));
  }

  private static List<SlippedBoat> staleDate(Boat boat) {
    return aired(boat, (b, i) -> new SlippedBoat(b, dated(b, i, -14), b.chambers().get(i).name()));
  }

  private static List<SlippedBoat> futureDate(Boat boat) {
    return aired(boat, (b, i) -> new SlippedBoat(b, dated(b, i, 10), b.chambers().get(i).name()));
  }

  private static List<SlippedBoat> aired(Boat boat, BiFunction<Boat, Integer, SlippedBoat> slip) {
    return chambersThat(boat, c -> c.filling() instanceof Filling.Air, slip);
  }

  private static Boat dated(Boat boat, int index, int months) {
    return BoatEdits.withChamber(
        boat,
        index,
        c -> {
          Filling.Air air = (Filling.Air) c.filling();
          SealTest test = air.test().orElseThrow();
          LocalDate date = OrdinaryBoats.TODAY.plusMonths(months);
          return c.filledWith(
              new Filling.Air(
                  air.seal(),
                  Optional.of(
                      new SealTest(date, test.how(), test.minutes(), test.litresIn(), test.by()))));
        });
  }

  /** The truth: poured and agreeing with what is drawn. */
  private static List<SlippedBoat> poured(Boat boat, double factor) {
    thwartwise.boat.BoatModel model = thwartwise.boat.BoatModel.of(boat, OrdinaryBoats.TODAY);
    return chambersThat(
        boat,
        c -> c.filling() instanceof Filling.Air,
        (b, i) -> {
          Chamber chamber = b.chambers().get(i);
          double drawn =
              model.spaces().stream()
                  .filter(s -> s.chamber().equals(chamber))
                  .findFirst()
                  .orElseThrow()
                  .solid()
                  .volume();
          return new SlippedBoat(
              BoatEdits.withChamber(b, i, c -> measured(c, drawn)),
              BoatEdits.withChamber(b, i, c -> measured(c, drawn * factor)),
              chamber.name());
        });
  }

  private static Chamber measured(Chamber c, double volume) {
    Optional<Double> litres = Optional.of(BoatEdits.written(volume));
    return new Chamber(c.name(), c.box(), c.filling(), litres, c.mirrored(), c.limberHole());
  }

  private static List<SlippedBoat> chamberTwice(Boat boat) {
    return each(
        boat,
        boat.chambers().size(),
        i -> boat.chambers().get(i).name(),
        i -> boat.withChambers(BoatEdits.twice(boat.chambers(), i)));
  }

  private static Chamber box(Chamber c, UnaryOperator<Span> along, UnaryOperator<Span> up) {
    Box box = new Box(along.apply(c.box().x()), c.box().y(), up.apply(c.box().z()));
    return new Chamber(
        c.name(), box, c.filling(), c.measuredVolume(), c.mirrored(), c.limberHole());
  }

  private static Span to(Span span, double factor) {
    return new Span(Math.min(span.from(), span.to() * factor), span.to() * factor);
  }

  private static List<SlippedBoat> placeTwice(Boat boat) {
    return each(
        boat,
        boat.places().size(),
        i -> boat.places().get(i).name(),
        i -> boat.withPlaces(BoatEdits.twice(boat.places(), i)));
  }

  private static Place place(Place p, double along, double up, double out, int people) {
    return new Place(
        p.name(),
        BoatEdits.written(p.x() * along),
        BoatEdits.written(p.z() * up),
        BoatEdits.written(p.across().to() * out),
        p.people() * people);
  }
}
