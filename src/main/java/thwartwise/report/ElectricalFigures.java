package thwartwise.report;

import java.util.OptionalInt;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.WireSize;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;

/** Electrical figures as on a label or in a shop; the same in every system of units. */
final class ElectricalFigures {
  private static final double HOUR = 3600;
  private static final double SQUARE_MILLIMETRE = 1e-6;

  private ElectricalFigures() {}

  static String amperes(double current) {
    return Rounding.up(current, current < 10 ? 1 : 0) + UnitFormat.TIED + "A";
  }

  /** A figure as on a label or a fuse. */
  static String label(double value, String unit) {
    return Rounding.plain(value) + UnitFormat.TIED + unit;
  }

  /** The charge that a battery gives, in whole ampere-hours. */
  static String given(double charge) {
    return Rounding.down(charge / HOUR, 0) + UnitFormat.TIED + "Ah";
  }

  static String taken(double charge) {
    return Rounding.up(charge / HOUR, 0) + UnitFormat.TIED + "Ah";
  }

  static String hours(double time) {
    return Rounding.plain(time / HOUR) + UnitFormat.TIED + "hours";
  }

  /** A required time, rounded up to whole minutes. */
  static String atLeast(double time) {
    return minutes(Math.ceil(time / 60 - 1e-9), time);
  }

  /** An available time, rounded down to whole minutes, or seconds below one: "1 h 05 min". */
  static String duration(double time) {
    return time < 60
        ? (long) Math.floor(time + 1e-9) + UnitFormat.TIED + "s"
        : minutes(Math.floor(time / 60 + 1e-9), time);
  }

  private static String minutes(double whole, double time) {
    if (!Double.isFinite(time)) {
      return "without end";
    }
    long minutes = (long) whole;
    return minutes < 60
        ? minutes + UnitFormat.TIED + "min"
        : minutes / 60
            + UnitFormat.TIED
            + "h"
            + UnitFormat.TIED
            + (minutes % 60 < 10 ? "0" : "")
            + minutes % 60
            + UnitFormat.TIED
            + "min";
  }

  /** A battery or motor that is stated under the name of kit that is not aboard. */
  static String ashore(String thing, String name) {
    return thing
        + " is not aboard: nothing among the kit is called \""
        + name
        + "\". If it is there, give both one name in the boat file";
  }

  /** How to enter what nobody stated yet, or what is missing of it. */
  static String entered(String part) {
    return "To enter it type refit, answer electrics, then "
        + part
        + " (by hand in a boat file: help electrics)";
  }

  static String share(double share) {
    return Rounding.down(100 * share, 0) + UnitFormat.TIED + "%";
  }

  /** The least size of both kinds sold, as in "4 mm2, AWG 12". */
  static String wire(double area) {
    double metric = WireSize.metric(area);
    if (Double.isNaN(metric)) {
      return "more than 70" + UnitFormat.TIED + "mm2";
    }
    OptionalInt gauge = WireSize.gauge(area);
    return area(metric) + (gauge.isPresent() ? ", AWG" + UnitFormat.TIED + gauge.getAsInt() : "");
  }

  /** The wire as it was stated, or that nobody stated it. */
  static String wire(Circuit circuit) {
    return circuit
        .area()
        .map(ElectricalFigures::area)
        .or(() -> circuit.gauge().map(gauge -> "AWG" + UnitFormat.TIED + gauge))
        .orElse("not stated");
  }

  private static String area(double area) {
    return Rounding.plain(area / SQUARE_MILLIMETRE) + UnitFormat.TIED + "mm2";
  }
}
