package thwartwise.files.report;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Measure;
import thwartwise.crew.LimitingFactor;

/**
 * Questions of reports of version 1, by their names. These names stay here unchanged, however a
 * page words a question today.
 */
final class OldQuestions {
  private static final String LEFT = ", freeboard left";

  private static final Map<String, CheckQuestion> PLAIN =
      Map.ofEntries(
          named("freeboard at rest", CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD),
          named("swamped, lift to spare", CheckId.SWAMPED_LIFT, Measure.LIFT),
          named("swamped, heel", CheckId.SWAMPED_LEVEL, Measure.HEEL),
          named("swamped, higher end above the water", CheckId.SWAMPED_LEVEL, Measure.HIGHER_END),
          named("swamped, lower end under the water", CheckId.SWAMPED_LEVEL, Measure.LOWER_END),
          named(
              "swamped, half the crew's weight to one side",
              CheckId.SWAMPED_MARGIN,
              Measure.HALF_TO_ONE_SIDE),
          named(
              "swamped, everyone a little off the middle",
              CheckId.SWAMPED_MARGIN,
              Measure.OFF_THE_MIDDLE),
          named(
              "sitting in it when it is swamped, heel",
              CheckId.SITTING_IN_IT_SWAMPED,
              Measure.HEEL),
          named(
              "sitting in it when it is swamped, higher end above the water",
              CheckId.SITTING_IN_IT_SWAMPED,
              Measure.HIGHER_END),
          named(
              "sitting in it when it is swamped, lower end under the water",
              CheckId.SITTING_IN_IT_SWAMPED,
              Measure.LOWER_END),
          named(
              "sitting in it when it is swamped, half the crew's weight to one side",
              CheckId.SITTING_IN_IT_SWAMPED,
              Measure.HALF_TO_ONE_SIDE),
          named(
              "sitting in it when it is swamped, everyone a little off the middle",
              CheckId.SITTING_IN_IT_SWAMPED,
              Measure.OFF_THE_MIDDLE),
          named(
              "one person suddenly to one side",
              CheckId.ONE_PERSON_SUDDENLY_TO_ONE_SIDE,
              Measure.SWING),
          named(
              "everyone suddenly to one side",
              CheckId.EVERYONE_SUDDENLY_TO_ONE_SIDE,
              Measure.SWING),
          named(
              "one person to one side in a step",
              CheckId.ONE_PERSON_TO_ONE_SIDE_IN_A_STEP,
              Measure.SWING),
          named(
              "everyone to one side in a step",
              CheckId.EVERYONE_TO_ONE_SIDE_IN_A_STEP,
              Measure.SWING),
          named("kneeling, three fifths to one side", CheckId.KNEELING, Measure.HEEL),
          named("kneeling, three fifths to one side" + LEFT, CheckId.KNEELING, Measure.FREEBOARD),
          named(
              "righting with everyone on the low side, work to flooding",
              CheckId.LOW_SIDE,
              Measure.WORK),
          named("rain at the mooring", CheckId.RAIN_AT_THE_MOORING, Measure.RAIN),
          named(
              "swamped, two largest lost, lift to spare",
              CheckId.TWO_LARGEST_CHAMBERS_LOST,
              Measure.LIFT),
          named(
              "swamped, two largest lost, out of upright",
              CheckId.TWO_LARGEST_CHAMBERS_LOST,
              Measure.OUT_OF_UPRIGHT),
          named(
              "swamped, everyone in the water holding one side",
              CheckId.HOLDING_ON_TO_ONE_SIDE,
              Measure.OUT_OF_UPRIGHT),
          named(
              "swamped, getting back in over the side",
              CheckId.GETTING_BACK_IN_OVER_THE_SIDE,
              Measure.OUT_OF_UPRIGHT),
          named(
              "swamped, getting back in over the stern",
              CheckId.GETTING_BACK_IN_OVER_THE_STERN,
              Measure.OUT_OF_UPRIGHT),
          named(
              "swamped, getting back in over the bow",
              CheckId.GETTING_BACK_IN_OVER_THE_BOW,
              Measure.OUT_OF_UPRIGHT),
          named(
              "swamped, lowest edge above the water for bailing",
              CheckId.BAILING,
              Measure.FREEBOARD),
          named("swamped, bailing it out", CheckId.BAILING, Measure.TIME),
          named("swamped and turned over, turning it back", CheckId.TURNING_BACK, Measure.EFFORT),
          named(
              "swamped and turned over, turning it back with a line",
              CheckId.TURNING_BACK,
              Measure.EFFORT_WITH_A_LINE),
          named("running this motor at full power", CheckId.FULL_POWER, Measure.POWER));

