package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Opening;
import thwartwise.geometry.Vector3;
import thwartwise.measure.UnitFormat;

class OpeningWordsTest {
  private static final Vector3 AT = Vector3.of(0, 0.2, 0.11);

  @Test
  void an_edge_is_told_by_its_width_and_height() {
    assertThat(words(new Opening("notch", AT, 0.3, true)))
        .isEqualTo("notch (0.3 m wide, its edge 0.11 m up)");
  }

  @Test
  void a_hole_is_told_in_millimetres_and_never_smaller_than_it_is() {
    assertThat(words(drain(0.025)))
        .isEqualTo("drain (25 mm across, its middle 0.11 m up, closed by a bung)");
    // Seven eighths of an inch are 22.225 mm.
    assertThat(words(drain(0.022225))).contains("(23 mm across");
  }

  @Test
  void a_hatch_says_where_it_leads_and_what_shuts_it() {
    assertThat(words(hatch(Optional.of("its lid"))))
        .isEqualTo("hatch (0.3 m wide, its edge 0.11 m up, into bow locker, closed by its lid)");
    assertThat(words(hatch(Optional.empty())))
        .isEqualTo("hatch (0.3 m wide, its edge 0.11 m up, into bow locker, closed by nothing)");
  }

  @ParameterizedTest
  @CsvSource({
    "bung, a bung",
    "Old cork, an Old cork",
    "a lid, a lid",
    "The lid, The lid",
    "its lid, its lid",
    "two bolts, two bolts",
    "wing nuts, wing nuts",
    "pane of glass, a pane of glass",
    "木栓, a 木栓",
  })
  void what_shuts_it_has_an_article_where_one_is_missing(String typed, String shown) {
    assertThat(OpeningWords.withArticle(typed)).isEqualTo(shown);
  }

  private static Opening drain(double diameter) {
    return new Opening(
        "drain", AT, diameter, true, Optional.of("bung"), Optional.empty(), Optional.of(diameter));
  }

  private static Opening hatch(Optional<String> closedBy) {
    return new Opening(
        "hatch", AT, 0.3, true, closedBy, Optional.of("bow locker"), Optional.empty());
  }

  private static String words(Opening opening) {
    return OpeningWords.of(opening, UnitFormat.METRIC).replace(UnitFormat.TIED, " ");
  }
}
