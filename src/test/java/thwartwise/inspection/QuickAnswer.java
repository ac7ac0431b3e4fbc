package thwartwise.inspection;

import java.time.LocalDate;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.crew.AppliedRules;
import thwartwise.crew.Capacity;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.Limits;
import thwartwise.crew.Recommendation;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/**
 * The figures of a recommendation without the findings beside it, which take longer: adults, kg of
 * people, kg of load.
 */
public record QuickAnswer(int people, double crew, double load) {

  public static QuickAnswer of(Boat boat, RuleSet rules, LocalDate today) {
    return of(boat, RuleBook.of(rules), today);
  }

  public static QuickAnswer of(Boat boat, RuleBook book, LocalDate today) {
    return of(BoatModel.of(boat, today), book, new BalanceCache());
  }

  /**
   * @param balances equilibria found for this boat under whatever rules
   */
  public static QuickAnswer of(BoatModel model, RuleBook book, BalanceCache balances) {
    AppliedRules applied = new AppliedRules(model, book, balances);
    Capacity capacity = applied.capacity(limits(applied, model, balances));
    return new QuickAnswer(capacity.people(), capacity.crew(), capacity.load());
  }

  /** All of a recommendation, still without the findings. */
  public static Recommendation recommended(Boat boat, RuleBook book, LocalDate today) {
    return recommended(BoatModel.of(boat, today), book, new BalanceCache());
  }

  /**
   * @param balances equilibria found for this boat under whatever rules
   */
  public static Recommendation recommended(BoatModel model, RuleBook book, BalanceCache balances) {
    AppliedRules applied = new AppliedRules(model, book, balances);
    return applied.recommendation(limits(applied, model, balances));
  }

  private static Limits limits(AppliedRules applied, BoatModel model, BalanceCache balances) {
    RuleSet inForce = applied.inForce();
    return new Limits(new CrewAssessment(model, inForce, balances), inForce, applied.caps());
  }
}
