package thwartwise.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The shapes of one of our pictures, its lettering made outlines before. Whatever else SVG has is
 * an error, so that no picture reaches the paper without a part of it.
 *
 * @param width of the view box
 * @param height of the view box
 */
record SvgShapes(float width, float height, List<Painted> shapes) {
  private static final String NONE = "none";

  /** The limit of SVG beyond which a corner is cut off. */
  private static final float MITER_LIMIT = 4;

  private static final Set<String> KNOWN =
      Set.of(
          "class",
          "cx",
          "cy",
          "d",
          "fill",
          "font-family",
          "font-size",
          "height",
          "r",
          "stroke",
          "stroke-dasharray",
          "stroke-linejoin",
          "stroke-width",
          "text-anchor",
          "viewBox",
          "width",
          "x",
          "xmlns",
          "y");

  /** A shape with its colours. */
  record Painted(Shape shape, Optional<Color> fill, Optional<Color> line, BasicStroke stroke) {
    void paint(Graphics2D paper) {
      fill.ifPresent(
          colour -> {
            paper.setPaint(colour);
            paper.fill(shape);
          });
      line.ifPresent(
          colour -> {
            paper.setPaint(colour);
            paper.setStroke(stroke);
            paper.draw(shape);
          });
    }
  }

  static SvgShapes of(Element svg) {
    String[] box = svg.getAttribute("viewBox").split(" ");
    List<Painted> shapes = new ArrayList<>();
    addChildren(svg, shapes);
    return new SvgShapes(Float.parseFloat(box[2]), Float.parseFloat(box[3]), List.copyOf(shapes));
  }

  void paint(Graphics2D paper) {
    shapes.forEach(shape -> shape.paint(paper));
  }

  private static void addChildren(Element above, List<Painted> shapes) {
    known(above);
    for (Node node = above.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element && element.getTagName().equals("g")) {
        addChildren(element, shapes);
      } else if (node instanceof Element element) {
        known(element);
        shapes.add(painted(element));
      }
    }
  }

  private static void known(Element element) {
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      String name = element.getAttributes().item(i).getNodeName();
      if (!KNOWN.contains(name)) {
        throw new IllegalArgumentException("A picture has " + name + ", which is not drawn here");
      }
    }
  }

  private static Painted painted(Element element) {
    return new Painted(
        shape(element),
        colour(Lettering.attribute(element, "fill", "#000")),
        colour(Lettering.attribute(element, "stroke", NONE)),
        stroke(element));
  }

  private static Shape shape(Element element) {
    return switch (element.getTagName()) {
      case "path" -> SvgOutline.of(element.getAttribute("d"));
      case "circle" -> circle(number(element, "cx"), number(element, "cy"), number(element, "r"));
      case "rect" ->
          new Rectangle2D.Float(
              number(element, "x"),
              number(element, "y"),
              number(element, "width"),
              number(element, "height"));
      default ->
          throw new IllegalArgumentException(
              "A picture has " + element.getTagName() + ", which is not drawn here");
    };
  }

  private static Shape circle(float x, float y, float radius) {
    return new Ellipse2D.Float(x - radius, y - radius, 2 * radius, 2 * radius);
  }

  private static float number(Element element, String name) {
    return Float.parseFloat(element.getAttribute(name));
  }

  private static Optional<Color> colour(String hex) {
    if (hex.equals(NONE)) {
      return Optional.empty();
    }
    return Optional.of(
        Color.decode(hex.length() == 4 ? hex.replaceAll("([0-9a-f])", "$1$1") : hex));
  }

  private static BasicStroke stroke(Element element) {
    boolean round = Lettering.attribute(element, "stroke-linejoin", "miter").equals("round");
    return new BasicStroke(
        Float.parseFloat(Lettering.attribute(element, "stroke-width", "1")),
        BasicStroke.CAP_BUTT,
        round ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER,
        MITER_LIMIT,
        dashes(Lettering.attribute(element, "stroke-dasharray", NONE)),
        0);
  }

  /** Null where the line is whole, as the library of Java wants it. */
  private static float[] dashes(String lengths) {
    if (lengths.equals(NONE)) {
      return null;
    }
    String[] each = lengths.split("[ ,]+");
    float[] dashes = new float[each.length];
    for (int i = 0; i < each.length; i++) {
      dashes[i] = Float.parseFloat(each[i]);
    }
    return dashes;
  }
}
