package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Chamber;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.measure.Rounding;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Warning;
import thwartwise.walk.engine.WordQuestions;

/** Unlikely heights of a seat, compared with the floor, the rail and the boxes. */
public record SeatHeightWarnings(
    QuantityQuestions quantities,
    Outline outline,
    double floor,
    List<Chamber> chambers,
    PlausibleLimits limits) {

  /**
   * @param along the ends of the seat in x
   * @param middle whether it reaches across the middle line
   */
  Optional<Warning> at(Span along, boolean middle, double z) {
    return tooHigh(along, z).or(() -> middle ? inABox(along, z) : Optional.empty());
  }

  private Optional<Warning> tooHigh(Span along, double z) {
    double most = limits.seatMost(outline.railHeightAt(along.middle()), floor);
    double inches = z / 2.54;
    boolean fits = inches >= floor && inches <= most;
    return z > most
        ? Optional.of(
            new Warning(
                "%s is too high to sit on (%s).%s"
                    .formatted(
                        quantities.show(z),
                        quantities.show(most),
                        fits
                            ? " Centimetres for inches? Did you mean "
                                + quantities.show(inches)
                                + "?"
                            : " Measure it again, from the baseline."),
                fits ? Optional.of(Rounding.metres(inches)) : Optional.empty(),
                true))
        : Optional.empty();
  }

  /** Doubts a seat inside a sealed box, because one of the two heights must be wrong. */
  private Optional<Warning> inABox(Span along, double z) {
    Vector3 seat = Vector3.of(along.middle(), 0, z);
    return chambers.stream()
        .filter(c -> c.box().contains(seat) && z < top(c) - limits.seatInBox())
        .findFirst()
        .map(
            c ->
                new Warning(
                    "%s is inside the chamber %s, whose top is %s up. Is that the seat?"
                        .formatted(
                            quantities.show(z),
                            WordQuestions.quoted(c.name()),
                            quantities.show(top(c))),
                    Optional.of(Rounding.metres(top(c))),
                    true));
  }

  private double top(Chamber chamber) {
    return Math.min(outline.highest(), chamber.box().z().to());
  }
}
