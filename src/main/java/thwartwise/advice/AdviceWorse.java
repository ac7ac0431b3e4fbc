package thwartwise.advice;

import java.util.Optional;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.loadcase.LoadCase.Kind;

/**
 * A figure that comes out worse after a change.
 *
 * @param loading under which it was asked: as loaded, or at the limit the boat then has
 * @param before empty when it was not asked before
 */
public record AdviceWorse(
    CheckQuestion question, Role role, Kind loading, Optional<Outcome> before, Outcome after) {}
