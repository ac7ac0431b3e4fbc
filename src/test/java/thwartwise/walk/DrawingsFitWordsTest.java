package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.walk.engine.Question;

/** What a question asks for is on its drawing, by the same words. */
class DrawingsFitWordsTest {
  private static final Sheet EVERY = Sheet.everyKind(true);

  private static void drawn(String key, String... words) {
    Question question = Sheet.open(EVERY.upTo(key));
    assertThat(String.join(" ", question.sketch()).replaceAll("\\s+", " "))
        .as(question.prompt())
        .contains(words);
  }

  @Test
  void every_figure_of_an_opening_is_on_the_drawing_of_its_kind() {
    for (String of : List.of("opening.3.", "opening.4.", "opening.5.", "opening.6.")) {
      drawn(of + "x", "forward of the aft end");
      drawn(of + "y", "port of the middle");
    }
    drawn("opening.2.x", "forward of the aft end");
    drawn("opening.1.y", "port of the middle");
    drawn("opening.3.z", "height of its middle");
    drawn("opening.4.z", "height of its coaming");
    drawn("opening.4.width", "width");
    drawn("opening.5.width", "width");
    drawn("opening.6.diameter", "diameter");
    assertThat(Sheet.open(EVERY.upTo("opening.4.z")).prompt())
        .isEqualTo("Opening \"deck hatch of bow l…\", height of its coaming (m):");
    assertThat(Sheet.open(EVERY.upTo("opening.4.x")).how())
        .containsExactly("Tape from the aft end, level, to the middle of the hatch.");
  }

  @Test
  void every_limit_of_a_chamber_is_on_the_drawing_of_its_kind() {
    drawn("chamber.1.x.from", "its bulkhead");
    drawn("chamber.1.z.to", "underside", "of its top", "down to");
    drawn("chamber.2.x.to", "its bulkhead");
    drawn("chamber.3.x.from", "its aft face", "its fore face");
    drawn("chamber.4.x.from", "its aft end", "its fore end");
    drawn("chamber.4.y.from", "its face, from the middle");
    Sheet block =
        Sheet.small()
            .with("chamber.1.any", "yes")
            .with("chamber.1.kind", "block")
            .with("chamber.1.x.from", "1")
            .with("chamber.1.x.to", "1.2")
            .with("chamber.1.y.from", "hull")
            .with("chamber.1.y.to", "hull");
    assertThat(String.join(" ", Sheet.open(block.upTo("chamber.1.z.from")).sketch()))
        .contains("aft limit", "fore limit", "port limit", "starboard limit", "down to", "up to");
  }
}
