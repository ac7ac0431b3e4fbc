package thwartwise.page;

import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/**
 * The load as a share of its limit: a bar that ends at the limit, or beyond it if more is aboard.
 *
 * @param limit kg
 * @param kit mass of the kit listed, kg
 * @param people mass of the people aboard today, kg
 * @param units of its words
 */
public record LoadBar(double limit, double kit, double people, UnitFormat units) {

  double used() {
    return kit + people;
  }

  double end() {
    return Math.max(limit, used());
  }

  boolean isTooMuch() {
    return used() > limit;
  }

  String endShown() {
    return units.mass(end(), isTooMuch() ? Side.UP : Side.DOWN);
  }
}
