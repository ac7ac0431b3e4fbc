package thwartwise.inspection;

import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;

/**
 * A check that comes out worse after a change.
 *
 * @param loading under which it was asked: as loaded, or at the limit the boat then has
 * @param before empty when it was not asked before
 */
public record AdviceWorse(
    String check, Role role, String loading, Optional<Outcome> before, Outcome after) {

  /** What was asked about; which of its measures it is stands behind a comma. */
  public String subject() {
    return Finding.subject(check);
  }
}
