package thwartwise.rules;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.boat.Propulsion;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;
import thwartwise.rules.Parameters.Parameter;

/**
 * The largest motor by 33 CFR 183.53 (READ): a factor of length by breadth of the transom, in feet,
 * and a table of it. What the boat file cannot say (remote steering, a transom of 20 in) counts as
 * absent unless the rule set states it. The rule rounds the factor to a whole number and the answer
 * up to a multiple of five; both are shown and neither is used.
 */
final class Cfr183Power {
  static final Parameter REMOTE =
      Parameter.flag("remote-steering", "whether it has remote steering and a transom of 20 in");

  private static final String TITLE = "33 CFR 183.53 largest motor";
  private static final double TABLE_ENDS = 52.5;
  private static final double[] UP_TO = {35, 39, 42, 45};
  private static final double[] HORSEPOWER = {3, 5, 7.5, 10, 15};

  // A factor of 46 computed in metres must not come out slightly below 46.
  private static final double BINARY = 1e-9;

  private Cfr183Power() {}

  static List<FormulaResult> of(RatedBoat boat, Parameters values) {
    if (!(boat.propulsion() instanceof Propulsion.Outboard motor)) {
      return List.of();
    }
    boolean flat = FlatBottom.is(boat.model().boat().hull());
    boolean remote = values.flag(REMOTE.name());
    double factor = factor(boat.length(), breadth(boat));
    double used = horsepower(factor, remote, flat);
    return List.of(
        FormulaResult.of(TITLE, CapKind.POWER, used * Cfr183.HORSEPOWER)
            .comparedWith(motor.power())
            .withNote(note(factor, used, remote, flat)));
  }

  private static FormulaNote note(double factor, double used, boolean remote, boolean flat) {
    double rounded = asPrinted(factor, remote, flat);
    return new FormulaNote.MotorFactor(
        used,
        factor,
        flat,
        remote,
        rounded > used ? OptionalDouble.of(rounded) : OptionalDouble.empty());
  }

  /** Length by breadth in square feet. */
  static double factor(double length, double breadth) {
    return length / Cfr183.FOOT * (breadth / Cfr183.FOOT);
  }

  /**
   * As the rule prints it: the factor to the nearest whole number, the answer to a multiple of 5.
   */
  static double asPrinted(double factor, boolean remote, boolean flat) {
    if (factor <= TABLE_ENDS) {
      return table(Math.floor(factor + 0.5 + BINARY), flat);
    }
    return 5 * Math.ceil(beyond(factor, remote, flat) / 5 - BINARY);
  }

  /** Without rounding up. */
  static double horsepower(double factor, boolean remote, boolean flat) {
    return factor <= TABLE_ENDS
        ? table(Math.floor(factor + BINARY), flat)
        : beyond(factor, remote, flat);
  }

  private static double table(double whole, boolean flat) {
    int row = 0;
    while (row < UP_TO.length && whole > UP_TO[row]) {
      row++;
    }
    // Below the lowest step the noted rule gives no smaller motor.
    return HORSEPOWER[flat ? Math.max(0, row - 1) : row];
  }

  private static double beyond(double factor, boolean remote, boolean flat) {
    if (remote) {
      return 2 * factor - 90;
    }
    return flat ? 0.5 * factor - 15 : 0.8 * factor - 25;
  }

  /**
   * Breadth of the transom; where that is under half the beam, the greatest breadth in the aft
   * quarter.
   */
  static double breadth(RatedBoat boat) {
    double transom =
        2
            * boat.model().boat().hull().stations().get(0).port().stream()
                .mapToDouble(Vector3::y)
                .max()
                .orElseThrow();
    if (!(transom < boat.beam() / 2)) {
      return transom;
    }
    double aft = boat.aftEnd();
    Box quarter = new Box(new Span(aft, aft + boat.length() / 4), Span.ALL, Span.ALL);
    return boat.model().form().outside().within(quarter).extent(Vector3.of(0, 1, 0)).length();
  }

  /**
   * Tells a flat bottom with a hard chine by the stations of the after half: from the keel outward
   * the first line rises less than one in ten over at least half the breadth there (judgement). A
   * round bottom measured so coarsely that it looks flat counts as flat, which gives the lower
   * answer.
   */
  static final class FlatBottom {
    private static final double RISE = 0.1;
    private static final double SHARE = 0.5;

    private FlatBottom() {}

    static boolean is(HullMeasurements hull) {
      List<Station> stations = hull.stations();
      return stations.subList(0, (stations.size() + 1) / 2).stream().allMatch(FlatBottom::flat);
    }

    private static boolean flat(Station station) {
      Vector3 keel = station.port().get(0);
      double breadth = station.port().stream().mapToDouble(Vector3::y).max().orElseThrow();
      return station.port().stream()
          .skip(1)
          .filter(p -> p.z() - keel.z() <= RISE * (p.y() - keel.y()))
          .anyMatch(p -> p.y() >= SHARE * breadth);
    }
  }
}
