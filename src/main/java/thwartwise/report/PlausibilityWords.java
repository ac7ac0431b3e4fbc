package thwartwise.report;

import thwartwise.checks.Margin;
import thwartwise.checks.Unit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Sentence;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.plausibility.PlausibilityTopic;

/** Measurements that look wrong, in words. */
public final class PlausibilityWords {
  private PlausibilityWords() {}

  /** The words in the form for a sentence. */
  public static String of(PlausibilityId doubt) {
    String topic = of(doubt.topic());
    return doubt.topic().isNamed() ? topic + " \"" + doubt.name() + "\"" : topic;
  }

  /** The words in the form for a sentence, before the name if there is one. */
  public static String of(PlausibilityTopic topic) {
    return switch (topic) {
      case BLOCK -> "fullness of the hull under water";
      case PANEL_TWIST -> "twist of the panels";
      case OUTLINE -> "outline between the stations";
      case PROPORTIONS -> "breadth of the hull for its length";
      case DEPTH -> "depth of the hull for its breadth";
      case STATION -> "station";
      case LOWEST_POINT -> "lowest point of the bottom";
      case HULL_MASS -> "mass of the bare hull";
      case DENSITY -> "swamped density of the hull";
      case CHAMBER -> "litres of chamber";
      case LEAK_TEST -> "date of the leak test of chamber";
      case CHAMBER_TOP -> "top of chamber";
      case KIT -> "kit";
      case KIT_MASS -> "mass of kit";
      case CLEAT -> "cleat";
      case PLACE -> "place";
      case PLACE_ALONG -> "how far forward place";
      case PLACE_SIDE -> "side of place";
      case SEAT -> "height of the seat";
      case OPENING -> "opening";
    };
  }

  /** The measurement, its value, the expected value, and what to do. */
  public static String of(PlausibilityFinding doubt, UnitFormat units) {
    Margin margin = doubt.finding().margin();
    Side has = margin.atLeast() ? Side.DOWN : Side.UP;
    Side needs = margin.atLeast() ? Side.UP : Side.DOWN;
    return "%s: %s, limit %s; %s"
        .formatted(
            CheckWords.of(doubt.finding().question()),
            figure(margin.value().orElse(Double.NaN), margin.unit(), has, units),
            figure(margin.limit(), margin.unit(), needs, units),
            NoteWords.of(doubt.finding().note(), units));
  }

  public static String sentence(PlausibilityFinding doubt, UnitFormat units) {
    return Sentence.withFullStop(of(doubt, units));
  }

  private static String figure(double si, Unit unit, Side side, UnitFormat units) {
    double shown = unit.shown(si);
    String metric = (side == Side.DOWN ? unit.down(shown) : unit.up(shown)) + " " + unit.word();
    return units.either(metric, () -> FigureWords.own(unit, si, side, units).orElse(metric));
  }
}
