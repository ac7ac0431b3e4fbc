package thwartwise.today;

import java.util.List;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.today.TodayVerdict.Point;

/**
 * What concerns the people whatever the boat. Classes of life jackets after EN ISO 12402-4 and -5
 * (READ), swimmers after UK youth activity rules (READ).
 */
final class PeopleAfloat {
  private PeopleAfloat() {}

  static List<Point> points(UnitFormat units) {
    return List.of(
        new Point(
            "Is a life jacket on everyone before stepping in, of their size, fitted and fastened:"
                + " 100\u00a0N (EN ISO 12402-4) for children and whoever cannot swim, 50\u00a0N"
                + " (EN ISO 12402-5) only for swimmers over "
                + units.either("25 kg", () -> units.mass(25, Side.UP))
                + " with help near?",
            "find the right jackets, or leave whoever has none ashore"),
        new Point(
            "Is it known who cannot swim "
                + units.distance(50, Side.UP)
                + " in these clothes and stay afloat for five minutes,"
                + " and is there at most one of them, or an adult for each?",
            "ask and try it in standing depth; count whoever is not sure as a non-swimmer"),
        new Point(
            "Does somebody ashore know who goes, where, when you are due, and what to do then?",
            "tell somebody who stays ashore, with a time and a telephone number"),
        new Point(
            "Is a rescue boat out, or a plan made for how somebody reaches a swamped boat here?",
            "name who comes, in what, and how long that takes; without an answer stay by the"
                + " bank"));
  }
}
