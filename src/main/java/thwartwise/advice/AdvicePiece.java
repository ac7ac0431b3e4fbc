package thwartwise.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Deed;

/**
 * One possible change, and the result of inspecting the boat after it.
 *
 * @param deed what to do
 * @param effort what it costs
 * @param people adults of the design mass more than today
 * @param crew kg of people more than today
 * @param load kg of people and everything not built in more than today; may be negative
 * @param moved the reading that prevents more today, before and after; empty when the deed does not
 *     change what the boat can carry
 * @param corrects checks that hold back the boat as it is loaded today and then no longer do; none
 *     where another one still does, or where nobody may go even so
 * @param worse every check with a worse outcome after it, with the same people aboard
 * @param forbiddenAfterwards acts that the larger crew must not do and today's may
 */
public record AdvicePiece(
    Deed deed,
    Effort effort,
    int people,
    double crew,
    double load,
    Optional<AdviceReading> moved,
    List<CheckQuestion> corrects,
    List<AdviceWorse> worse,
    List<Subject> forbiddenAfterwards) {

  public AdvicePiece {
    corrects = List.copyOf(corrects);
    worse = List.copyOf(worse);
    forbiddenAfterwards = List.copyOf(forbiddenAfterwards);
  }

  AdvicePiece costing(List<AdviceWorse> costs, List<Subject> acts) {
    return new AdvicePiece(deed, effort, people, crew, load, moved, corrects, costs, acts);
  }

  /** Whether it gains or corrects anything at all. */
  public boolean buys() {
    return people > 0 || crew > 0 || load > 0 || !corrects.isEmpty();
  }

  /** Whether a check that limits the crew becomes worse. */
  public boolean worsensALimit() {
    return worse.stream().anyMatch(w -> w.role() == Role.LIMITS_CREW);
  }

  /**
   * The figure that prevents more, before and after a change, after the allowance.
   *
   * @param crew the crew of the reading
   * @param before as it is today
   * @param changed the same crew's figure in the changed boat, SI; empty when there is no such
   *     state
   */
  public record AdviceReading(
      CheckQuestion question, Crew crew, Margin before, OptionalDouble changed) {

    /** The margin to the same limit after the change. */
    public Margin after() {
      return new Margin(changed, before.limit(), before.atLeast(), before.unit());
    }

    /** Whether the change is an improvement larger than numerical noise. */
    boolean isBetter() {
      return after().room() - before.room() > 1e-6;
    }
  }

  /**
   * A figure that is worse after a change.
   *
   * @param loading under which it was asked: as loaded, or at the limit the boat then has
   * @param before empty when it was not asked before
   */
  public record AdviceWorse(
      CheckQuestion question, Role role, Kind loading, Optional<Outcome> before, Outcome after) {}
}
