package thwartwise.page;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class LetteringTest {
  @Test
  void lettering_becomes_outlines_where_it_stood() throws Exception {
    Box words = box("<text x=\"100\" y=\"50\" font-size=\"20\">H</text>");
    assertThat(words.left()).isBetween(100.0, 103.0);
    assertThat(words.bottom()).isEqualTo(50, within(0.1));
    // A capital of this type is 0.729 of its size high (READ in its own table, capHeight
    // 1493/2048).
    assertThat(words.top()).isEqualTo(50 - 20 * 1493 / 2048.0, within(0.1));
  }

  @Test
  void the_anchor_is_kept_and_is_handed_down() throws Exception {
    Box start = box("<text x=\"100\" y=\"50\">HH</text>");
    Box middle = box("<text x=\"100\" y=\"50\" text-anchor=\"middle\">HH</text>");
    Box end = box("<g text-anchor=\"end\"><text x=\"100\" y=\"50\">HH</text></g>");
    assertThat((middle.left() + middle.right()) / 2).isEqualTo(100, within(0.2));
    assertThat(end.right()).isLessThanOrEqualTo(100);
    assertThat(start.left()).isGreaterThanOrEqualTo(100);
  }

  @Test
  void parts_with_a_place_of_their_own_stand_there_and_others_follow_on() throws Exception {
    assertThat(box("<text x=\"10\" y=\"50\">H<tspan x=\"10\" dy=\"20\">H</tspan></text>").bottom())
        .isEqualTo(70, within(0.1));
    double alone = box("<text x=\"10\" y=\"50\">H</text>").right();
    assertThat(box("<text x=\"10\" y=\"50\">H<tspan>H</tspan></text>").right())
        .isGreaterThan(alone + 5);
  }

  @Test
  void bold_is_bolder_colour_stays_and_a_turn_stays() throws Exception {
    String bold =
        "<text x=\"10\" y=\"50\" fill=\"#777\" transform=\"rotate(9)\" font-weight=\"bold\">H</text>";
    Document drawn = Lettering.outlined(svg(bold));
    Element path = (Element) drawn.getElementsByTagName("path").item(0);
    assertThat(path.getAttribute("fill")).isEqualTo("#777");
    assertThat(((Element) path.getParentNode()).getAttribute("transform")).isEqualTo("rotate(9)");
    assertThat(box(bold).right()).isGreaterThan(box("<text x=\"10\" y=\"50\">H</text>").right());
    assertThat(drawn.getElementsByTagName("text").getLength()).isZero();
  }

  @Test
  void nothing_but_pictures_is_touched() throws Exception {
    assertThat(Lettering.outlined("<p>a<b>text</b></p>").getDocumentElement().getTextContent())
        .isEqualTo("atext");
  }

  private static String svg(String inside) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\">" + inside + "</svg>";
  }

  /** The least box around every point of every outline. */
  private static Box box(String text) throws Exception {
    NodeList paths = Lettering.outlined(svg(text)).getElementsByTagName("path");
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < paths.getLength(); i++) {
      String numbers = ((Element) paths.item(i)).getAttribute("d").replaceAll("[A-Z]", " ");
      String[] each = numbers.strip().split("\\s+");
      for (int k = 0; k + 1 < each.length; k += 2) {
        points.add(new double[] {Double.parseDouble(each[k]), Double.parseDouble(each[k + 1])});
      }
    }
    assertThat(points).isNotEmpty();
    return new Box(
        points.stream().mapToDouble(p -> p[0]).min().orElseThrow(),
        points.stream().mapToDouble(p -> p[0]).max().orElseThrow(),
        points.stream().mapToDouble(p -> p[1]).min().orElseThrow(),
        points.stream().mapToDouble(p -> p[1]).max().orElseThrow());
  }

  private record Box(double left, double right, double top, double bottom) {}
}
