package thwartwise.page;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Converts the lettering of pictures to outlines of our own typeface. The drawing library would use
 * the machine's fonts, and the JDK would keep a list of those in the home folder.
 */
public final class Lettering {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final String DISALLOW =
      "http://apache.org/xml/features/nonvalidating/load-external-dtd";

  /** The least weight that is bold. */
  private static final double BOLD = 600;

  /**
   * The distance from the middle of a line of letters down to its baseline, as a share of its size.
   */
  private static final double BELOW_MIDDLE = 0.35;

  private Lettering() {}

  static Document outlined(String markup) throws IOException {
    Document document = parsed(markup);
    NodeList texts = document.getElementsByTagNameNS(SVG, "text");
    List<Element> all = new ArrayList<>();
    for (int i = 0; i < texts.getLength(); i++) {
      all.add((Element) texts.item(i));
    }
    for (Element text : all) {
      text.getParentNode().replaceChild(outlines(text), text);
    }
    return document;
  }

  private static Document parsed(String markup) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
      factory.setFeature(DISALLOW, false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      // Without this it would print messages on the terminal.
      builder.setErrorHandler(new DefaultHandler());
      return builder.parse(new InputSource(new StringReader(markup)));
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException("The page is not well formed: " + e.getMessage(), e);
    }
  }

  private static Element outlines(Element text) throws IOException {
    Element group = text.getOwnerDocument().createElementNS(SVG, "g");
    if (text.hasAttribute("transform")) {
      group.setAttribute("transform", text.getAttribute("transform"));
    }
    write(text, new Pen(0, 0), group);
    return group;
  }

  /** The position of the next letter. */
  private static final class Pen {
    private double x;
    private double y;

    private Pen(double x, double y) {
      this.x = x;
      this.y = y;
    }
  }

  private static void write(Element text, Pen pen, Element group) throws IOException {
    pen.x = number(text.getAttribute("x"), pen.x) + number(text.getAttribute("dx"), 0);
    pen.y = number(text.getAttribute("y"), pen.y) + number(text.getAttribute("dy"), 0);
    for (Node child = text.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element span) {
        write(span, pen, group);
      } else if (!child.getNodeValue().isBlank()) {
        group.appendChild(path(text, child.getNodeValue().strip().replaceAll("\\s+", " "), pen));
      }
    }
  }

  private static Element path(Element text, String words, Pen pen) throws IOException {
    TrueTypeFont font = font(text);
    double size = number(attribute(text, "font-size", "16"), 16);
    double scale = size / font.getUnitsPerEm();
    double width = width(font, words) * scale;
    double x = pen.x - width * before(attribute(text, "text-anchor", "start"));
    double y = pen.y + size * below(attribute(text, "dominant-baseline", "auto"));
    pen.x = x + width;
    Element path = text.getOwnerDocument().createElementNS(SVG, "path");
    path.setAttribute(
        "d", GlyphOutline.of(drawn(font, words, new AffineTransform(scale, 0, 0, -scale, x, y))));
    path.setAttribute("fill", attribute(text, "fill", "#000"));
    path.setAttribute("stroke", "none");
    return path;
  }

  private static TrueTypeFont font(Element text) {
    String weight = attribute(text, "font-weight", "400").replace("bold", "700");
    return (number(weight, 400) >= BOLD ? Typeface.BOLD : Typeface.REGULAR).font();
  }

  private static double before(String anchor) {
    return anchor.equals("middle") ? 0.5 : anchor.equals("end") ? 1 : 0;
  }

  private static double below(String baseline) {
    return baseline.equals("middle") || baseline.equals("central") ? BELOW_MIDDLE : 0;
  }

  private static double width(TrueTypeFont font, String words) throws IOException {
    double width = 0;
    for (int letter : words.codePoints().toArray()) {
      width += font.getAdvanceWidth(font.getUnicodeCmapLookup().getGlyphId(letter));
    }
    return width;
  }

  private static GeneralPath drawn(TrueTypeFont font, String words, AffineTransform place)
      throws IOException {
    GeneralPath path = new GeneralPath();
    double at = 0;
    for (int letter : words.codePoints().toArray()) {
      int glyph = font.getUnicodeCmapLookup().getGlyphId(letter);
      var outline = font.getGlyph().getGlyph(glyph);
      if (outline != null) {
        AffineTransform there = new AffineTransform(place);
        there.translate(at, 0);
        path.append(outline.getPath().getPathIterator(there), false);
      }
      at += font.getAdvanceWidth(glyph);
    }
    return path;
  }

  /** An attribute of this element or, inherited, of the nearest element around it. */
  static String attribute(Element element, String name, String otherwise) {
    for (Node at = element; at instanceof Element here; at = at.getParentNode()) {
      if (here.hasAttribute(name)) {
        return here.getAttribute(name);
      }
    }
    return otherwise;
  }

  private static double number(String typed, double otherwise) {
    String bare = typed.strip().replaceFirst("px$", "");
    return bare.matches("[-+]?[0-9]*\\.?[0-9]+") ? Double.parseDouble(bare) : otherwise;
  }

  /** An outline as an SVG path. */
  private static final class GlyphOutline {
    private static final int[] NUMBERS = {2, 2, 4, 6, 0};
    private static final String LETTERS = "MLQCZ";

    private GlyphOutline() {}

    static String of(GeneralPath path) {
      StringBuilder written = new StringBuilder();
      double[] at = new double[6];
      for (PathIterator step = path.getPathIterator(null); !step.isDone(); step.next()) {
        int kind = step.currentSegment(at);
        written.append(LETTERS.charAt(kind));
        for (int i = 0; i < NUMBERS[kind]; i++) {
          Hundredths.append(at[i], written.append(i > 0 ? " " : ""));
        }
      }
      return written.toString();
    }
  }
}
