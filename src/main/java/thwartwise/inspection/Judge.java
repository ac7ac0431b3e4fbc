package thwartwise.inspection;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.boat.Craft;
import thwartwise.boat.Loading;
import thwartwise.checks.Allowance;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.Reading;
import thwartwise.checks.Role;
import thwartwise.checks.Trial;
import thwartwise.rules.RuleSet;

/**
 * Says of one craft whether a seating, with nobody heavier than some mass, meets every check that
 * limits crew: as measured and with the allowance taken off, for every mixture of masses.
 */
final class Judge {
  private final Craft craft;
  private final boolean symmetric;
  private final double lightest;
  private final Allowance allowance;
  private final List<Check> limiting;
  private final List<Check> dry;
  private final List<Check> wet;
  private final Map<Question, Boolean> known = new ConcurrentHashMap<>();

  private record Question(Seating seating, double heaviest, boolean swamped) {}

  Judge(Craft craft, RuleSet rules) {
    this.craft = craft;
    this.symmetric = craft.isSymmetric();
    this.lightest = rules.value("lightest-person");
    this.allowance = Allowance.of(rules);
    this.limiting =
        CautiousChecks.of(rules).stream().filter(c -> c.role() == Role.LIMITS_CREW).toList();
    this.dry = limiting.stream().filter(c -> !c.aboutSwamped()).toList();
    this.wet = limiting.stream().filter(Check::aboutSwamped).toList();
  }

  Craft craft() {
    return craft;
  }

  private List<List<Double>> masses(Seating seating, double heaviest) {
    return CrewMasses.of(seating, lightest, heaviest, symmetric);
  }

  boolean staysUp(Seating seating, double heaviest) {
    return known.computeIfAbsent(
        new Question(seating, heaviest, false), q -> meets(seating, heaviest, dry));
  }

  boolean heldUp(Seating seating, double heaviest) {
    return known.computeIfAbsent(
        new Question(seating, heaviest, true), q -> meets(seating, heaviest, wet));
  }

  boolean meetsAll(Seating seating, double heaviest) {
    return staysUp(seating, heaviest) && heldUp(seating, heaviest);
  }

  /** Whether every mixture of people up to a mass, with an extra weight aboard, meets all. */
  boolean carries(Seating seating, double heaviest, Loading.Weight extra) {
    return masses(seating, heaviest).parallelStream()
        .map(masses -> trial(seating, masses).with(extra))
        .allMatch(t -> meets(t, dry) && meets(t, wet));
  }

  Trial trial(Seating seating, List<Double> masses) {
    return Trial.of(craft, seating.bodies(craft, masses), "");
  }

  private boolean meets(Seating seating, double heaviest, List<Check> checks) {
    return masses(seating, heaviest).stream()
        .allMatch(masses -> meets(trial(seating, masses), checks));
  }

  private boolean meets(Trial trial, List<Check> checks) {
    return List.of(allowance, Allowance.NONE).stream()
        .map(trial::under)
        .allMatch(t -> checks.stream().allMatch(c -> allMet(c.readings(t))));
  }

  private static boolean allMet(List<Reading> readings) {
    return readings.stream().allMatch(Reading::met);
  }

  /**
   * The worst reading of every check that limits crew and is not met, over all mixtures: as
   * measured if that is not met, otherwise after the allowance.
   */
  List<Breach> notMet(Seating seating, double heaviest) {
    Map<String, Breach> worst = new LinkedHashMap<>();
    List<Trial> measured =
        masses(seating, heaviest).stream().map(masses -> trial(seating, masses)).toList();
    List<Trial> cautious = measured.stream().map(t -> t.under(allowance)).toList();
    for (Check check : limiting) {
      measured.forEach(t -> note(check.readings(t), false, worst));
      cautious.forEach(t -> note(check.readings(t), true, worst));
    }
    return List.copyOf(worst.values());
  }

  private static void note(
      List<Reading> readings, boolean afterAllowance, Map<String, Breach> worst) {
    readings.stream()
        .filter(r -> !r.met())
        .forEach(r -> worst.merge(r.check(), new Breach(r, afterAllowance), Breach::worse));
  }

  /** How near the limits a trial comes under the allowance: the least margin, as a share. */
  double nearness(Trial trial) {
    return limiting.stream()
        .flatMap(c -> c.readings(trial.under(allowance)).stream())
        .mapToDouble(r -> r.margin() / Math.max(Math.abs(r.limit()), 0.05))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
