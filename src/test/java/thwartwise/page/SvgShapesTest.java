package thwartwise.page;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import thwartwise.page.SvgShapes.Painted;

class SvgShapesTest {
  @Test
  void a_path_a_circle_and_a_box_stand_where_the_picture_has_them() throws Exception {
    SvgShapes picture =
        shapes(
            "<path d=\"M1 2L3 -4.5V7H9Q10 11 12 13C1 1 2 2 3 3Z\"/>"
                + "<g><circle cx=\"5\" cy=\"6\" r=\"2\"/></g>"
                + "<rect x=\"1.5\" y=\"2\" width=\"3\" height=\"4\"/>");
    assertThat(picture.width()).isEqualTo(640);
    assertThat(picture.height()).isEqualTo(80);
    assertThat(picture.shapes())
        .extracting(painted -> painted.shape().getBounds2D())
        .containsExactly(
            new Rectangle2D.Float(1, -4.5f, 11, 17.5f),
            new Rectangle2D.Float(3, 4, 4, 4),
            new Rectangle2D.Float(1.5f, 2, 3, 4));
  }

  @Test
  void what_a_shape_does_not_say_it_has_from_around_it_and_else_it_is_black_without_a_line()
      throws Exception {
    List<Painted> shapes =
        shapes("<path d=\"M0 0\"/><g fill=\"#0a0B0c\" stroke=\"#fff\"><path d=\"M0 0\"/></g>")
            .shapes();
    assertThat(shapes.get(0).fill()).contains(Color.BLACK);
    assertThat(shapes.get(0).line()).isEmpty();
    assertThat(shapes.get(1).fill()).contains(new Color(10, 11, 12));
    assertThat(shapes.get(1).line()).contains(Color.WHITE);
    assertThat(shapes.get(1).stroke()).isEqualTo(new BasicStroke(1, 0, 0, 4, null, 0));
  }

  @Test
  void width_corners_and_dashes_of_a_line_are_kept() throws Exception {
    Painted line =
        shapes(
                "<path d=\"M0 0H1\" fill=\"none\" stroke=\"#000\" stroke-width=\"2.5\""
                    + " stroke-linejoin=\"round\" stroke-dasharray=\"3 4\"/>")
            .shapes()
            .get(0);
    assertThat(line.fill()).isEmpty();
    assertThat(line.stroke())
        .isEqualTo(
            new BasicStroke(
                2.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 4, new float[] {3, 4}, 0));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<ellipse rx=\"1\"/>",
        "<text x=\"1\" y=\"1\">a</text>",
        "<path d=\"M0 0\" opacity=\"0.5\"/>",
        "<g transform=\"rotate(9)\"><path d=\"M0 0\"/></g>",
        "<path d=\"M0 0l1 1\"/>",
        "<path d=\"M0 0A1 1 0 0 0 2 2\"/>",
        "<path d=\"M0 0L1\"/>",
        "<path d=\"M0 0 1 1\"/>"
      })
  void what_would_be_lost_is_refused(String inside) {
    assertThatThrownBy(() -> shapes(inside))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("A (picture has|path cannot be drawn).*");
  }

  private static SvgShapes shapes(String inside) throws Exception {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 640 80\">" + inside + "</svg>";
    return SvgShapes.of(
        DocumentBuilderFactory.newDefaultNSInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)))
            .getDocumentElement());
  }
}