  /** Questions for a heel, whose names also exist with an ending for the freeboard at that heel. */
  private static final Map<String, CheckId> HEELED =
      Map.ofEntries(
          entry("three fifths to one side", CheckId.THREE_FIFTHS_TO_ONE_SIDE),
          entry("sitting stiff a little off the middle", CheckId.STIFF_OFF_THE_MIDDLE),
          entry("everyone hard against one side", CheckId.EVERYONE_HARD_TO_ONE_SIDE),
          entry("one person hard against one side", CheckId.ONE_PERSON_HARD_TO_ONE_SIDE),
          entry("one person standing", CheckId.ONE_PERSON_STANDING),
          entry("sitting on the seats and not kneeling", CheckId.SITTING_UP),
          entry("leaning out over the side", CheckId.LEANING_OUT),
          entry("climbing in over the side", CheckId.CLIMBING_IN_OVER_THE_SIDE),
          entry("climbing in over the stern", CheckId.CLIMBING_IN_OVER_THE_STERN),
          entry("anchoring by the stern", CheckId.ANCHORING_BY_THE_STERN),
          entry("anchoring by the bow", CheckId.ANCHORING_BY_THE_BOW),
          entry("wind on the beam", CheckId.WIND_ON_THE_BEAM),
          entry("motor hard over", CheckId.MOTOR_HARD_OVER));

  /** Names with the name of a thing in them; the first that fits is meant. */
  private static final List<Named> OF_A_THING =
      List.of(
          new Named(
              "swamped, (.+) lost, out of upright", CheckId.CHAMBER_LOST, Measure.OUT_OF_UPRIGHT),
          new Named("swamped, (.+) lost", CheckId.ONE_CHAMBER_LOST, Measure.LIFT),
          new Named(
              "launching without a look into the (.+), freeboard left",
              CheckId.CHAMBER_HOLED,
              Measure.FREEBOARD),
          new Named("launching without a look into the (.+)", CheckId.CHAMBER_HOLED, Measure.HEEL),
          new Named(
              "leaving the (.+) open, lift to spare when swamped",
              CheckId.HATCH_LEFT_OPEN,
              Measure.LIFT),
          new Named(
              "leaving the (.+) open, out of upright when swamped",
              CheckId.HATCH_LEFT_OPEN,
              Measure.OUT_OF_UPRIGHT),
          new Named(
              "greatest pull at the (.+), out over the side",
              CheckId.GREATEST_PULL,
              Measure.PULL_ABEAM),
          new Named("greatest pull at the (.+)", CheckId.GREATEST_PULL, Measure.PULL),
          new Named(
              "loose water(?: in (.+))?, first edge under",
              CheckId.LOOSE_WATER,
              Measure.FIRST_EDGE_UNDER),
          new Named(
              "loose water(?: in (.+))?, no longer comes back",
              CheckId.LOOSE_WATER,
              Measure.NO_LONGER_COMES_BACK),
          new Named("(.+) without its (.+)", CheckId.DRAIN_OPEN, Measure.TIME));

  /** Questions about a measurement, as reports worded them. */
  private static final List<Named> OF_A_MEASUREMENT =
      List.of(
          measured("how much of its block the hull fills under water", Measure.BLOCK_COEFFICIENT),
          measured("how hard a panel is twisted", Measure.PANEL_TWIST),
          measured("length over which the faired outline crosses itself", Measure.OUTLINE_CROSSING),
          measured("breadth of the hull as a share of its length", Measure.BREADTH_OVER_LENGTH),
          measured(
              "depth of the hull amidships as a share of its breadth", Measure.DEPTH_OVER_BREADTH),
          measured("weight of the bare hull against that of its skin", Measure.HULL_MASS),
          measured("swamped density of what the hull is made of", Measure.SWAMPED_DENSITY),
          measured("height of the lowest point of the bottom", Measure.LOWEST_POINT),
          measured("station \"(.+)\", waist of the outline", Measure.STATION_WAIST),
          measured("station \"(.+)\" against its neighbours", Measure.STATION_FAIRNESS),
          measured("seat \"(.+)\", height", Measure.SEAT_HEIGHT),
          measured("seat \"(.+)\", height above the floor", Measure.SEAT_ABOVE_FLOOR),
          measured(
              "seat \"(.+)\", height above the chamber of that name", Measure.SEAT_ABOVE_CHAMBER),
          measured("chamber \"(.+)\", height of its top", Measure.CHAMBER_TOP),
          measured("chamber \"(.+)\", litres poured into it", Measure.POURED_VOLUME),
          measured("chamber \"(.+)\", days from its leak test until today", Measure.LEAK_TEST_AGE),
          measured("kit \"(.+)\", mass", Measure.KIT_MASS),
          measured("kit \"(.+)\", height of its middle", Measure.KIT_HEIGHT),
          measured("kit \"(.+)\", how far outside the hull", Measure.KIT_OUTSIDE),
          measured("cleat \"(.+)\", how far outside the hull", Measure.CLEAT_OUTSIDE),
          measured("place \"(.+)\", how far out from the middle line", Measure.PLACE_REACH),
          measured("place \"(.+)\", length of seat its people take", Measure.PLACE_LENGTH),
          measured(
              "place \"(.+)\", from the nearer end of the hull to the middle of whoever sits there",
              Measure.PLACE_FROM_END),
          measured(
              "place \"(.+)\", how far forward, as a share of the length", Measure.PLACE_ALONG),
          measured(
              "place \"(.+)\", how far before or abaft the chamber of that name",
              Measure.PLACE_FROM_CHAMBER),
          measured(
              "place \"(.+)\", between it and place \"(.+)\" along the boat", Measure.PLACES_APART),
          measured(
              "place \"(.+)\", how far out its middle lies to the side it is named for",
              Measure.PLACE_SIDE),
          measured("opening \"(.+)\", so low in the hull, its width", Measure.LOW_OPENING_WIDTH));

