package thwartwise.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a length, mass, volume, power or time as people write it. Decimals are kept exact until the
 * end, so the same length typed in two units is the same number. Text with no meaning or several
 * meanings is refused.
 */
public final class QuantityReader {
  private static final Pattern PART =
      Pattern.compile(
          "\\G\\s*(?:" + WrittenNumber.PATTERN + ")(?<word>(?:[^\\d.,/]|[.,](?!\\d))*)");

  private static final Pattern GUESS =
      Pattern.compile(
          "(?:about|around|approx\\.?|approximately|ca\\.?|circa|roughly|maybe|perhaps|~"
              + "|(?:a )?guess(?:ed)?(?: of)?:?|est\\.?|estimated?)(?![a-z])\\s*(?<figure>.*\\d.*)");

  private static final Pattern GUESS_BEHIND =
      Pattern.compile(
          "(?<figure>.*\\d.*?),?\\s*(?:or so|\\(?(?:a )?guess(?:ed)?\\)?|approx\\.?|\\?)");

  private static final Pattern THRUST =
      Pattern.compile(
          "(?<pounds>\\d{1,3}(?:[.,]\\d+)?)\\s*(?:lbs?|pounds?|#)\\.?\\s*(?:of\\s+)?thrust");

  private static final BigDecimal WATTS_A_POUND = new BigDecimal("12");

  private static final Pattern SEVERAL =
      Pattern.compile("(?<count>[1-9]\\d?)\\s*[x\u00d7*]\\s*(?<each>.+)");

  private final Dimension dimension;
  private final UnitSystem system;

  public QuantityReader(Dimension dimension, UnitSystem system) {
    this.dimension = dimension;
    this.system = system;
  }

  public Reading<Quantity> read(String typed) {
    if (NormalizedInput.isTooLong(typed)) {
      return notUnderstood(typed);
    }
    String plain = NormalizedInput.of(typed);
    Matcher thrust = THRUST.matcher(plain);
    if (dimension == Dimension.POWER && thrust.matches()) {
      return ofThrust(thrust);
    }
    return guessed(typed)
        .map(figure -> counted(typed, figure).as(Quantity::asGuess))
        .orElseGet(() -> counted(typed, plain));
  }

  /**
   * Reads the thrust of an electric motor. At 12 V it draws about one ampere for each pound of
   * thrust; that is a rule of thumb, so the result is a guess.
   */
  private Reading<Quantity> ofThrust(Matcher thrust) {
    BigDecimal pounds = WrittenNumber.decimal(thrust.group("pounds"));
    BigDecimal watts = pounds.multiply(WATTS_A_POUND);
    Quantity power = new Sum(watts, TypedUnit.WATT).quantity(system);
    String words =
        "%s (%s lb of thrust at 12 W a pound, a rule of thumb for motors of 12 V)"
            .formatted(power.understood(), thrust.group("pounds"));
    return Reading.understood(new Quantity(power.si(), dimension, words, true), words);
  }

  /** The text without the word that marks a guess; empty when there is none. */
  public static Optional<String> guessed(String typed) {
    String plain = NormalizedInput.isTooLong(typed) ? "" : NormalizedInput.of(typed);
    return Stream.of(GUESS, GUESS_BEHIND)
        .map(pattern -> pattern.matcher(plain))
        .filter(Matcher::matches)
        .map(guess -> guess.group("figure"))
        .findFirst();
  }

  /** The figure typed as a guess. */
  public static String guessText(String figure) {
    return "about " + figure;
  }

  /** A count of equal things, or one alone. */
  private Reading<Quantity> counted(String typed, String plain) {
    Matcher several = SEVERAL.matcher(plain);
    return several.matches()
        ? one(typed, several.group("each"), Integer.parseInt(several.group("count")))
        : one(typed, plain, 1);
  }

  private Reading<Quantity> one(String typed, String plain, int count) {
    Optional<Reading<BigDecimal>> dashed =
        dimension == Dimension.LENGTH ? FeetInchesEighths.inches(plain) : Optional.empty();
    if (dashed.isPresent()) {
      return dashed
          .get()
          .then(
              inches ->
                  quantity(
                      typed,
                      new Sum(inches.multiply(TypedUnit.INCH.size()), TypedUnit.INCH)
                          .times(count)));
    }
    boolean negative = plain.startsWith("-");
    String unsigned = negative || plain.startsWith("+") ? plain.substring(1) : plain;
    return parts(typed, unsigned)
        .then(parts -> sum(typed, parts))
        .then(sum -> quantity(typed, sum.times(count).signed(negative)));
  }

  private Reading<Quantity> quantity(String typed, Sum sum) {
    if (sum.isAbsurd()) {
      return notUnderstood(typed);
    }
    Quantity quantity = sum.quantity(system);
    return Reading.understood(quantity, quantity.understood());
  }

