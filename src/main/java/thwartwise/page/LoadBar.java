package thwartwise.page;

/**
 * How much of the load limit is used, as a bar that ends at the limit, or beyond it where more is
 * aboard.
 *
 * @param limit kg
 * @param kit mass of the kit listed, kg
 * @param people mass of the people aboard today, kg
 */
public record LoadBar(double limit, double kit, double people) {

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
    return FigureText.with(isTooMuch() ? FigureText.up(end(), 0) : FigureText.down(end(), 0), "kg");
  }
}
