package thwartwise.inspection;

import java.time.LocalDate;
import thwartwise.boat.Boat;
import thwartwise.boat.Craft;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/**
 * The figures of a recommendation without the findings beside it, which take longer: adults, kg of
 * people, kg of load.
 */
public record QuickAnswer(int people, double crew, double load) {

  public static QuickAnswer of(Boat boat, RuleSet rules, LocalDate today) {
    Craft craft = Craft.of(boat, today);
    RulesApplied applied = new RulesApplied(craft, RuleBook.of(rules));
    RuleSet inForce = applied.inForce();
    Limits limits = new Limits(new Judge(craft, inForce), inForce, applied.caps());
    Amounts amounts = applied.amounts(limits);
    return new QuickAnswer(amounts.people(), amounts.crew(), amounts.load());
  }
}
