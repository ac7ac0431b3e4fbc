package thwartwise.electrics;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A battery, by its label and by eye.
 *
 * @param kit the name of the kit it is; its mass and middle stand there
 * @param volts nominal
 * @param charge on the label, C
 * @param ratedTime the time in which the label's charge is drawn, s
 * @param exponent Peukert's, where the maker gives one
 * @param since when it was first used
 * @param starter whether it is made to start an engine
 * @param strapped whether strap and tray hold it when the boat is upside down
 * @param terminalsCovered whether nothing can fall across both poles
 */
public record Battery(
    String kit,
    double volts,
    double charge,
    Optional<Chemistry> chemistry,
    Optional<Double> ratedTime,
    Optional<Double> exponent,
    Optional<LocalDate> since,
    Optional<Boolean> starter,
    Optional<Boolean> strapped,
    Optional<Boolean> terminalsCovered) {

  /** A copy that is made to start an engine. */
  Battery startingEngines() {
    return with(Optional.of(true), strapped);
  }

  /** A copy that nothing holds. */
  Battery unstrapped() {
    return with(starter, Optional.of(false));
  }

  private Battery with(Optional<Boolean> madeToStart, Optional<Boolean> held) {
    return new Battery(
        kit,
        volts,
        charge,
        chemistry,
        ratedTime,
        exponent,
        since,
        madeToStart,
        held,
        terminalsCovered);
  }

  /** Whether somebody stated that nothing holds it; silence is no statement. */
  public boolean isLoose() {
    return isDenied(strapped);
  }

  /** Whether somebody stated that its terminals are not covered. */
  public boolean isBare() {
    return isDenied(terminalsCovered);
  }

  private static boolean isDenied(Optional<Boolean> said) {
    return !said.orElse(true);
  }
}
