package thwartwise.inspection;

import java.time.LocalDate;
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
    BoatModel model = BoatModel.of(boat, today);
    AppliedRules applied = new AppliedRules(model, book);
    Capacity capacity = applied.capacity(limits(applied, model));
    return new QuickAnswer(capacity.people(), capacity.crew(), capacity.load());
  }

  /** All of a recommendation, still without the findings. */
  public static Recommendation recommended(Boat boat, RuleBook book, LocalDate today) {
    BoatModel model = BoatModel.of(boat, today);
    AppliedRules applied = new AppliedRules(model, book);
    return applied.recommendation(limits(applied, model));
  }

  private static Limits limits(AppliedRules applied, BoatModel model) {
    RuleSet inForce = applied.inForce();
    return new Limits(new CrewAssessment(model, inForce), inForce, applied.caps());
  }
}
