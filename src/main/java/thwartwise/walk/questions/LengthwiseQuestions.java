package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the distances of the points of one station from the aft end. */
record LengthwiseQuestions(
    Replay replay,
    QuantityQuestions quantities,
    String key,
    String subject,
    StationSlips slips,
    boolean last,
    StationRow row) {
  private static final String[] ELSEWHERE = {
    "yes: a plumb line through one point touches all of them. no: a raked stem or",
    "transom; how far forward is then asked for each point."
  };
  private static final String[] AT_THE_AFT_END = {
    "yes: the aft end is upright, and how far forward is 0 and not asked. no: it is",
    "raked; how far forward is then asked for each point, the aftmost being 0."
  };

  /**
   * Whether the station is plumb, asked for the two ends. A station between them is measured along
   * one line.
   */
  boolean upright() {
    boolean end = slips.isFirst() || last;
    if (!end && !replay.hasAnswer(key + ".upright")) {
      return true;
    }
    QuestionDefinition<Boolean> plumb =
        WordQuestions.yesNo(key + ".upright", subject + " stands upright?")
            .how(slips.isFirst() ? AT_THE_AFT_END : ELSEWHERE)
            .why("Raked ends carry less at the bottom than at the rail.");
    // A raked end that is taken as plumb gives a longer boat.
    return replay.ask(end ? plumb : plumb.orElse(true, "yes"));
  }

  /** One distance for an upright station. An upright aft end is the origin and needs none. */
  double x(boolean upright, int point, List<Vector3> before) {
    if (!upright) {
      return ofPoint(point, before);
    }
    if (slips.isFirst()) {
      return 0;
    }
    return before.isEmpty() ? ofStation() : before.get(0).x();
  }

  private double ofStation() {
    return replay.ask(
        entry(key + ".x", subject + ", forward of the aft end")
            .unless(slips::notForwardOfAll)
            .unless(x -> last ? slips.shortOfTheEnd(x, List.of()) : Optional.empty()));
  }

  private double ofPoint(int point, List<Vector3> before) {
    String name = slips.pointName(point);
    QuestionDefinition<Double> forward =
        entry(key + ".point." + point + ".x", subject + ", " + name + ", forward of aft end");
    return replay.ask(
        (point == 1 ? row.ofRaked(forward) : forward)
            .unless(x -> slips.notForward(point, x))
            .unless(x -> slips.awayFromTheAftEnd(point, x, before))
            .unless(
                x ->
                    last && slips.isRail(point)
                        ? slips.shortOfTheEnd(x, before)
                        : Optional.empty()));
  }

  private QuestionDefinition<Double> entry(String entryKey, String entrySubject) {
    return quantities
        .length(entryKey, entrySubject)
        .how("Tape from the aft end along the baseline, level, not along the curved side.")
        .show(Sketches.LENGTHS)
        .why("Where the shape lies along the boat sets how it trims.")
        .unlessAmbiguous(quantities.feetOrInches(0, slips.length()))
        .within(slips.alongTheBoat());
  }
}
