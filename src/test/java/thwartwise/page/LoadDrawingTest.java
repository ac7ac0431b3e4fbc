package thwartwise.page;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import thwartwise.measure.UnitFormat;

class LoadDrawingTest {
  @Test
  void parts_are_as_long_as_their_mass_and_the_limit_stands_where_it_is() {
    List<Element> parts = bar(new LoadBar(160, 40, 160, UnitFormat.METRIC));
    assertThat(widths(parts)).containsExactly(640.0, 128.0, 384.0, 128.0);
    assertThat(start(parts.get(1))).isZero();
    assertThat(start(parts.get(2))).isEqualTo(128);
    assertThat(start(parts.get(3))).isEqualTo(512);
    assertThat(LoadDrawing.of(new LoadBar(160, 40, 160, UnitFormat.METRIC)))
        .contains("M512.0 0V40");
  }

  @Test
  void what_is_left_is_empty_and_nothing_is_too_much_below_the_limit() {
    LoadBar half = new LoadBar(200, 40, 60, UnitFormat.METRIC);
    List<Element> parts = bar(half);
    assertThat(widths(parts)).containsExactly(640.0, 128.0, 192.0);
    assertThat(LoadDrawing.of(half)).contains("left").doesNotContain("too much");
  }

  @Test
  void nothing_at_all_draws_a_bar_all_the_same() {
    assertThat(LoadDrawing.of(new LoadBar(0, 0, 0, UnitFormat.METRIC))).doesNotContain("NaN");
    assertThat(bar(new LoadBar(0, 0, 0, UnitFormat.METRIC))).isEmpty();
  }

  @Test
  void each_part_has_a_hatching_of_its_own_within_its_box() {
    ParsedPage page = page(new LoadBar(160, 40, 160, UnitFormat.METRIC));
    List<String> paths =
        page.all("path").stream()
            .filter(p -> p.getAttribute("stroke-width").equals("1.6"))
            .map(p -> p.getAttribute("d"))
            .limit(4)
            .toList();
    assertThat(paths.get(1)).isEqualTo("M0 0");
    assertThat(paths.get(2)).contains("L");
    assertThat(paths.get(3)).hasSizeGreaterThan(paths.get(2).length() / 2);
    for (String point : paths.get(3).substring(4).split("[ML]")) {
      if (!point.isBlank()) {
        double x = Double.parseDouble(point.split(" ")[0]);
        double y = Double.parseDouble(point.split(" ")[1]);
        assertThat(x).isBetween(512.0, 640.0);
        assertThat(y).isBetween(4.0, 36.0);
      }
    }
  }

  @Test
  void somebody_who_cannot_see_it_is_told_the_figures() {
    assertThat(
            LoadDrawing.of(new LoadBar(160.9, 40.01, 160, UnitFormat.METRIC))
                .replace('\u00a0', ' '))
        .contains(
            "aria-label=\"Bar up to 201 kg: kit 41 kg, people aboard today 160 kg, limit 160"
                + " kg\"");
  }

  private static ParsedPage page(LoadBar bar) {
    return ParsedPage.of(LoadDrawing.of(bar));
  }

  /** The rectangles of the bar itself, without those of its key. */
  private static List<Element> bar(LoadBar bar) {
    return page(bar).all("rect").stream()
        .filter(r -> r.getAttribute("height").equals("32"))
        .toList();
  }

  private static List<Double> widths(List<Element> parts) {
    return parts.stream().map(p -> Double.parseDouble(p.getAttribute("width"))).toList();
  }

  private static double start(Element part) {
    return Double.parseDouble(part.getAttribute("x"));
  }
}
