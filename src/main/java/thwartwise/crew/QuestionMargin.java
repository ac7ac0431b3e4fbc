package thwartwise.crew;

import java.util.Optional;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Margin;

/** How far inside its limit one figure comes out, after the allowance. */
public record QuestionMargin(CheckQuestion question, Margin margin) {

  /** Empty where there is no value. */
  static Optional<QuestionMargin> of(CheckReading reading) {
    return reading.value().isEmpty()
        ? Optional.empty()
        : Optional.of(new QuestionMargin(reading.question(), reading.margin()));
  }
}
