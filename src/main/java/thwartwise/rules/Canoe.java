package thwartwise.rules;

import thwartwise.boat.HullForm;

/** Tells a canoe from a dinghy by its form: narrow, and slimmer than any dinghy (judgement). */
public final class Canoe {
  private Canoe() {}

  public static boolean is(HullForm form, RuleSet rules) {
    return form.beam() < rules.value("canoe-beam")
        && form.length() >= rules.value("canoe-length-over-beam") * form.beam();
  }
}
