package thwartwise.inspection;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.boat.Waters;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.MeasuredCloser;
import thwartwise.hull.Station;

/** Plain invented boats of the kinds this program is for, with proven buoyancy. */
public final class PlainHulls {
  public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private PlainHulls() {}

  public static Boat pram() {
    double l = 2.4;
    return boat(
        "pram",
        28,
        List.of(
            chine("aft", 0.0, 0.35, 0.45, 0.12, 0.44),
            chine("middle", 1.1, 0.50, 0.60, 0.0, 0.42),
            chine("bow", l, 0.28, 0.38, 0.18, 0.48)),
        List.of(end("bow tank", 1.85, l), end("stern tank", 0, 0.45)),
        List.of(new Place("middle thwart", 1.1, 0.22, 0.35, 1)));
  }

  public static Boat skiff() {
    return boat(
        "skiff",
        55,
        List.of(
            chine("transom", 0.0, 0.45, 0.57, 0.07, 0.45),
            chine("middle", 1.7, 0.54, 0.675, 0.0, 0.43),
            chine("stem", 3.6, 0.02, 0.04, 0.20, 0.60)),
        List.of(end("bow locker", 2.75, 3.6), end("stern tank", 0, 0.55), thwart(1.55, 1.83)),
        List.of(
            new Place("middle thwart", 1.69, 0.25, 0.40, 2),
            new Place("stern seat", 0.60, 0.27, 0.40, 1),
            new Place("bow seat", 2.6, 0.28, 0.25, 1)));
  }

  public static Boat punt() {
    return boat(
        "punt",
        85,
        List.of(
            chine("aft", 0.0, 0.58, 0.65, 0.15, 0.50),
            chine("quarter", 0.9, 0.65, 0.74, 0.0, 0.48),
            chine("shoulder", 3.3, 0.65, 0.75, 0.0, 0.48),
            chine("fore", 4.3, 0.52, 0.60, 0.18, 0.52)),
        List.of(end("fore tank", 3.6, 4.3), end("aft tank", 0, 0.7), thwart(1.9, 2.2)),
        List.of(
            new Place("middle thwart", 2.05, 0.26, 0.45, 2),
            new Place("aft thwart", 0.8, 0.28, 0.45, 2),
            new Place("fore thwart", 3.3, 0.28, 0.45, 2)));
  }

  public static Boat canoe() {
    return boat(
        "canoe",
        32,
        canoeStations(),
        List.of(end("bow tank", 4.1, 4.9), end("stern tank", 0, 0.8)),
        List.of(
            new Place("stern seat", 1.2, 0.22, 0.15, 1),
            new Place("bow seat", 3.4, 0.22, 0.15, 1)));
  }

  private static List<Station> canoeStations() {
    return List.of(
        round("stern", 0.0, 0.01, 0.52),
        round("aft quarter", 1.2, 0.37, 0.36),
        round("middle", 2.45, 0.46, 0.33),
        round("fore quarter", 3.7, 0.37, 0.36),
        round("bow", 4.9, 0.01, 0.52));
  }

  /**
   * The same canoe, knelt in from low thwarts, with foam under the gunwales amidships to keep it
   * upright when swamped.
   */
  public static Boat kneltInCanoe() {
    Boat plain = canoe();
    List<Chamber> chambers = new ArrayList<>(plain.chambers());
    Box side = new Box(new Span(1.35, 3.25), new Span(0.30, 0.5), new Span(0.12, 0.34));
    chambers.add(
        new Chamber("side foam", side, new Filling.Foam(true, true), Optional.empty(), true));
    return boat(
        "canoe, knelt in",
        32,
        canoeStations(),
        chambers,
        List.of(
            new Place("stern thwart", 1.2, 0.15, 0.15, 1),
            new Place("middle thwart", 2.45, 0.15, 0.15, 1),
            new Place("bow thwart", 3.4, 0.15, 0.15, 1)));
  }

  public static Boat roundDinghy() {
    return boat(
        "round dinghy",
        65,
        List.of(
            bilge("transom", 0.0, 0.52, 0.10, 0.50),
            bilge("quarter", 0.9, 0.66, 0.02, 0.48),
            bilge("middle", 1.6, 0.70, 0.0, 0.48),
            bilge("shoulder", 2.4, 0.54, 0.03, 0.51),
            bilge("stem", 3.2, 0.03, 0.14, 0.58)),
        List.of(
            end("bow tank", 2.55, 3.2),
            end("stern tank", 0, 0.40),
            side("side bench tank", 0.40, 1.35, 0.34, 0.27)),
        List.of(
            new Place("middle thwart", 1.55, 0.26, 0.40, 2),
            new Place("stern seat", 0.45, 0.28, 0.38, 2),
            new Place("bow seat", 2.3, 0.28, 0.25, 1)));
  }

