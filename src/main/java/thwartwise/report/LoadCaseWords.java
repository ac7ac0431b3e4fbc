package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import thwartwise.afloat.Gravity;
import thwartwise.boat.Side;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.measure.UnitFormat;

/** A load case in words: the loading, then what is done to it behind semicolons. */
public final class LoadCaseWords {
  private static final String KIT_SLID = ", loose kit slid to that side";

  private final UnitFormat units;

  private LoadCaseWords(UnitFormat units) {
    this.units = units;
  }

  /** The words in metric units, as a report stores them. */
  public static String of(LoadCase loadCase) {
    return of(loadCase, UnitFormat.METRIC);
  }

  public static String of(LoadCase loadCase, UnitFormat units) {
    List<String> words = new ArrayList<>();
    words.add(loading(loadCase, units));
    words.add(deeds(loadCase, units));
    words.removeIf(String::isEmpty);
    return String.join("; ", words);
  }

  /** The loading alone; blank if there is nothing to say of it. */
  private static String loading(LoadCase loadCase, UnitFormat units) {
    String kind = kind(loadCase.kind());
    String crew = crew(loadCase.crew(), units);
    return kind.isEmpty() || crew.isEmpty() ? kind + crew : kind + ": " + crew;
  }

  /** What is done to the loading; blank when nothing is. */
  public static String deeds(LoadCase loadCase, UnitFormat units) {
    LoadCaseWords words = new LoadCaseWords(units);
    return loadCase.deeds().stream().map(words::deed).collect(Collectors.joining("; "));
  }

  /** The kind; blank for a loading without a name. */
  public static String kind(LoadCase.Kind kind) {
    return switch (kind) {
      case AS_LOADED -> "as loaded";
      case AT_LIMIT -> "at the limit";
      case AS_MEASURED -> "as measured";
      case UNNAMED -> "";
    };
  }

  /** The crew in metric units, as a report stores it. */
  public static String crew(Crew crew) {
    return crew(crew, UnitFormat.METRIC);
  }

  /** The people aboard, and their places. */
  public static String crew(Crew crew, UnitFormat units) {
    return new LoadCaseWords(units).aboard(crew);
  }

  private String aboard(Crew crew) {
    if (crew instanceof Crew.Named named) {
      return named.seats().stream()
          .map(s -> s.person() + " at " + s.place())
          .collect(Collectors.joining(", "));
    }
    if (crew instanceof Crew.Alike alike) {
      String how = alike.packing().words();
      return String.format(
              Locale.ROOT,
              "%d of %s at %s",
              alike.people(),
              kilograms(alike.eachKg()),
              String.join(", ", alike.places()))
          + (how.isEmpty() ? "" : ", " + how);
    }
    if (crew instanceof Crew.Stated stated) {
      return stated.words();
    }
    return crew instanceof Crew.Nobody ? "nobody aboard" : "";
  }

  private String deed(LoadCaseStep deed) {
    if (deed instanceof LoadCaseStep.Done done) {
      return done(done) + toward(done.side(), done.kitSlid());
    }
    if (deed instanceof LoadCaseStep.OffTheMiddle off) {
      return String.format(
              Locale.ROOT,
              "everyone%s %s off the middle",
              off.stiff() ? " stiff and" : "",
              metres(off.distanceM()))
          + toward(off.side(), off.kitSlid());
    }
    if (deed instanceof LoadCaseStep.MovedInTime moved) {
      return everyone(moved.who())
          + " hard against the side"
          + side(moved.side())
          + String.format(Locale.ROOT, " within %.2f s", moved.seconds())
          + (moved.kitSlid() ? KIT_SLID : "");
    }
    if (deed instanceof LoadCaseStep.LinePull pull) {
      return String.format(
          Locale.ROOT,
          "%s of level pull (from %s as towed to %s against a blunt end, snatch"
              + " included) at the %s, %s, leading %.0f degrees down",
          newtons(pull.pullN()),
          newtons(Math.floor(pull.leastN())),
          newtons(Math.ceil(pull.mostN())),
          pull.cleat(),
          lever(pull.leverM()),
          pull.downDegrees());
    }
    if (deed instanceof LoadCaseStep.WindPush wind) {
      return String.format(
              Locale.ROOT,
              "wind of %s%s, %s, %s",
              speed(wind.speedMetresPerSecond()),
              side(wind.side()),
              newtons(Math.ceil(wind.pushN())),
              lever(wind.leverM()))
          + (wind.kitSlid() ? KIT_SLID : "");
    }
    if (deed instanceof LoadCaseStep.MotorPush motor) {
      return String.format(
          Locale.ROOT,
          "motor pushing %s, hard over%s, %s",
          newtons(motor.pushN()),
          side(motor.side()),
          lever(motor.leverM()));
    }
    return ((LoadCaseStep.Stated) deed).words();
  }

