package thwartwise.sampleboats;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;

/** Slips with the tape along the stations. */
final class TapeSlips {
  private static final double INCH = 2.54;
  private static final double FOOT = 0.3048;

  private static final String LIKELY =
      "a hull whose sections differ by a few centimetres more or less is as likely a boat";

  private TapeSlips() {}

  static List<SlipKind> all() {
    return List.of(
        station("full breadth for half, one station", BoatEdits.outBy(2)),
        rail("full breadth for half, one reading", BoatEdits.outBy(2)),
        hull("full breadth for half, all stations", BoatEdits.outBy(2)),
        rail("half of the half breadth, one reading", BoatEdits.outBy(0.5)),
        rail("centimetres for metres, one reading", BoatEdits.outBy(100)),
        hull("centimetres for metres, all", scaled(100)),
        rail("inches for centimetres, one half breadth", BoatEdits.outBy(1 / INCH)),
        rail("centimetres for inches, one half breadth", BoatEdits.outBy(INCH)),
        rail("inches for centimetres, one height", BoatEdits.upBy(1 / INCH)),
        rail("centimetres for inches, one height", BoatEdits.upBy(INCH)),
        station("inches for centimetres, one station", across(1 / INCH)),
        hull("inches for centimetres, all breadths", BoatEdits.outBy(1 / INCH)),
        hull("centimetres for inches, all heights", BoatEdits.upBy(INCH)),
        hull("inches for centimetres, all", scaled(1 / INCH)),
        rail("feet for inches, one reading", BoatEdits.outBy(1.0 / 12)),
        rail("inches for feet, one reading", BoatEdits.outBy(12)),
        rail("metres for feet, one half breadth", BoatEdits.outBy(FOOT)),
        rail("feet for metres, one half breadth", BoatEdits.outBy(1 / FOOT)),
        rail("feet for metres, one height", BoatEdits.upBy(1 / FOOT)),
        hull("feet for metres, all", scaled(1 / FOOT)),
        rail("decimal slipped right, one half breadth", BoatEdits.outBy(10)),
        rail("decimal slipped left, one half breadth", BoatEdits.outBy(0.1)),
        rail("decimal slipped right, one height", BoatEdits.upBy(10)),
        rail("decimal slipped left, one height", BoatEdits.upBy(0.1)),
        bottom("decimal slipped left, one height of the bottom", BoatEdits.upBy(0.1))
            .unseen(LIKELY),
        bottom("decimal slipped right, one height of the bottom", BoatEdits.upBy(10)),
        chine("chine read twice as far out", BoatEdits.outBy(2)),
        station("decimal slipped, where one station stands", BoatEdits.alongBy(10)),
        station("centimetres for inches, where one station stands", BoatEdits.alongBy(INCH)),
        rail("sign of one half breadth", BoatEdits.outBy(-1)),
        bottom("sign of one height", BoatEdits.upBy(-1)),
        SlipKind.of("two stations swapped", TapeSlips::swapped),
        SlipKind.of("two sections swapped, their places kept", TapeSlips::sectionsSwapped)
            .unseen(LIKELY),
        SlipKind.of("two half breadths of a station swapped", TapeSlips::pointsSwapped)
            .unseen(LIKELY),
        SlipKind.of("one section written twice", TapeSlips::sectionRepeated).unseen(LIKELY),
        SlipKind.of("one reading repeated from the station before", TapeSlips::readingRepeated)
            .unseen(LIKELY),
        SlipKind.of("one reading repeated from the point before", TapeSlips::pointRepeated)
            .unseen(LIKELY));
  }

  private static UnaryOperator<Vector3> scaled(double factor) {
    return p ->
        Vector3.of(
            BoatEdits.written(p.x() * factor),
            BoatEdits.written(p.y() * factor),
            BoatEdits.written(p.z() * factor));
  }

  private static UnaryOperator<Vector3> across(double factor) {
    return p -> BoatEdits.upBy(factor).apply(BoatEdits.outBy(factor).apply(p));
  }

  private static SlipKind hull(String name, UnaryOperator<Vector3> reading) {
    return SlipKind.of(
        name, b -> List.of(new SlippedBoat(b, BoatEdits.withEveryStation(b, reading), "all")));
  }

  private static SlipKind station(String name, UnaryOperator<Vector3> reading) {
    return SlipKind.of(name, b -> atEach(b, (boat, i) -> BoatEdits.withStation(boat, i, reading)));
  }