  public static Boat dory() {
    Box side = new Box(new Span(1.75, 3.80), new Span(0.45, 0.8), new Span(0.24, 0.52));
    return boat(
        "dory",
        110,
        List.of(
            chine("transom", 0.0, 0.16, 0.34, 0.24, 0.72),
            chine("quarter", 1.3, 0.40, 0.66, 0.06, 0.58),
            chine("middle", 2.7, 0.46, 0.75, 0.0, 0.54),
            chine("shoulder", 4.1, 0.32, 0.56, 0.09, 0.60),
            chine("stem", 5.5, 0.02, 0.04, 0.36, 0.82)),
        List.of(
            end("bow tank", 4.55, 5.5),
            end("stern tank", 0, 0.70),
            new Chamber("side foam", side, new Filling.Foam(true, true), Optional.empty(), true)),
        List.of(
            new Place("middle thwart", 2.7, 0.24, 0.35, 2),
            new Place("aft thwart", 1.35, 0.26, 0.33, 2),
            new Place("fore thwart", 3.95, 0.28, 0.25, 1)));
  }

  private static Station bilge(String name, double x, double rail, double rise, double height) {
    double depth = height - rise;
    return Station.mirrored(
        name,
        List.of(
            Vector3.of(x, 0, rise),
            Vector3.of(x, rail * 0.45, rise + 0.05 * depth),
            Vector3.of(x, rail * 0.78, rise + 0.20 * depth),
            Vector3.of(x, rail * 0.94, rise + 0.50 * depth),
            Vector3.of(x, rail, height)));
  }

  private static Chamber side(String name, double from, double to, double inner, double top) {
    Box box = new Box(new Span(from, to), new Span(inner, 1), new Span(0, top));
    SealTest test = new SealTest(TODAY.minusMonths(2), "water poured in", 20, 0, "builder");
    return new Chamber(
        name, box, new Filling.Air(Seal.PROVEN, Optional.of(test)), Optional.empty(), true);
  }

  private static Station chine(
      String name, double x, double bottom, double rail, double rise, double height) {
    return Station.mirrored(
        name,
        List.of(Vector3.of(x, 0, rise), Vector3.of(x, bottom, rise), Vector3.of(x, rail, height)));
  }

  private static Station round(String name, double x, double rail, double height) {
    double rise = rail < 0.1 ? 0.06 : rail < 0.4 ? 0.01 : 0;
    return Station.mirrored(
        name,
        List.of(
            Vector3.of(x, 0, rise),
            Vector3.of(x, rail * 0.60, rise + 0.010),
            Vector3.of(x, rail * 0.86, rise + 0.040),
            Vector3.of(x, rail * 0.95, rise + 0.100),
            Vector3.of(x, rail, height)));
  }

  private static Chamber end(String name, double from, double to) {
    return proven(name, new Box(new Span(from, to), Span.ALL, Span.ALL));
  }

  private static Chamber thwart(double from, double to) {
    return proven("thwart", new Box(new Span(from, to), Span.ALL, new Span(0, 0.25)));
  }

  private static Chamber proven(String name, Box box) {
    SealTest test = new SealTest(TODAY.minusMonths(2), "water poured in", 20, 0, "builder");
    return new Chamber(
        name, box, new Filling.Air(Seal.PROVEN, Optional.of(test)), Optional.empty(), false);
  }

  private static Boat boat(
      String name,
      double mass,
      List<Station> stations,
      List<Chamber> chambers,
      List<Place> places) {
    return new Boat(
        name,
        Water.FRESH,
        new HullMeasurements(
            mass,
            Optional.empty(),
            Optional.of(Material.PLYWOOD),
            Material.PLYWOOD.swampedDensity(),
            0.006,
            0.02,
            MeasuredCloser.than(stations),
            List.of()),
        List.of(),
        chambers,
        places,
        new ArrayList<>(),
        new ArrayList<>(),
        new Propulsion.Manual(),
        List.of(),
        Optional.empty(),
        Waters.NOT_STATED,
        Optional.empty(),
        List.of());
  }
}
