package thwartwise.json;

import static thwartwise.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;

/** The library's own mapper is the second way: slow to build, and not used by the program. */
class JsonTreeTest {
  private static final JsonMapper MAPPER = new JsonMapper();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"a\": {\"b\": [1, -2.50, 1e-7, 2147483648, 12345678901234567890], \"\": []}, \"c\": {}}",
        "[true, false, null, \"\\u00e4 \\\" \\\\ \\n \\u2028 /\", [[[]]]]",
        "\"K\u00e4se\"",
        "0",
        "null",
        " "
      })
  void text_becomes_the_tree_the_mapper_reads(String json) {
    assertThat(JsonText.parse(json, Location.whole("here"))).isEqualTo(MAPPER.readTree(json));
  }

  @Test
  void what_stands_in_a_tree_is_written_as_the_mapper_writes_it() {
    for (String json :
        new String[] {"null", "true", "7", "2147483648", "\"\\u0001 \\\" \u00e4\""}) {
      JsonNode node = MAPPER.readTree(json);
      assertThat(JsonText.scalar(node)).isEqualTo(MAPPER.writeValueAsString(node));
    }
  }

  @Test
  void any_figure_is_written_as_the_mapper_writes_it_and_read_as_it_was() {
    Random random = new Random(1);
    for (int i = 0; i < 10_000; i++) {
      double figure = Double.longBitsToDouble(random.nextLong());
      if (Double.isFinite(figure)) {
        String text = JsonText.scalar(JsonNodeFactory.instance.numberNode(figure));
        assertThat(text).isEqualTo(MAPPER.writeValueAsString(figure));
        assertThat(JsonText.parse(text, Location.whole("here")).asDouble()).isEqualTo(figure);
      }
    }
  }
}
