package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.measure.NumberReader;
import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;

/**
 * A figure from a label, a plate or a fuse, in units that are the same in every system.
 *
 * @param units the first is that of a bare number
 */
record LabelFigure(BoatQuantity quantity, List<LabelUnit> units) {
  private static final double POUND_FORCE = 4.4482216;
  private static final double KILOGRAM_FORCE = 9.80665;
  private static final int HUNDRED = 100;

  static final LabelFigure VOLTS =
      of(BoatQuantity.VOLTS, new LabelUnit("V", 1, "v", "volt", "volts"));
  static final LabelFigure FUSE =
      of(BoatQuantity.FUSE_AMPERES, new LabelUnit("A", 1, "a", "amp", "amps"));
  static final LabelFigure WATTS =
      of(BoatQuantity.PANEL_WATTS, new LabelUnit("W", 1, "w", "watt", "watts", "wp"));
  static final LabelFigure RATED_HOURS =
      of(BoatQuantity.RATED_HOURS, new LabelUnit("hours", 1, "h", "hr", "hour", "hours"));
  static final LabelFigure CLAIMED_HOURS =
      of(
          BoatQuantity.CLAIMED_HOURS,
          new LabelUnit("hours", 1, "h", "hr", "hour", "hours"),
          new LabelUnit("minutes", 1 / 60.0, "min", "minute", "minutes"));
  static final LabelFigure DAILY_HOURS =
      of(
          BoatQuantity.DAILY_HOURS,
          new LabelUnit("hours", 1, "h", "hr", "hour", "hours"),
          new LabelUnit("minutes", 1 / 60.0, "min", "minute", "minutes"));
  static final LabelFigure THRUST =
      of(
          BoatQuantity.THRUST,
          new LabelUnit("lb", POUND_FORCE, "lb", "lbs", "lbf", "pound", "pounds"),
          new LabelUnit("N", 1, "n", "newton", "newtons"),
          new LabelUnit("kgf", KILOGRAM_FORCE, "kgf", "kp", "kg"));
  static final LabelFigure RUN_SECONDS =
      of(
          BoatQuantity.RUN_SECONDS,
          new LabelUnit("s", 1, "s", "sec", "second", "seconds"),
          new LabelUnit("minutes", 60, "min", "minute", "minutes"));

  /**
   * A unit on a label.
   *
   * @param shown as a person writes it
   * @param size in units of the boat file
   * @param words that mean it, in lower case
   */
  record LabelUnit(String shown, double size, List<String> words) {
    LabelUnit(String shown, double size, String... words) {
      this(shown, size, List.of(words));
    }
  }

  private static LabelFigure of(BoatQuantity quantity, LabelUnit... units) {
    return new LabelFigure(quantity, List.of(units));
  }

  /** A current. Watts are divided by the voltage. */
  static LabelFigure amperes(double volts) {
    return of(
        BoatQuantity.AMPERES,
        new LabelUnit("A", 1, "a", "amp", "amps", "ampere", "amperes"),
        new LabelUnit("W", 1 / volts, "w", "watt", "watts"));
  }

  /** A charge. Some labels give the energy instead. */
  static LabelFigure ampereHours(double volts) {
    return of(
        BoatQuantity.AMPERE_HOURS,
        new LabelUnit("Ah", 1, "ah", "amp hours", "ampere hours", "ampere-hours"),
        new LabelUnit("Wh", 1 / volts, "wh", "watt hours"),
        new LabelUnit("kWh", 1000 / volts, "kwh"));
  }

  /** The question; its value is SI. */
  QuestionDefinition<Double> entry(String key, String subject) {
    String bare = units.get(0).shown();
    return QuestionDefinition.of(
            key, subject, bare, "a number, or one with its unit behind it", this::read)
        .unless(this::doubt);
  }

  /** The question for a number of the table. */
  QuestionDefinition<Double> asked(Property<?, Double> property, QuestionTopic topic) {
    return entry(topic.key(property), topic.subject(property)).worded(property);
  }

  private Reading<Double> read(String typed) {
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    return words().stream()
        .filter(word -> plain.endsWith(word) && !plain.equals(word))
        .findFirst()
        .map(word -> read(typed, plain.substring(0, plain.length() - word.length()), unit(word)))
        .orElseGet(() -> read(typed, plain, units.get(0)));
  }

  /** The words for units, longest first, because "hours" ends in "s" like seconds. */
  private List<String> words() {
    List<String> words = new ArrayList<>();
    units.forEach(unit -> words.addAll(unit.words()));
    words.sort(Comparator.comparingInt(String::length).reversed());
    return words;
  }

  private LabelUnit unit(String word) {
    return units.stream().filter(unit -> unit.words().contains(word)).findFirst().orElseThrow();
  }

  private Reading<Double> read(String typed, String figure, LabelUnit unit) {
    Reading<Double> number = NumberReader.figure(figure.strip());
    return number.refusal().isPresent()
        ? Reading.refused(
            "%s is not a figure of this kind. Type a number such as 12.5; a bare one means %s."
                .formatted(PrintableText.excerpt(typed), units.get(0).shown()))
        : number.then(value -> understood(value, unit));
  }

  private Reading<Double> understood(double value, LabelUnit unit) {
    double inFile = value * unit.size();
    String said = NumberText.number(value) + " " + unit.shown();
    String meant =
        unit.size() == 1 ? "" : " (" + NumberText.number(rounded(inFile)) + " " + inWords() + ")";
    return Reading.understood(quantity.si(inFile), said + meant);
  }

  private static double rounded(double value) {
    return Math.rint(value * HUNDRED) / HUNDRED;
  }

  /** The unit of the boat file as a person writes it. */
  private String inWords() {
    return units.stream()
        .filter(unit -> unit.size() == 1)
        .map(LabelUnit::shown)
        .findFirst()
        .orElseGet(quantity::unit);
  }

  private Optional<String> doubt(double si) {
    double inFile = quantity.inFile(si);
    return quantity.believes(inFile)
        ? Optional.empty()
        : Optional.of("That is " + quantity.doubt(rounded(inFile), "Read it again."));
  }
}