  private static SlipKind rail(String name, UnaryOperator<Vector3> reading) {
    return SlipKind.of(
        name, b -> atEach(b, (boat, i) -> BoatEdits.withPoint(boat, i, points(boat) - 1, reading)));
  }

  private static SlipKind chine(String name, UnaryOperator<Vector3> reading) {
    return SlipKind.of(
        name, b -> atEach(b, (boat, i) -> BoatEdits.withPoint(boat, i, points(boat) - 2, reading)));
  }

  private static SlipKind bottom(String name, UnaryOperator<Vector3> reading) {
    return SlipKind.of(
        name,
        b ->
            atEach(b, (boat, i) -> BoatEdits.withPoint(boat, i, 0, reading)).stream()
                .filter(s -> !s.entered().equals(s.truth()))
                .toList());
  }

  private interface Edit {
    Boat of(Boat boat, int station);
  }

  private static List<SlippedBoat> atEach(Boat boat, Edit edit) {
    return slips(boat, IntStream.range(0, stations(boat).size()), edit);
  }

  private static List<SlippedBoat> slips(Boat boat, IntStream stations, Edit edit) {
    return stations
        .mapToObj(
            i -> new SlippedBoat(boat, edit.of(boat, i), "at the " + stations(boat).get(i).name()))
        .toList();
  }

  private static IntStream butTheFirst(Boat boat) {
    return IntStream.range(1, stations(boat).size());
  }

  private static List<SlippedBoat> swapped(Boat boat) {
    return slips(
        boat,
        butTheFirst(boat),
        (b, i) -> {
          List<Station> all = new ArrayList<>(stations(b));
          Collections.swap(all, i - 1, i);
          return BoatEdits.withStations(b, all);
        });
  }

  private static List<SlippedBoat> sectionsSwapped(Boat boat) {
    return slips(
        boat,
        butTheFirst(boat),
        (b, i) -> {
          List<Station> all = new ArrayList<>(stations(b));
          all.set(i - 1, section(stations(b).get(i), stations(b).get(i - 1)));
          all.set(i, section(stations(b).get(i - 1), stations(b).get(i)));
          return BoatEdits.withStations(b, all);
        });
  }

  private static List<SlippedBoat> sectionRepeated(Boat boat) {
    return slips(
        boat,
        butTheFirst(boat),
        (b, i) ->
            BoatEdits.withStations(
                b,
                BoatEdits.replaced(stations(b), i, here -> section(stations(b).get(i - 1), here))));
  }

  /** The section of one station at the place of another. */
  private static Station section(Station section, Station place) {
    List<Vector3> points =
        IntStream.range(0, section.port().size())
            .mapToObj(
                k ->
                    Vector3.of(
                        place.port().get(k).x(),
                        section.port().get(k).y(),
                        section.port().get(k).z()))
            .toList();
    return Station.mirrored(place.name(), points);
  }

  private static List<SlippedBoat> pointsSwapped(Boat boat) {
    int rail = points(boat) - 1;
    return atEach(
        boat,
        (b, i) -> {
          List<Vector3> port = stations(b).get(i).port();
          Boat once = BoatEdits.withPoint(b, i, rail, p -> out(p, port.get(rail - 1).y()));
          return BoatEdits.withPoint(once, i, rail - 1, p -> out(p, port.get(rail).y()));
        });
  }

  private static List<SlippedBoat> readingRepeated(Boat boat) {
    int rail = points(boat) - 1;
    List<SlippedBoat> breadths =
        slips(
            boat,
            butTheFirst(boat),
            (b, i) ->
                BoatEdits.withPoint(
                    b, i, rail, p -> out(p, stations(b).get(i - 1).portRail().y())));
    List<SlippedBoat> heights =
        slips(
            boat,
            butTheFirst(boat),
            (b, i) ->
                BoatEdits.withPoint(
                    b,
                    i,
                    rail,
                    p -> Vector3.of(p.x(), p.y(), stations(b).get(i - 1).portRail().z())));
    return Stream.concat(breadths.stream(), heights.stream()).toList();
  }

  private static List<SlippedBoat> pointRepeated(Boat boat) {
    int rail = points(boat) - 1;
    return atEach(
        boat,
        (b, i) ->
            BoatEdits.withPoint(
                b, i, rail, p -> out(p, stations(b).get(i).port().get(rail - 1).y())));
  }

  private static Vector3 out(Vector3 point, double half) {
    return Vector3.of(point.x(), half, point.z());
  }

  private static List<Station> stations(Boat boat) {
    return boat.hull().stations();
  }

  private static int points(Boat boat) {
    return stations(boat).get(0).port().size();
  }
}
