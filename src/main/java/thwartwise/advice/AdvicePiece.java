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
 * One thing that could be done, and what inspecting the boat after it gives.
 *
 * @param deed what to do
 * @param effort what it costs
 * @param people adults of the design mass more than today
 * @param crew kg of people more than today
 * @param load kg of people and everything not built in more than today; may be less than nothing
 * @param moved the reading that stands in the way today, before and after; empty when the deed does
 *     not change what the boat can carry
 * @param corrects checks that hold back the boat as it is loaded today and then no longer do; none
 *     where another one still does, or where nobody may go even so
 * @param worse every check that comes out worse after it, with the same people aboard
 * @param forbiddenAfterwards acts that the larger crew it buys must not do and today's may
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

  /** Whether anything at all is bought or put right. */
  public boolean buys() {
    return people > 0 || crew > 0 || load > 0 || !corrects.isEmpty();
  }

  /** Whether a check that limits crew comes out worse. */
  public boolean worsensALimit() {
    return worse.stream().anyMatch(w -> w.role() == Role.LIMITS_CREW);
  }

  /**
   * The figure that stands in the way of more, before and after a change, with the allowance for
   * tape and scales taken off.
   *
   * @param crew for whom
   * @param before as it is today
   * @param changed what the same crew has in the changed boat, SI; empty when there is no such
   *     state
   */
  public record AdviceReading(
      CheckQuestion question, Crew crew, Margin before, OptionalDouble changed) {

    /** The same limit with what there is after the change. */
    public Margin after() {
      return new Margin(changed, before.limit(), before.atLeast(), before.unit());
    }

    /** Whether the change is for the better, by more than what is noise. */
    boolean isBetter() {
      return after().room() - before.room() > 1e-6;
    }
  }

  /**
   * A figure that comes out worse after a change.
   *
   * @param loading under which it was asked: as loaded, or at the limit the boat then has
   * @param before empty when it was not asked before
   */
  public record AdviceWorse(
      CheckQuestion question, Role role, Kind loading, Optional<Outcome> before, Outcome after) {}
}
