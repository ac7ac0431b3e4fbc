package thwartwise.inspection;

import java.util.Optional;
import thwartwise.checks.Margin;
import thwartwise.checks.Question;
import thwartwise.checks.Reading;

/** How far inside its limit one figure comes out, after the allowance. */
public record QuestionMargin(Question question, Margin margin) {

  /** Empty where there is no value. */
  static Optional<QuestionMargin> of(Reading reading) {
    return reading.value().isEmpty()
        ? Optional.empty()
        : Optional.of(new QuestionMargin(reading.question(), reading.margin()));
  }
}
