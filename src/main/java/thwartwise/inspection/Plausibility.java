package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.boat.Craft;
import thwartwise.boat.HullMeasurements;
import thwartwise.boat.Loading;
import thwartwise.boat.Material;
import thwartwise.boat.PanelTwist;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.geometry.Span;

/**
 * Whether what was measured looks like a boat. A slip of the tape that closes into some hull shows
 * in none of the checks, and every answer would be that of another boat. All limits are judgement;
 * what cannot be worked out gives no finding.
 */
final class Plausibility {
  private static final double LEAST_BLOCK = 0.30;
  // A box fills all of its block; a flat punt with plumb sides and short ends fills nine tenths.
  private static final double MOST_BLOCK = 0.95;
  private static final double MOST_TWIST = Math.toRadians(25);
  // Density is the swamped one and frames, rails and thwarts come on top of the skin: wide bounds.
  private static final double LEAST_WEIGHT = 0.7;
  private static final double MOST_WEIGHT = 3.5;
  private static final String MEASURED = "as measured";

  private static final Question BLOCK =
      new Question(
          "how much of its block the hull fills under water",
          Unit.PERCENT,
          "30 to 95 % in a small open boat (judgement)",
          MEASURED + "; level, at its weight as loaded");
  private static final Question TWIST =
      new Question(
          "how hard a panel is twisted",
          Unit.DEGREE_PER_METRE,
          "stiff plywood is not twisted harder than 25 degrees a metre (judgement)",
          MEASURED);
  private static final Question CROSSING =
      new Question(
          "length over which the faired outline crosses itself",
          Unit.METRE,
          "no hull does (judgement)",
          MEASURED);
  private static final Question WEIGHT =
      new Question(
          "weight of the bare hull against that of its skin",
          Unit.KILOGRAM,
          "0.7 to 3.5 times skin area by thickness by swamped density (judgement)",
          MEASURED);

  private Plausibility() {}

  /** What was found, for the boat as it is loaded. */
  static List<Finding> findings(Loading loading) {
    Craft craft = loading.craft();
    List<Finding> findings = new ArrayList<>();
    block(loading).ifPresent(findings::add);
    twist(craft.boat().hull()).ifPresent(findings::add);
    crossing(craft.form().crossings()).ifPresent(findings::add);
    findings.add(weight(craft));
    return findings;
  }

  private static Optional<Finding> block(Loading loading) {
    Craft craft = loading.craft();
    double volume = loading.mass() / craft.waterDensity() - craft.form().skeg().volume();
    OptionalDouble block = BlockCoefficient.of(craft.form().outside(), volume);
    if (block.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        BLOCK.between(
            block.getAsDouble(), new Span(LEAST_BLOCK, MOST_BLOCK), "check the stations"));
  }

  private static Optional<Finding> twist(HullMeasurements hull) {
    // A mould has any shape; sheets and planks have not.
    if (hull.material().filter(m -> m == Material.GRP).isPresent()) {
      return Optional.empty();
    }
    return PanelTwist.greatest(hull.stations()).map(Plausibility::twist);
  }

  private static Finding twist(PanelTwist twist) {
    String where = "most between " + twist.panel() + ", from " + twist.between();
    return TWIST.atMost(twist.perMetre(), MOST_TWIST, where, "check these points");
  }

  private static Optional<Finding> crossing(List<Span> crossings) {
    if (crossings.isEmpty()) {
      return Optional.empty();
    }
    Span first = crossings.get(0);
    String where = String.format(Locale.ROOT, "from x %.2f to %.2f m", first.from(), first.to());
    double length = crossings.stream().mapToDouble(Span::length).sum();
    return Optional.of(CROSSING.atMost(length, 0, where, "measure another station there"));
  }

  private static Finding weight(Craft craft) {
    HullMeasurements hull = craft.boat().hull();
    double area = craft.form().shellArea();
    double skin = area * hull.thickness() * hull.density();
    String remedy =
        String.format(
            Locale.ROOT,
            "weigh it again or check the thickness: %.1f m2 of skin come to %.0f kg",
            area,
            skin);
    return WEIGHT.between(hull.mass(), new Span(LEAST_WEIGHT * skin, MOST_WEIGHT * skin), remedy);
  }

  /** What is asked of the measurements, whatever the boat. */
  private record Question(String check, Unit unit, String source, String condition) {

    /** The end of the span that is nearer, or overstepped, is the limit told. */
    Finding between(double value, Span span, String remedy) {
      boolean low = value * value < span.from() * span.to();
      boolean met = span.contains(value);
      return answer(value, low ? span.from() : span.to(), low, met, met ? "" : remedy);
    }

    Finding atMost(double value, double most, String where, String remedy) {
      boolean met = value <= most;
      return answer(value, most, false, met, met ? where : where + "; " + remedy);
    }

    private Finding answer(double value, double limit, boolean atLeast, boolean met, String note) {
      return new Finding(
          check,
          Role.INFORMATION,
          met ? Outcome.MEETS : Outcome.FALLS_SHORT,
          OptionalDouble.of(value),
          limit,
          atLeast,
          unit,
          source,
          condition,
          note);
    }
  }
}
