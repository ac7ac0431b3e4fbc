package thwartwise.report;

import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Measure;
import thwartwise.checks.UntestedAct;

/** The questions of the checks, in words. */
public final class CheckWords {
  private CheckWords() {}

  /** The subject, and after a comma which of its figures it is. */
  public static String of(CheckQuestion question) {
    if (question.check() == CheckId.PLAUSIBILITY) {
      return MeasuredWords.of(question);
    }
    String measure = measure(question);
    String subject = subject(question.subject());
    return measure.isEmpty() ? subject : subject + ", " + measure;
  }

  /** The common subject of several figures. */
  public static String subject(Subject subject) {
    return switch (subject.check()) {
      case FREEBOARD_AT_REST -> "freeboard at rest";
      case THREE_FIFTHS_TO_ONE_SIDE -> "three fifths to one side";
      case SWAMPED_LEVEL,
          SWAMPED_LIFT,
          ONE_CHAMBER_LOST,
          SWAMPED_MARGIN,
          CHAMBER_LOST,
          TWO_LARGEST_CHAMBERS_LOST,
          HOLDING_ON_TO_ONE_SIDE,
          BAILING,
          GETTING_BACK_IN_OVER_THE_SIDE,
          GETTING_BACK_IN_OVER_THE_STERN,
          GETTING_BACK_IN_OVER_THE_BOW ->
          "swamped";
      case ANCHORING_BY_THE_STERN -> "anchoring by the stern";
      case ANCHORING_BY_THE_BOW -> "anchoring by the bow";
      case CLIMBING_IN_OVER_THE_SIDE -> "climbing in over the side";
      case CLIMBING_IN_OVER_THE_STERN -> "climbing in over the stern";
      case EVERYONE_HARD_TO_ONE_SIDE -> "everyone hard against one side";
      case EVERYONE_SUDDENLY_TO_ONE_SIDE -> "everyone suddenly to one side";
      case EVERYONE_TO_ONE_SIDE_IN_A_STEP -> "everyone to one side in a step";
      case ONE_PERSON_HARD_TO_ONE_SIDE -> "one person hard against one side";
      case ONE_PERSON_STANDING -> "one person standing";
      case ONE_PERSON_SUDDENLY_TO_ONE_SIDE -> "one person suddenly to one side";
      case ONE_PERSON_TO_ONE_SIDE_IN_A_STEP -> "one person to one side in a step";
      case CHAMBER_HOLED -> "launching without a look into the " + thing(subject);
      case LEANING_OUT -> "leaning out over the side";
      case HATCH_LEFT_OPEN -> "leaving the " + thing(subject) + " open";
      case FULL_POWER -> "running this motor at full power";
      case SECOND_WAY_HOME -> "going out under motor alone";
      case ANCHOR_LINE -> "anchoring on this line in the deepest water named";
      case ROAD_LOAD -> "driving hull and kit together on trailer or rack";
      case LEAK_UNDER_WAY -> "leaking seams under way";
      case LEAK_AT_THE_MOORING -> "leaking seams at the mooring";
      case ROWING -> "rowlocks for the " + thing(subject);
      case STEERING -> "reaching the motor from the " + thing(subject);
      case SITTING_IN_IT_SWAMPED -> "sitting in it when it is swamped";
      case SITTING_UP -> "sitting on the seats and not kneeling";
      case STIFF_OFF_THE_MIDDLE -> "sitting stiff a little off the middle";
      case KNEELING -> "kneeling";
      case LOW_SIDE -> "righting with everyone on the low side";
      case GREATEST_PULL -> "greatest pull at the " + thing(subject);
      case WIND_ON_THE_BEAM -> "wind on the beam";
      case MOTOR_HARD_OVER -> "motor hard over";
      case LOOSE_WATER ->
          subject.names().isEmpty() ? "loose water" : "loose water in " + thing(subject);
      case RAIN_AT_THE_MOORING -> "rain at the mooring";
      case DRAIN_OPEN -> thing(subject) + " without its " + subject.names().get(1);
      case TURNING_BACK -> "swamped and turned over";
      case BATTERY_COVERED -> "the battery's terminals are covered";
      case BATTERY_HELD -> "the battery is held by tray and strap";
      case PANEL_FUSED -> "a fuse on both sides of the panel's controller";
      case CIRCUIT_GUARDED -> "circuit of the " + thing(subject);
      case LOOKED_AT ->
          subject.names().size() > 1
              ? thing(subject) + " (" + subject.names().get(1) + ")"
              : thing(subject);
      case PLAUSIBILITY -> subject.names().isEmpty() ? "the hull as measured" : thing(subject);
      case LITRES_POURED, NO_LONGER_ASKED -> thing(subject);
    };
  }

