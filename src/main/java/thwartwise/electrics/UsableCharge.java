package thwartwise.electrics;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * How long a battery may be drawn from on a day: Peukert's law, then the share that may be used,
 * the share that age has left and the share the cold leaves. What nobody said is taken so that it
 * flatters least.
 *
 * @param exponent Peukert's
 * @param ratedTime s
 * @param share that may be taken out
 * @param aged share left by age
 * @param cold share left by the cold
 * @param guesses what nobody said
 */
public record UsableCharge(
    double charge,
    double ratedTime,
    double exponent,
    double share,
    double aged,
    double cold,
    Set<Guess> guesses) {

  /** Something nobody said of a battery. */
  public enum Guess {
    CHEMISTRY,
    RATED_TIME,
    AGE,
    TEMPERATURE,
    STARTER
  }

  /** °C of a battery nobody held a thermometer to (judgement: a spring morning). */
  public static final double UNSTATED_CELSIUS = 5;

  /** Years of a battery of which nobody knows since when it is used (judgement). */
  public static final double UNSTATED_YEARS = 6;

  /** Years after which nothing of a battery's label counts (judgement). */
  public static final double MOST_YEARS = 10;

  /** Some labels give the charge over 100 hours, which comes to least at a motor's current. */
  public static final double UNSTATED_HOURS = 100;

  /** What may be taken out of a battery made to start an engine (common practice, no source). */
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
    // A slip of the pen: an old battery must not count as new by it.
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

  /** A day after today is no age. */
  public static double years(LocalDate since, LocalDate today) {
    return Math.max(0, ChronoUnit.DAYS.between(since, today) / DAYS_IN_A_YEAR);
  }

  private static void note(Set<Guess> guesses, Guess guess, Optional<?> said) {
    if (said.isEmpty()) {
      guesses.add(guess);
    }
  }

  /** Share of what the label would give at that current. */
  public double fraction() {
    return share * aged * cold;
  }

  /** Whether it is so old that nothing of its label counts. */
  public boolean isWornOut() {
    return !(aged > 0);
  }

  /** How long it may be drawn from, s; without end at no current. */
  public double time(double current) {
    return current > 0
        ? fraction() * Peukert.withinLabel(charge, ratedTime, exponent, current)
        : Double.POSITIVE_INFINITY;
  }

  /** What is drawn in that time, C. */
  public double drawn(double current) {
    return current * time(current);
  }

  /** The greatest current that can be drawn for so long, A. */
  public double currentFor(double time) {
    double whole = time / fraction();
    return Math.min(charge / whole, charge / ratedTime * Math.pow(ratedTime / whole, 1 / exponent));
  }

  /**
   * How long a battery lasts at a steady current, by Peukert's law in its two forms. They agree
   * only where the label's time is an hour at one ampere; a label of 20 hours wants the rated form.
   */
  static final class Peukert {
    private Peukert() {}

    /**
     * {@code T = R (C / (I R))^n}: the form for a charge C that is drawn in the rated time R.
     *
     * @return s; not cut at the label
     */
    public static double rated(double charge, double ratedTime, double exponent, double current) {
      return ratedTime * Math.pow(charge / (current * ratedTime), exponent);
    }

    /**
     * {@code T = C / I^n} in hours and ampere-hours: the form for a charge found at one ampere. Of
     * a charge rated over 20 hours it says too little; kept for comparing with published examples.
     *
     * @return s
     */
    public static double oneAmpere(double charge, double exponent, double current) {
      return charge / Math.pow(current, exponent);
    }

    /** The rated form, never giving more charge than the label: a slow draw adds nothing. */
    public static double withinLabel(
        double charge, double ratedTime, double exponent, double current) {
      return Math.min(charge / current, rated(charge, ratedTime, exponent, current));
    }
  }
}