  private static String toward(Optional<Side> side, boolean kitSlid) {
    return side(side) + (kitSlid ? KIT_SLID : "");
  }

  private static String side(Optional<Side> side) {
    return side.map(s -> " to " + s.word()).orElse("");
  }

  private String lever(double metres) {
    return String.format(
        Locale.ROOT,
        "%s %s the middle of the hull under water",
        metres(Math.abs(metres)),
        metres < 0 ? "under" : "above");
  }

  private String kilograms(double mass) {
    return metric("%.0f kg", mass).orElseGet(() -> units.mass(mass, UnitFormat.Side.UP));
  }

  private String metres(double length) {
    return metric("%.2f m", length).orElseGet(() -> units.mark(length));
  }

  private String newtons(double force) {
    return metric("%.0f N", force)
        .orElseGet(() -> units.mass(force / Gravity.STANDARD, UnitFormat.Side.UP));
  }

  private String speed(double metresASecond) {
    return metric("%.1f m/s", metresASecond)
        .orElseGet(() -> units.speed(metresASecond, UnitFormat.Side.UP));
  }

  /** The metric words, which reports keep to the digit; empty in feet. */
  private Optional<String> metric(String format, double value) {
    return units.system().isMetric()
        ? Optional.of(String.format(Locale.ROOT, format, value))
        : Optional.empty();
  }

  private static String everyone(String who) {
    return who.isEmpty() ? "everyone" : who;
  }

  private static String somebody(String who) {
    return who.isEmpty() ? "somebody" : who;
  }

  private static String done(LoadCaseStep.Done done) {
    String who = done.who();
    return switch (done.act()) {
      case EVERYONE_PART_OF_THE_WAY -> "everyone three fifths of the way";
      case EVERYONE_HARD_TO_THE_SIDE -> "everyone hard against the side";
      case EVERYONE_ON_THE_SEATS_PART_OF_THE_WAY ->
          "everyone on the seats and three fifths of the way";
      case EVERYONE_KNEELING_PART_OF_THE_WAY -> "everyone kneeling, three fifths of the way";
      case EVERYONE_STIFF_ON_THE_LOW_SIDE -> "everyone stiff on the low side,";
      case EVERYONE_KNEELING -> "everyone kneeling";
      case HALF_THE_WEIGHT_PART_OF_THE_WAY -> "half of everyone's weight three fifths of the way";
      case HARD_TO_THE_SIDE -> who + " hard against the side";
      case STANDING -> who + " standing, a little";
      case LEANING_OUT -> who + " leaning out";
      case CLIMBING_IN_OVER_THE_SIDE -> somebody(who) + " climbing in over the side";
      case CLIMBING_IN_OVER_THE_STERN -> somebody(who) + " climbing in over the stern";
      case CLIMBING_IN_OVER_THE_BOW -> somebody(who) + " climbing in over the bow";
      case SUDDENLY_HARD_TO_THE_SIDE -> everyone(who) + " suddenly hard against the side";
      case HALF_FULL -> who + " half full";
      case FULL -> who + " full";
      case LEFT_OPEN -> "the " + who + " left open";
      case LINE_OUT -> "a line out from the " + who;
      case LEFT_AT_THE_MOORING -> "left at its mooring, nobody in it";
      case HANDS_ON_IT -> "everyone in the water with hands on it";
      case HOLDING_ONE_SIDE -> "everyone in the water, holding the rail on one side";
      case EVERYONE_IN_THE_WATER -> "everyone in the water beside it";
      case OTHERS_IN_THE_WATER -> "the others in the water";
      case NOBODY_UNDER_IT -> "everyone in the water beside it, nobody under it";
      case BACK_IN_TO_BAIL -> who + " back in it to bail, the others in the water";
      case OPEN -> "open";
      case LEVEL_AS_LOADED -> "level, at its weight as loaded";
    };
  }
}
