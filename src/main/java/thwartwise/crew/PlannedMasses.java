package thwartwise.crew;

import thwartwise.rules.RuleSet;

/**
 * What people are planned with where nobody was weighed, dressed, kg.
 *
 * @param lightest the lightest person an unnamed adult may turn out to be
 * @param adult what an unnamed adult counts
 * @param heaviest nobody heavier is seated
 */
public record PlannedMasses(double lightest, double adult, double heaviest) {

  public static PlannedMasses of(RuleSet rules) {
    return new PlannedMasses(
        rules.value("lightest-person"),
        rules.value("design-person"),
        rules.value("heaviest-person"));
  }
}
