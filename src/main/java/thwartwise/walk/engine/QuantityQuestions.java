package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.measure.Dimension;
import thwartwise.measure.PrintableText;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.QuantityReader.Quantity;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.AnswerBasis;
import thwartwise.measure.TypedUnit;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;

/** Questions for a measured quantity, in the units of the walk; values are SI. */
public record QuantityQuestions(UnitSystem system) {
  /** The same figure read in pounds instead of kilograms, or the other way round. */
  public Optional<Double> otherMass(double mass) {
    double pound = TypedUnit.POUND.size().doubleValue();
    return Optional.of(system.isMetric() ? mass * pound : mass / pound);
  }

  /** The factor for a guess: people guess weights too low and volumes too high (judgement). */
  public static final double HEAVIER = 1.25;

  private static final double SMALLER = 0.75;

  /** A length, m. */
  public QuestionDefinition<Double> length(String key, String subject) {
    return quantity(key, subject, Dimension.LENGTH, system.isMetric() ? "m" : "inches");
  }

  /**
   * Asks whether feet or inches are meant, if a bare figure with decimals can be either: a tape
   * shows inches and eighths, but plans and people say 12.5 for feet.
   */
  public Function<String, Optional<Warning>> feetOrInches(double least, double most) {
    return typed -> {
      if (system.isMetric() || !typed.strip().matches("\\d{1,2}[.,]\\d{1,2}")) {
        return Optional.empty();
      }
      QuantityReader reader = new QuantityReader(Dimension.LENGTH, system);
      String inFeet = typed.strip() + " ft";
      return both(reader.read(typed), reader.read(inFeet))
          .filter(pair -> pair.stream().allMatch(si -> si >= least && si <= most + HAND))
          .map(pair -> new Warning(whichUnit(typed, pair), Optional.of(inFeet), true));
    };
  }

  /** A hand's breadth, the allowance for rounded figures. */
  private static final double HAND = 0.1;

  private static Optional<List<Double>> both(Reading<Quantity> one, Reading<Quantity> other) {
    return one instanceof Reading.Understood<Quantity> inches
            && other instanceof Reading.Understood<Quantity> feet
        ? Optional.of(List.of(inches.value().si(), feet.value().si()))
        : Optional.empty();
  }

  private String whichUnit(String typed, List<Double> inchesAndFeet) {
    return "%s: feet or inches? %s, or %s."
        .formatted(
            PrintableText.excerpt(typed.strip()),
            show(inchesAndFeet.get(1)),
            show(inchesAndFeet.get(0)));
  }

  /** A question for a value of the table, with its wording and its usual range. */
  public QuestionDefinition<Double> asked(
      Property<?, Double> property, String key, String subject) {
    BoatQuantity of = property.type().quantity().orElseThrow();
    return quantity(of, key, subject).worded(property).within(usual(of));
  }

  /** A question for a value of the table that belongs to a topic. */
  public QuestionDefinition<Double> asked(Property<?, Double> property, QuestionTopic topic) {
    return asked(property, topic.key(property), topic.subject(property));
  }

  /** A guess of leaked water counts as more. */
  private QuestionDefinition<Double> quantity(BoatQuantity of, String key, String subject) {
    return of == BoatQuantity.LEAKED_LITRES
        ? leaked(key, subject)
        : quantity(of.dimension(), key, subject);
  }

  private QuestionDefinition<Double> quantity(Dimension dimension, String key, String subject) {
    return switch (dimension) {
      case LENGTH -> length(key, subject);
      case MASS -> mass(key, subject);
      case VOLUME -> litres(key, subject);
      case POWER -> power(key, subject);
      case TIME -> time(key, subject);
    };
  }

  /** A mass, kg. */
  public QuestionDefinition<Double> mass(String key, String subject) {
    return quantity(key, subject, Dimension.MASS, system.isMetric() ? "kg" : "lb");
  }

  /** A volume, m³. */
  public QuestionDefinition<Double> litres(String key, String subject) {
    return quantity(key, subject, Dimension.VOLUME, "litres");
  }

  /** A volume of leaked water, m³; a guess counts as more. */
  public QuestionDefinition<Double> leaked(String key, String subject) {
    return quantity(key, subject, Dimension.VOLUME, "litres", HEAVIER);
  }

  /** A mass that was carried in a trial, kg; a guess counts as less. */
  public QuestionDefinition<Double> carried(String key, String subject) {
    return quantity(key, subject, Dimension.MASS, system.isMetric() ? "kg" : "lb", SMALLER);
  }

  /** A power, W. */
  public QuestionDefinition<Double> power(String key, String subject) {
    return quantity(key, subject, Dimension.POWER, system.isMetric() ? "kW" : "hp");
  }

  /** A time, s. */
  public QuestionDefinition<Double> time(String key, String subject) {
    return quantity(key, subject, Dimension.TIME, "minutes");
  }

  private QuestionDefinition<Double> quantity(
      String key, String subject, Dimension dimension, String unit) {
    return quantity(key, subject, dimension, unit, share(dimension));
  }

  private QuestionDefinition<Double> quantity(
      String key, String subject, Dimension dimension, String unit, double whenGuessed) {
    QuantityReader reader = new QuantityReader(dimension, system);
    return QuestionDefinition.of(
        key,
        subject,
        unit,
        system.examples(dimension),
        typed -> reader.read(typed).then(q -> counted(q, whenGuessed)));
  }

  /** Counts a guess at its unfavourable end. */
  private Reading<Double> counted(Quantity quantity, double whenGuessed) {
    double si = quantity.si() * (quantity.guessed() ? whenGuessed : 1);
    if (!quantity.guessed()) {
      return Reading.understood(si, quantity.understood());
    }
    boolean poorer = si != quantity.si();
    String counted = poorer ? ", counted as " + system.show(si, quantity.dimension()) : "";
    return Reading.understood(
        si,
        quantity.understood() + ", a guess" + counted,
        poorer ? AnswerBasis.GUESS_COUNTED_POORER : AnswerBasis.GUESSED);
  }

  /**
   * The factor for a guess: more for weight and power, less for volume and for the duration of a
   * test.
   */
  private static double share(Dimension dimension) {
    return switch (dimension) {
      case MASS, POWER -> HEAVIER;
      case VOLUME, TIME -> SMALLER;
      case LENGTH -> 1;
    };
  }

  /** A length in words. */
  public String show(double metres) {
    return system.show(metres, Dimension.LENGTH);
  }

  /** A mass in words. */
  public String mass(double kilograms) {
    return system.show(kilograms, Dimension.MASS);
  }

  /** The metric words or the others, by the units of the walk. */
  public String either(String metric, String other) {
    return system.isMetric() ? metric : other;
  }

  /** A usual mass, counted as heavy because nobody weighed it. */
  public String heavy(double kilograms) {
    return mass(kilograms) + ", heavy for its kind";
  }

  /**
   * Refuses a length outside a range.
   *
   * @param ofWhat completes "…, the"
   */
  public PlausibleRange length(double least, double most, String ofWhat) {
    return new PlausibleRange(Dimension.LENGTH, system, least, most, ofWhat, least, most);
  }

  public PlausibleRange mass(double least, double most, String ofWhat) {
    return new PlausibleRange(Dimension.MASS, system, least, most, ofWhat, least, most);
  }

  /** Asks for confirmation of a value outside the usual range of the table. */
  public PlausibleRange usual(BoatQuantity quantity) {
    return PlausibleRange.of(quantity, system);
  }
}
