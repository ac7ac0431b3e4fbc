package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Chamber;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.walk.engine.Answer;

/** Of a chamber only the limits are asked that one in its place has. */
class ChambersInTheWalkTest {
  private static final Sheet DEMO = CountedWalks.demo();

  private static List<String> limits(Sheet sheet, int number) {
    String group = "chamber." + number + ".";
    return sheet.upTo(group + "filling").stream()
        .map(Answer::question)
        .filter(key -> key.startsWith(group))
        .map(key -> key.substring(group.length()))
        .toList();
  }

  private static Chamber chamber(Sheet sheet, int number) {
    return sheet.boat().chambers().get(number - 1);
  }

  private static Box box(Span x, Span y, Span z) {
    return new Box(x, y, z);
  }

  /** From its bulkhead to the stem, from side to side. */
  @Test
  void a_bow_locker_has_a_bulkhead_a_bottom_and_a_top() {
    assertThat(limits(DEMO, 1)).containsExactly("any", "kind", "name", "x.from", "z.from", "z.to");
    assertThat(chamber(DEMO, 1).box())
        .isEqualTo(box(new Span(3.31, 4.02), Span.ALL, new Span(0, 0.45)));
    Sheet toTheRail = DEMO.with("chamber.1.z.from", "hull").with("chamber.1.z.to", "rail");
    assertThat(chamber(toTheRail, 1).box().z()).isEqualTo(Span.ALL);
    assertThat(Sheet.open(DEMO.upTo("chamber.1.z.to")).prompt())
        .isEqualTo("Chamber \"bow locker\", underside of its top (m or rail):");
  }

  @Test
  void a_stern_locker_reaches_from_the_aft_end_to_its_bulkhead() {
    Sheet stern = DEMO.with("chamber.2.kind", "stern").with("chamber.2.x.to", "0.1");
    assertThat(limits(stern, 2)).containsExactly("any", "kind", "name", "x.to", "z.from", "z.to");
    assertThat(chamber(stern, 2).box().x()).isEqualTo(new Span(0, 0.1));
  }

  @Test
  void a_thwart_box_has_two_faces_and_no_twin() {
    assertThat(limits(DEMO, 2))
        .containsExactly("any", "kind", "name", "x.from", "x.to", "z.from", "z.to");
    assertThat(chamber(DEMO, 2).box())
        .isEqualTo(box(new Span(1.92, 2.2), Span.ALL, new Span(0, 0.27)));
    assertThat(chamber(DEMO, 2).mirrored()).isFalse();
  }

  /** From its upright face out to the side; the half-breadth of the hull is 0.74 m. */
  @Test
  void a_side_seat_has_a_face_and_lies_on_one_side_or_both() {
    assertThat(limits(DEMO, 3))
        .containsExactly(
            "any", "kind", "name", "side", "x.from", "x.to", "y.from", "z.from", "z.to");
    Box port = box(new Span(0.16, 1.21), new Span(0.34, 0.74), new Span(0, 0.29));
    assertThat(chamber(DEMO, 3).box()).isEqualTo(port);
    assertThat(chamber(DEMO, 3).mirrored()).isTrue();
    Chamber starboard = chamber(DEMO.with("chamber.3.side", "starboard"), 3);
    assertThat(starboard.box()).isEqualTo(port.mirrored());
    assertThat(starboard.mirrored()).isFalse();
  }

  @Test
  void a_block_has_all_six_limits_and_may_have_a_twin() {
    assertThat(limits(DEMO, 4))
        .containsExactly(
            "any",
            "kind",
            "name",
            "x.from",
            "x.to",
            "y.from",
            "y.to",
            "z.from",
            "z.to",
            "mirrored");
  }

  @Test
  void what_overlaps_is_told_at_the_last_limit() {
    assertThat(DEMO.with("chamber.2.x.to", "3.5").refused("chamber.2.z.to", "0.27"))
        .startsWith("Chamber \"middle thwart box\" overlaps chamber \"bow locker\"");
    assertThat(
            DEMO.with("chamber.4.kind", "side")
                .with("chamber.4.side", "starboard")
                .with("chamber.4.x.from", "1.0")
                .with("chamber.4.y.from", "0.5")
                .refused("chamber.4.z.to", "0.2"))
        .contains("overlaps chamber \"stern bench box\"");
  }

  @Test
  void a_limit_that_must_be_a_figure_takes_no_word() {
    assertThat(DEMO.refused("chamber.1.x.from", "hull")).contains("is not a length");
    assertThat(DEMO.refused("chamber.2.x.from", "")).startsWith("Nothing was typed.");
  }

  @Test
  void names_follow_from_the_place() {
    assertThat(Sheet.open(DEMO.upTo("chamber.3.name")).alone())
        .isEqualTo("Chamber, name [Enter: side seat]:");
    assertThat(Sheet.open(DEMO.upTo("chamber.3.name")).prompt())
        .isEqualTo("Side seat (name; side; aft end; fore end; face from middle; down to; top):");
    assertThat(
            Sheet.open(
                    DEMO.with("chamber.1.name", "")
                        .with("opening.3.into", "boat")
                        .with("chamber.2.kind", "bow")
                        .upTo("chamber.2.name"))
                .alone())
        .isEqualTo("Chamber, name [Enter: bow locker 2]:");
  }

  /** An opening that leads into "boat" leads into no chamber. */
  @Test
  void no_chamber_is_called_boat() {
    assertThat(DEMO.refused("chamber.1.name", "Boat"))
        .isEqualTo("\"Boat\" is already the name of another. Type another name.");
  }

  /** A row is typed there, so that is where the drawing is wanted. */
  @Test
  void what_is_measured_where_is_drawn_where_a_row_begins() {
    for (String question : List.of("any", "kind", "name")) {
      assertThat(Sheet.open(DEMO.upTo("chamber.3." + question)).sketch())
          .as(question)
          .isNotEmpty()
          .allMatch(line -> line.length() <= 78);
    }
  }
}
