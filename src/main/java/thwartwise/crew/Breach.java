package thwartwise.crew;

import thwartwise.checks.CheckReading;
import thwartwise.checks.FigureWords;
import thwartwise.measure.UnitFormat;

/**
 * A reading that is not met.
 *
 * @param afterAllowance whether it is only so once the allowance for tape and scales is taken off
 */
public record Breach(CheckReading reading, boolean afterAllowance) {

  /** As measured before after the allowance, then the lesser margin. */
  Breach worse(Breach other) {
    if (afterAllowance != other.afterAllowance) {
      return afterAllowance ? other : this;
    }
    return other.reading.margin().room() < reading.margin().room() ? other : this;
  }

  String words(UnitFormat units) {
    return FigureWords.of(reading, units)
        + (afterAllowance ? " (after the allowance for tape and scales)" : "");
  }
}
