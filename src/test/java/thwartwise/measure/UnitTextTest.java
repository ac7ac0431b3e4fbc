package thwartwise.measure;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Text with its measures in either system. */
class UnitTextTest {
  private static final Pattern PAIR = Pattern.compile("\\{([0-9.]+) (m|kg)\\|([^}]+)}");
  private static final Pattern PART = Pattern.compile("([0-9.]+) (ft|in|lb)");

  @Test
  void text_says_its_measures_in_the_units_it_is_read_in() {
    UnitText text = UnitText.of("under {6 m|19 ft 8 in}, {75 kg|165 lb} each");

    assertThat(text.words()).isEqualTo("under 6 m, 75 kg each");
    assertThat(text.in(UnitSystem.FEET_INCHES_POUNDS).words())
        .isEqualTo("under 19 ft 8 in, 165 lb each");
    assertThat(UnitText.of("{ \"cleats\": [ 1 ] }").words()).isEqualTo("{ \"cleats\": [ 1 ] }");
  }

  // Foot 0.3048 m, pound 0.45359237 kg (exact by definition). A twentieth is what rounding a short
  // length to whole inches takes.
  @Test
  void both_measures_of_the_rules_that_ship_are_the_same() {
    List<MatchResult> pairs = PAIR.matcher(rules()).results().toList();

    assertThat(pairs).hasSizeGreaterThan(12);
    for (MatchResult pair : pairs) {
      double metric = Double.parseDouble(pair.group(1));
      double other =
          PART.matcher(pair.group(3))
              .results()
              .mapToDouble(part -> Double.parseDouble(part.group(1)) * si(part.group(2)))
              .sum();
      assertThat(other / metric).as(pair.group()).isBetween(0.95, 1.05);
    }
  }

  private static double si(String unit) {
    return switch (unit) {
      case "ft" -> 0.3048;
      case "in" -> 0.0254;
      default -> 0.45359237;
    };
  }

  private static String rules() {
    StringBuilder all = new StringBuilder();
    for (String name : List.of("cautious-default", "a-person-elsewhere", "persons-by-length")) {
      try (InputStream in =
          UnitText.class.getResourceAsStream("/thwartwise/rules/" + name + ".json")) {
        all.append(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return all.toString();
  }
}