  private Reading<List<NumberPart>> parts(String typed, String plain) {
    List<NumberPart> parts = new ArrayList<>();
    Matcher matcher = PART.matcher(plain);
    int end = 0;
    while (matcher.find()) {
      if (WrittenNumber.hasTwoMeanings(matcher)) {
        return Reading.refused(WrittenNumber.ambiguity(typed));
      }
      Optional<BigDecimal> number = WrittenNumber.value(matcher);
      if (number.isEmpty()) {
        return notUnderstood(typed);
      }
      parts.add(new NumberPart(number.get(), word(matcher.group("word"))));
      end = matcher.end();
    }
    return end == 0 || end < plain.length()
        ? notUnderstood(typed)
        : Reading.understood(List.copyOf(parts), plain);
  }

  private static String word(String between) {
    return between.replaceAll("[.,]", "").strip().replaceAll("\\s+", " ");
  }

  private Reading<Sum> sum(String typed, List<NumberPart> parts) {
    return switch (parts.size()) {
      case 1 -> one(typed, parts.get(0));
      case 2 -> two(typed, parts.get(0), parts.get(1));
      default -> notUnderstood(typed);
    };
  }

  private Reading<Sum> one(String typed, NumberPart part) {
    Reading<TypedUnit> unit =
        part.isBare() ? Reading.understood(system.bare(dimension), "") : unit(typed, part.word());
    return unit.as(known -> new Sum(part.times(known), known));
  }

  private Reading<Sum> two(String typed, NumberPart large, NumberPart small) {
    return unit(typed, large.wordBeforeAnother()).then(unit -> two(typed, large, unit, small));
  }

  private Reading<Sum> two(String typed, NumberPart large, TypedUnit unit, NumberPart small) {
    Optional<TypedUnit> smaller =
        unit.smaller()
            .filter(s -> small.isBare() ? unit.takesSmallerUnit() : s.matches(small.word()));
    if (smaller.isEmpty()) {
      return notUnderstood(typed);
    }
    BigDecimal rest = small.times(smaller.get());
    if (!large.isWhole() || rest.compareTo(unit.size()) >= 0) {
      return Reading.refused(carry(typed, unit, smaller.get()));
    }
    BigDecimal si = large.times(unit).add(rest);
    return Reading.understood(new Sum(si, unit), "");
  }

  private static String carry(String typed, TypedUnit unit, TypedUnit smaller) {
    return "%s does not add up. Type whole %s first, then %s that make less than one %s."
        .formatted(PrintableText.excerpt(typed), unit.symbol(), smaller.symbol(), unit.symbol());
  }

  private Reading<TypedUnit> unit(String typed, String word) {
    if (word.matches("gals?|gallons?") && dimension == Dimension.VOLUME) {
      return Reading.refused(gallons(typed));
    }
    return TypedUnit.parse(word)
        .filter(unit -> unit.dimension() == dimension)
        .map(unit -> Reading.understood(unit, unit.symbol()))
        .orElseGet(() -> notUnderstood(typed));
  }

  private static String gallons(String typed) {
    return PrintableText.excerpt(typed)
        + " can be read in two ways: a US gallon is 3.785 litres, an imperial one 4.546."
        + " Type us gal or imp gal.";
  }

  private <T> Reading<T> notUnderstood(String typed) {
    return Reading.refused(
        "%s is not a %s this can use. Type %s."
            .formatted(PrintableText.excerpt(typed), dimension.word(), system.examples(dimension)));
  }

  /**
   * One number with the text after it up to the next.
   *
   * @param word in lower case without stops and commas; empty when the number stood alone
   */
  private record NumberPart(BigDecimal number, String word) {

    boolean isBare() {
      return word.isEmpty();
    }

    boolean isWhole() {
      return number.stripTrailingZeros().scale() <= 0;
    }

    BigDecimal times(TypedUnit unit) {
      return number.multiply(unit.size());
    }

    /** The unit in {@code 3'-4"} or {@code 3 feet and 4 inches}, without the joint to the next. */
    String wordBeforeAnother() {
      return word.replaceFirst("(?:-|\\band)$", "").strip();
    }
  }

  /** The sum of the parts in SI, and the unit in which the person thinks. */
  private record Sum(BigDecimal si, TypedUnit unit) {
    /** Larger than any boat; such a figure would only garble the messages. */
    private static final BigDecimal ABSURD = new BigDecimal("1000000");

    boolean isAbsurd() {
      return si.abs().compareTo(ABSURD) > 0;
    }

    Sum times(int count) {
      return new Sum(si.multiply(BigDecimal.valueOf(count)), unit);
    }

    Sum signed(boolean negative) {
      return negative ? new Sum(si.negate(), unit) : this;
    }

    Quantity quantity(UnitSystem system) {
      double value = si.doubleValue();
      Dimension dimension = unit.dimension();
      return new Quantity(
          value, dimension, QuantityText.both(value, dimension, unit, system.isMetric()), false);
    }
  }

  /**
   * A measurement.
   *
   * @param si in metres, kilograms, cubic metres, watts or seconds
   * @param guessed whether it was typed as a guess
   * @param understood the same in the unit it was typed in, with the other system next to it
   */
  public record Quantity(double si, Dimension dimension, String understood, boolean guessed) {

    Quantity asGuess() {
      return new Quantity(si, dimension, understood, true);
    }
  }
}