  /** An act that nobody assessed. */
  public static String of(UntestedAct act) {
    return switch (act) {
      case JUMPING_IN -> "jumping in";
      case CHANGING_PLACES -> "changing places under way";
      case HAULING_IN -> "hauling something heavy in over the side";
    };
  }

  private static String thing(Subject subject) {
    return subject.names().get(0);
  }

  /** Which figure of its subject it is; blank if it is the only or the first one. */
  public static String measure(CheckQuestion question) {
    return switch (question.check()) {
      case SWAMPED_LIFT -> "lift to spare";
      case ONE_CHAMBER_LOST -> question.things().get(0) + " lost";
      case CHAMBER_LOST -> question.things().get(0) + " lost, out of upright";
      case TWO_LARGEST_CHAMBERS_LOST ->
          question.measure() == Measure.LIFT
              ? "two largest lost, lift to spare"
              : "two largest lost, out of upright";
      case SWAMPED_LEVEL, SWAMPED_MARGIN, SITTING_IN_IT_SWAMPED -> seated(question.measure());
      case HATCH_LEFT_OPEN ->
          question.measure() == Measure.LIFT
              ? "lift to spare when swamped"
              : "out of upright when swamped";
      case KNEELING ->
          "three fifths to one side"
              + (question.measure() == Measure.FREEBOARD ? ", freeboard left" : "");
      case HOLDING_ON_TO_ONE_SIDE -> "everyone in the water holding one side";
      case GETTING_BACK_IN_OVER_THE_SIDE -> "getting back in over the side";
      case GETTING_BACK_IN_OVER_THE_STERN -> "getting back in over the stern";
      case GETTING_BACK_IN_OVER_THE_BOW -> "getting back in over the bow";
      case BAILING ->
          question.measure() == Measure.FREEBOARD
              ? "lowest edge above the water for bailing"
              : "bailing it out";
      case TURNING_BACK ->
          question.measure() == Measure.EFFORT ? "turning it back" : "turning it back with a line";
      case LOOSE_WATER ->
          question.measure() == Measure.TIME
              ? "bailing it out before the first edge is under"
              : plain(question.measure());
      case LITRES_POURED -> "litres poured in against litres drawn";
      case FREEBOARD_AT_REST -> "";
      default -> plain(question.measure());
    };
  }

  private static String seated(Measure measure) {
    return switch (measure) {
      case OFF_THE_MIDDLE -> "everyone a little off the middle";
      case HALF_TO_ONE_SIDE -> "half the crew's weight to one side";
      case HIGHER_END -> "higher end above the water";
      case LOWER_END -> "lower end under the water";
      default -> "heel";
    };
  }

  private static String plain(Measure measure) {
    return switch (measure) {
      case FREEBOARD -> "freeboard left";
      case PULL_ABEAM -> "out over the side";
      case WORK -> "work to flooding";
      case FIRST_EDGE_UNDER -> "first edge under";
      case NO_LONGER_COMES_BACK -> "no longer comes back";
      default -> "";
    };
  }
}
