package thwartwise.rules;

import thwartwise.hull.HullForm;
import thwartwise.rules.RatedBoat.HullKind;

/** Tells a canoe from a dinghy by its form: narrow, and slimmer than any dinghy (judgement). */
public final class Canoe {
  private Canoe() {}

  public static boolean is(HullForm form, RuleSet rules) {
    return is(form.length(), form.beam(), rules);
  }

  public static HullKind kind(HullForm form, RuleSet rules) {
    return is(form, rules) ? HullKind.CANOE : HullKind.OPEN_BOAT;
  }

  /** By the greatest length and breadth, m. */
  public static boolean is(double length, double beam, RuleSet rules) {
    return beam < rules.value("canoe-beam")
        && length >= rules.value("canoe-length-over-beam") * beam;
  }
}