  private static final Named LITRES =
      new Named(
          "(.+), litres poured in against litres drawn", CheckId.LITRES_POURED, Measure.VOLUME);

  private OldQuestions() {}

  private static Named measured(String name, Measure measure) {
    return new Named(name, CheckId.PLAUSIBILITY, measure);
  }

  private static Map.Entry<String, CheckQuestion> named(
      String name, CheckId check, Measure measure) {
    return entry(name, CheckQuestion.of(check, measure));
  }

  /** A name that contains names of things. */
  private record Named(Pattern name, CheckId check, Measure measure) {
    Named(String name, CheckId check, Measure measure) {
      this(Pattern.compile(name, Pattern.DOTALL), check, measure);
    }

    Optional<CheckQuestion> of(String recorded) {
      Matcher fits = name.matcher(recorded);
      return fits.matches()
          ? Optional.of(new CheckQuestion(check, measure, things(fits)))
          : Optional.empty();
    }

    private static List<String> things(Matcher fits) {
      return Stream.iterate(1, i -> i <= fits.groupCount(), i -> i + 1)
          .map(fits::group)
          .filter(thing -> thing != null)
          .toList();
    }
  }

  /** The question of a finding; a finding about measurements names the measurement. */
  static CheckQuestion of(String name, boolean aboutMeasurements) {
    return aboutMeasurements ? LITRES.of(name).orElseGet(() -> ofMeasurement(name)) : of(name);
  }

  /** A question about a measurement; one in words that no version used keeps its words. */
  static CheckQuestion ofMeasurement(String name) {
    return OF_A_MEASUREMENT.stream()
        .flatMap(n -> n.of(name).stream())
        .findFirst()
        .orElseGet(() -> CheckQuestion.of(CheckId.PLAUSIBILITY, Measure.AS_MEASURED, name));
  }

  static CheckQuestion of(String name) {
    return known(name)
        .orElseGet(() -> CheckQuestion.of(CheckId.NO_LONGER_ASKED, Measure.AS_MEASURED, name));
  }

  private static Optional<CheckQuestion> known(String name) {
    return Optional.ofNullable(PLAIN.get(name))
        .or(() -> heeled(name))
        .or(() -> OF_A_THING.stream().flatMap(n -> n.of(name).stream()).findFirst());
  }

  private static Optional<CheckQuestion> heeled(String name) {
    boolean left = name.endsWith(LEFT);
    String heel = left ? name.substring(0, name.length() - LEFT.length()) : name;
    return Optional.ofNullable(HEELED.get(heel))
        .map(check -> CheckQuestion.of(check, left ? Measure.FREEBOARD : Measure.HEEL));
  }

  /** The common subject of several figures; for some subjects every name has an ending. */
  static Subject subject(String name) {
    return known(name + ", lift to spare when swamped")
        .or(() -> known(name))
        .or(() -> known(name + ", heel"))
        .map(CheckQuestion::subject)
        .orElseGet(() -> new Subject(CheckId.NO_LONGER_ASKED, List.of(name)));
  }

  static Optional<LimitingFactor> factor(String name) {
    if (name.isBlank()) {
      return Optional.empty();
    }
    return Optional.of(
        known(name)
            .<LimitingFactor>map(LimitingFactor.ByCheck::new)
            .orElseGet(
                () ->
                    name.equals("no place for another person")
                        ? new LimitingFactor.NoPlaceLeft()
                        : new LimitingFactor.Stated(name)));
  }
}
