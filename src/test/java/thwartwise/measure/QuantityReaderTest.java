package thwartwise.measure;

import static thwartwise.Assertions.assertThat;
import static thwartwise.measure.Dimension.LENGTH;
import static thwartwise.measure.Dimension.MASS;
import static thwartwise.measure.Dimension.POWER;
import static thwartwise.measure.Dimension.TIME;
import static thwartwise.measure.Dimension.VOLUME;
import static thwartwise.measure.UnitSystem.FEET_INCHES_POUNDS;
import static thwartwise.measure.UnitSystem.METRIC;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.measure.QuantityReader.Quantity;

@Isolated("sets the locale of the process")
class QuantityReaderTest {

  private static Reading<Quantity> read(Dimension dimension, UnitSystem system, String typed) {
    return new QuantityReader(dimension, system).read(typed);
  }

  private static Quantity understood(Dimension dimension, UnitSystem system, String typed) {
    Reading<Quantity> reading = read(dimension, system, typed);
    assertThat(reading).as(typed).isInstanceOf(Reading.Understood.class);
    return ((Reading.Understood<Quantity>) reading).value();
  }

  private static String refusal(Dimension dimension, UnitSystem system, String typed) {
    return read(dimension, system, typed).refusal().orElse("understood");
  }

  // Foot 0.3048 m, inch a twelfth of it: international yard and pound agreement of 1959, exact
  // definitions; the products DERIVED. Compared without tolerance, since both sides are decimals.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          1.02         | METRIC             | 1.02
          1,02         | METRIC             | 1.02
          .5           | METRIC             | 0.5
          ,5           | METRIC             | 0.5
          102cm        | METRIC             | 1.02
          102 CM       | METRIC             | 1.02
          1.02 m       | METRIC             | 1.02
          1.02 metres  | METRIC             | 1.02
          1.02 m.      | METRIC             | 1.02
          1020 mm      | METRIC             | 1.02
          1 m 2 cm     | METRIC             | 1.02
          4.5 km       | METRIC             | 4500
          0,006        | METRIC             | 0.006
          -0.08        | METRIC             | -0.08
          −8 cm        | METRIC             | -0.08
          +8 cm        | METRIC             | 0.08
          -0           | METRIC             | 0
          3' 4 1/2"    | METRIC             | 1.0287
          3’ 4 1/2”    | METRIC             | 1.0287
          3′ 4½″       | METRIC             | 1.0287
          3'-4 1/2"    | METRIC             | 1.0287
          3' 4-1/2''   | METRIC             | 1.0287
          3'4.5"       | METRIC             | 1.0287
          3' 4         | METRIC             | 1.016
          3ft 4in      | METRIC             | 1.016
          3 ft. 4 in.  | METRIC             | 1.016
          3 feet and 4 inches | METRIC      | 1.016
          -1' 2"       | METRIC             | -0.3556
          40 1/2 in    | METRIC             | 1.0287
          40.5"        | METRIC             | 1.0287
          5/8"         | METRIC             | 0.015875
          1 1/2 ft     | METRIC             | 0.4572
          40 1/2       | FEET_INCHES_POUNDS | 1.0287
          40,5         | FEET_INCHES_POUNDS | 1.0287
          1.02 m       | FEET_INCHES_POUNDS | 1.02
          12'          | FEET_INCHES_POUNDS | 3.6576
          3-4-4        | FEET_INCHES_POUNDS | 1.0287
          3-4-4        | METRIC             | 1.0287
          0-0-5+       | FEET_INCHES_POUNDS | 0.0174625
          """)
  void a_length_is_read_as_people_write_it(String typed, UnitSystem system, double metres) {
    assertThat(understood(LENGTH, system, typed).si()).isEqualTo(metres);
  }

  // Pound 0.45359237 kg: agreement of 1959, exact; stone 14 lb, ounce a sixteenth: definitions.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          95              | METRIC             | 95
          95 kg           | METRIC             | 95
          95,5 kilos      | METRIC             | 95.5
          500 g           | METRIC             | 0.5
          209 lb          | METRIC             | 94.80080533
          209             | FEET_INCHES_POUNDS | 94.80080533
          209 lbs         | FEET_INCHES_POUNDS | 94.80080533
          12 st 4         | METRIC             | 78.01788764
          12 stone 4 lb   | METRIC             | 78.01788764
          12st4lb         | METRIC             | 78.01788764
          12 stone        | METRIC             | 76.20351816
          2 lb 8 oz       | METRIC             | 1.133980925
          """)
  void a_mass_is_read_as_people_write_it(String typed, UnitSystem system, double kilograms) {
    assertThat(understood(MASS, system, typed).si()).isEqualTo(kilograms);
  }

  // US gallon 231 cubic inches = 3.785411784 l; imperial gallon 4.54609 l: exact definitions.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          12            | METRIC             | 0.012
          12            | FEET_INCHES_POUNDS | 0.012
          12 l          | METRIC             | 0.012
          12.5 litres   | METRIC             | 0.0125
          250 ml        | METRIC             | 0.00025
          3 us gal      | METRIC             | 0.011356235352
          3 US gallons  | FEET_INCHES_POUNDS | 0.011356235352
          3 imp gal     | METRIC             | 0.01363827
          3 imperial gallons | METRIC        | 0.01363827
          """)
  void a_volume_is_read_in_litres(String typed, UnitSystem system, double cubicMetres) {
    assertThat(understood(VOLUME, system, typed).si()).isEqualTo(cubicMetres);
  }

  // Horsepower 550 ft lbf/s with the exact foot, pound and 9.80665 m/s²; PS 75 m kgf/s. DERIVED.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          2.2     | METRIC             | 2200
          500 W   | METRIC             | 500
          3.7 kW  | FEET_INCHES_POUNDS | 3700
          5       | FEET_INCHES_POUNDS | 3728.4993579113511
          5 hp    | METRIC             | 3728.4993579113511
          4 PS    | METRIC             | 2941.995
          """)
  void a_power_is_read_in_kilowatts_or_horsepower(String typed, UnitSystem system, double watts) {
    assertThat(understood(POWER, system, typed).si()).isEqualTo(watts);
  }

  @ParameterizedTest
  @CsvSource({"20, 1200", "20 min, 1200", "90 s, 90", "1 h, 3600", "1 h 30 min, 5400"})
  void a_time_is_read_in_minutes(String typed, double seconds) {
    assertThat(understood(TIME, METRIC, typed).si()).isEqualTo(seconds);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          LENGTH | METRIC             | 1.02      | 1.02 m
          LENGTH | METRIC             | 102 cm    | 1.02 m
          LENGTH | METRIC             | 3.6       | 3.60 m
          LENGTH | METRIC             | 6 mm      | 6 mm
          LENGTH | METRIC             | 4.5 mm    | 4.5 mm
          LENGTH | METRIC             | -0.08     | -80 mm
          LENGTH | METRIC             | 0         | 0.00 m
          LENGTH | METRIC             | 40.5"     | 3 ft 4 1/2 in (1.029 m)
          LENGTH | FEET_INCHES_POUNDS | 40 1/2    | 3 ft 4 1/2 in
          LENGTH | FEET_INCHES_POUNDS | -3        | -3 in
          LENGTH | FEET_INCHES_POUNDS | 1/4       | 1/4 in
          LENGTH | FEET_INCHES_POUNDS | 12        | 1 ft 0 in
          LENGTH | FEET_INCHES_POUNDS | 1.02 m    | 1.02 m (3 ft 4 3/16 in)
          MASS   | METRIC             | 95        | 95 kg
          MASS   | METRIC             | 209 lb    | 209 lb (94.8 kg)
          MASS   | METRIC             | 12 st 4   | 12 st 4 lb (78.02 kg)
          MASS   | FEET_INCHES_POUNDS | 209       | 209 lb
          MASS   | FEET_INCHES_POUNDS | 95 kg     | 95 kg (209.4 lb)
          VOLUME | FEET_INCHES_POUNDS | 12.5      | 12.5 l
          VOLUME | METRIC             | 3 us gal  | 3 us gal (11.36 l)
          POWER  | METRIC             | 500 W     | 500 W
          POWER  | METRIC             | 2.2       | 2.2 kW
          POWER  | FEET_INCHES_POUNDS | 5         | 5 hp
          TIME   | METRIC             | 90 s      | 1.5 min
          """)
  void what_was_understood_is_said_in_the_unit_it_was_typed_in(
      Dimension dimension, UnitSystem system, String typed, String text) {
    assertThat(understood(dimension, system, typed).understood()).isEqualTo(text);
  }

  @Test
  void figures_look_the_same_under_an_arabic_locale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(understood(LENGTH, METRIC, "40.5\"").understood())
          .isEqualTo("3 ft 4 1/2 in (1.029 m)");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void a_word_that_is_no_length_is_refused_with_examples() {
    assertThat(refusal(LENGTH, METRIC, "long"))
        .isEqualTo(
            "\"long\" is not a length this can use."
                + " Type a length such as 1.02 (metres), 102 cm or 3' 4 1/2\".");
  }

  @Test
  void the_examples_follow_the_units_in_force() {
    assertThat(refusal(LENGTH, FEET_INCHES_POUNDS, "long"))
        .isEqualTo(
            "\"long\" is not a length this can use."
                + " Type a length such as 40 1/2 (inches), 3' 4 1/2\" or 1.02 m.");
  }

  @Test
  void a_mass_is_no_length() {
    assertThat(refusal(LENGTH, METRIC, "95 kg"))
        .startsWith("\"95 kg\" is not a length this can use.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 gal", "3 gallons", "3gal."})
  void a_gallon_without_its_country_is_refused(String typed) {
    assertThat(refusal(VOLUME, METRIC, typed))
        .isEqualTo(
            "\""
                + typed
                + "\" can be read in two ways: a US gallon is 3.785 litres, an imperial one 4.546."
                + " Type us gal or imp gal.");
  }

  @Test
  void a_comma_that_may_part_thousands_is_refused() {
    assertThat(refusal(LENGTH, METRIC, "1,020 mm"))
        .isEqualTo(
            "\"1,020 mm\" can be read in two ways, as thousands or as decimals."
                + " Type it with a decimal point, or without the comma.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"3.5' 4\"", "3' 14\"", "3' 12\""})
  void feet_and_inches_that_do_not_add_up_are_refused(String typed) {
    assertThat(refusal(LENGTH, METRIC, typed))
        .isEqualTo(
            PrintableText.excerpt(typed)
                + " does not add up. Type whole ft first, then in that make less than one ft.");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "-",
        "+",
        ".",
        ",",
        "/",
        "1/0",
        "1/2/3",
        "1.02.3",
        "1,02,3",
        "NaN",
        "nan",
        "Infinity",
        "1e400",
        "1e3",
        "0x10",
        "1.02 m 3",
        "1 2",
        "1 2 3",
        "5 10",
        "m",
        "m 1",
        "1 parsec",
        "--1",
        "- -1",
        "1-",
        "1 m 2",
        "1 m 2 mm",
        "٣",
        "１",
        "🛶",
        "1 🛶",
        "\u001b[31m1.02\u001b[0m",
        "1.02\u0000",
        "1.02\nrm",
        "\u202e1.02",
        "999999999999999999999",
        "1;2",
        "1'2'3'",
        "'",
        "\"",
        "3''4'",
        "$1",
        "1..2",
        "%s",
        "1.02 kg",
        "3 fl oz"
      })
  void odd_input_is_refused_in_one_harmless_line(String typed) {
    assertThat(refusal(LENGTH, METRIC, typed))
        .isNotEqualTo("understood")
        .hasSizeLessThan(250)
        .matches(line -> line.codePoints().allMatch(PrintableText::isHarmless));
  }

  @Test
  void a_megabyte_is_refused_and_quoted_in_forty_characters() {
    assertThat(refusal(LENGTH, METRIC, "9".repeat(1_000_000)))
        .startsWith("\"" + "9".repeat(40) + "…\" is not a length this can use.")
        .hasSizeLessThan(250);
  }

  // International pound 0.45359237 kg, exactly (agreement of 1959); a stone is 14 of them.
  @Test
  void a_guess_is_known_by_any_of_the_usual_words_for_one() {
    for (String guess :
        List.of(
            "guess 70",
            "guess: 70 kg",
            "a guess 70",
            "guessed 70",
            "about 70",
            "around 70",
            "roughly 70",
            "approx 70",
            "approx. 70",
            "~70",
            "~ 70",
            "ca 70",
            "circa 70",
            "est. 70",
            "estimated 70",
            "maybe 70",
            "70?",
            "70 kg, a guess",
            "70 (guess)",
            "70 or so")) {
      assertThat(understood(MASS, guess).si()).as(guess).isEqualTo(70);
      assertThat(guessed(guess)).as(guess).isTrue();
    }
  }

  @Test
  void eighths_that_make_an_inch_are_refused() {
    assertThat(refusal(LENGTH, METRIC, "1-4-9"))
        .isEqualTo(
            "\"1-4-9\" does not add up. Expected feet-inches-eighths, with inches up to 11 and"
                + " eighths up to 7, such as 1-4-3.");
  }

  @Test
  void several_of_the_same_are_counted_and_a_guess_is_known_as_one() {
    assertThat(value(MASS, "2 x 6 kg")).isEqualTo(12);
    assertThat(value(MASS, "3\u00d72 lb")).isEqualTo(2.72155422);
    assertThat(value(MASS, "12 st 4")).isEqualTo(78.01788764);
    assertThat(value(MASS, "about 20")).isEqualTo(20);
    assertThat(guessed("about 20")).isTrue();
    assertThat(guessed("ca. 20 kg")).isTrue();
    assertThat(guessed("~2 x 6 kg")).isTrue();
    assertThat(guessed("20")).isFalse();
    for (String odd : List.of("about", "0 x 6 kg", "2 x", "x 6", "2 x 3 x 4 kg", "about about 2")) {
      assertThat(refusal(MASS, METRIC, odd)).as(odd).isNotEqualTo("understood");
    }
  }

  private static double value(Dimension dimension, String typed) {
    return understood(dimension, typed).si();
  }

  private static boolean guessed(String typed) {
    return understood(MASS, typed).guessed();
  }

  private static Quantity understood(Dimension dimension, String typed) {
    Reading<Quantity> reading = new QuantityReader(dimension, METRIC).read(typed);
    return ((Reading.Understood<Quantity>) reading).value();
  }
}
