package thwartwise.walk.questions;

import java.util.Optional;
import thwartwise.geometry.Vector3;
import thwartwise.measure.Rounding;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Warning;

/** Questions for the position of a piece of kit. */
public record KitPositionQuestions(
    Replay replay, QuantityQuestions quantities, Outline outline, PlausibleLimits limits) {
  /**
   * How far kit may reach beyond the hull, m: a motor hangs aft of the transom and below the
   * bottom, and oars stick out.
   */
  private static final double BEYOND = 1.0;

  /** The error allowed for a tape, m. */
  private static final double UNDER = 0.02;

  public Vector3 at(String key, String subject) {
    double x = along(key, subject);
    double y = across(key, subject, x);
    return Vector3.of(x, y, up(key, subject));
  }

  private double along(String key, String subject) {
    return replay.ask(
        quantities
            .length(key + ".x", subject + ", forward of the aft end")
            .how("Tape from the aft end to its middle; aft of the aft end with a minus.")
            .why("It trims the boat.")
            .unlessAmbiguous(quantities.feetOrInches(outline.aft(), outline.fore()))
            .within(
                quantities.length(
                    outline.aft() - BEYOND,
                    outline.fore() + BEYOND,
                    "length of the hull and a pace"))
            .within(x -> outside(Math.max(outline.aft() - x, x - outline.fore()))));
  }

  /** Doubts a place that is too far beyond the hull for anything carried. */
  private Optional<Warning> outside(double beyond) {
    return beyond > limits.kitOutside()
        ? Optional.of(
            new Warning(
                "That is %s outside the hull, where nothing is carried. Measure it again."
                    .formatted(quantities.show(beyond)),
                Optional.empty(),
                true))
        : Optional.empty();
  }

  private double across(String key, String subject, double x) {
    double most = outline.halfBeam() + BEYOND / 2;
    return replay.ask(
        quantities
            .length(key + ".y", subject + ", port of the middle")
            .how("From the middle line to its middle, to port; to starboard with a minus.")
            .why("It heels the boat.")
            .within(quantities.length(-most, most, "breadth of the hull and half a pace"))
            .within(y -> outside(Math.abs(y) - outline.railAt(x))));
  }

  private double up(String key, String subject) {
    return replay.ask(
        quantities
            .length(key + ".z", subject + ", height of its middle")
            .how("From the baseline straight up to its middle.")
            .why("High kit makes the boat tender.")
            .within(
                quantities.length(outline.lowest() - BEYOND, 2.5, "height of kit in such a boat"))
            .within(this::underTheKeel)
            .within(
                z -> outside(z - outline.highest() - limits.kitAboveRail() + limits.kitOutside())));
  }

  /** Doubts a negative place, which is most often a minus typed by mistake. */
  private Optional<Warning> underTheKeel(double z) {
    if (!(z < outline.lowest() - UNDER)) {
      return Optional.empty();
    }
    return Optional.of(
        new Warning(
            "%s is under the keel, where nothing is carried. Did you mean %s?"
                .formatted(quantities.show(z), quantities.show(-z)),
            Optional.of(Rounding.metres(-z)),
            true));
  }
}
