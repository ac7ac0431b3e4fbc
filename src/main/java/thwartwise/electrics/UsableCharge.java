package thwartwise.electrics;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * How long a battery can be used on a day: Peukert's law, then the usable share and the shares left
 * by age and by cold. What nobody stated is assumed so that it flatters least.
 *
 * @param exponent Peukert's
 * @param ratedTime s
 * @param share that may be used
 * @param aged share left by age
 * @param cold share left by the cold
 * @param guesses what nobody stated
 */
public record UsableCharge(
    double charge,
    double ratedTime,
    double exponent,
    double share,
    double aged,
    double cold,
    Set<Guess> guesses) {

  /** A property of a battery that nobody stated. */
  public enum Guess {
    CHEMISTRY,
    RATED_TIME,
    AGE,
    TEMPERATURE,
    STARTER
  }

  /** The temperature of a battery that nobody measured, °C (judgement: a spring morning). */
  public static final double UNSTATED_CELSIUS = 5;

  /** The age of a battery whose first use nobody knows, years (judgement). */
  public static final double UNSTATED_YEARS = 6;

  /** The age from which a battery's label counts for nothing, years (judgement). */
  public static final double MOST_YEARS = 10;

  /**
   * The time of the label where it gives none, hours. Some labels are over 100 hours, which gives
   * least at a motor's current.
   */
  public static final double UNSTATED_HOURS = 100;

  /** The usable share of a battery made to start an engine (common practice, no source). */
  public static final double STARTER_SHARE = 0.2;

  private static final double DAYS_IN_A_YEAR = 365.25;

  public UsableCharge {
    guesses = Set.copyOf(guesses);
  }

  public static UsableCharge of(Battery battery, LocalDate today, Optional<Double> celsius) {
    Set<Guess> guesses = EnumSet.noneOf(Guess.class);
    Chemistry chemistry = battery.chemistry().orElse(Chemistry.FLOODED);
    note(guesses, Guess.CHEMISTRY, battery.chemistry());
    note(guesses, Guess.RATED_TIME, battery.ratedTime());
    // A date in the future is a typing error; it must not make an old battery count as new.
    Optional<LocalDate> since = battery.since().filter(day -> !day.isAfter(today));
    note(guesses, Guess.AGE, since);
    note(guesses, Guess.TEMPERATURE, celsius);
    if (battery.starter().isEmpty() && chemistry.isLead()) {
      guesses.add(Guess.STARTER);
    }
    return new UsableCharge(
        battery.charge(),
        battery.ratedTime().orElse(UNSTATED_HOURS * 3600),
        battery.exponent().orElse(chemistry.exponent()),
        share(battery, chemistry),
        chemistry.agedShare(since.map(s -> years(s, today)).orElse(UNSTATED_YEARS)),
        chemistry.coldShare(celsius.orElse(UNSTATED_CELSIUS)),
        guesses);
  }

  private static double share(Battery battery, Chemistry chemistry) {
    boolean starter = battery.starter().orElse(chemistry.isLead());
    return starter ? STARTER_SHARE : chemistry.usableShare();
  }

  /** The age in years; a date after today gives none. */
  public static double years(LocalDate since, LocalDate today) {
    return Math.max(0, ChronoUnit.DAYS.between(since, today) / DAYS_IN_A_YEAR);
  }

  private static void note(Set<Guess> guesses, Guess guess, Optional<?> said) {
    if (said.isEmpty()) {
      guesses.add(guess);
    }
  }

  /** The share of what the label would give at that current. */
  public double fraction() {
    return share * aged * cold;
  }

  /** Whether it is so old that its label counts for nothing. */
  public boolean isWornOut() {
    return !(aged > 0);
  }

  /** The running time at a current, s; infinite at zero current. */
  public double time(double current) {
    return current > 0
        ? fraction() * Peukert.withinLabel(charge, ratedTime, exponent, current)
        : Double.POSITIVE_INFINITY;
  }

  /** The charge used in that time, C. */
  public double drawn(double current) {
    return current * time(current);
  }

  /** The greatest current for that time, A. */
  public double currentFor(double time) {
    double whole = time / fraction();
    return Math.min(charge / whole, charge / ratedTime * Math.pow(ratedTime / whole, 1 / exponent));
  }

  /**
   * The running time at a steady current, by the two forms of Peukert's law. They agree only where
   * the label's time is an hour at one ampere; a label of 20 hours needs the rated form.
   */
  static final class Peukert {
    private Peukert() {}

    /**
     * {@code T = R (C / (I R))^n}: the form for a charge C that is drawn in the rated time R.
     *
     * @return s; not limited to the label
     */
    public static double rated(double charge, double ratedTime, double exponent, double current) {
      return ratedTime * Math.pow(charge / (current * ratedTime), exponent);
    }

    /**
     * {@code T = C / I^n} in hours and ampere-hours: the form for a charge found at one ampere. It
     * gives too little for a charge rated over 20 hours; kept for comparison with published
     * examples.
     *
     * @return s
     */
    public static double oneAmpere(double charge, double exponent, double current) {
      return charge / Math.pow(current, exponent);
    }

    /** The rated form, limited to the charge on the label: a slow discharge adds nothing. */
    public static double withinLabel(
        double charge, double ratedTime, double exponent, double current) {
      return Math.min(charge / current, rated(charge, ratedTime, exponent, current));
    }
  }
}
