package thwartwise.page;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CalculatedStyle;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.extend.UserAgentCallback;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.simple.extend.ReplacedElementScaleHelper;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.AffineTransform;
import java.io.File;
import java.util.List;
import org.w3c.dom.Element;

/**
 * Draws our pictures on the sheets of a PDF. They consist of so few kinds of shapes that a library
 * for all of SVG would take most of the time of a sheet to begin.
 */
final class PictureDrawer implements SVGDrawer {

  @Override
  public SVGImage buildSVGImage(
      Element svg, Box box, CssContext css, double width, double height, double dotsPerPixel) {
    SvgShapes shapes = SvgShapes.of(svg);
    double most = CalculatedStyle.getCSSMaxWidth(css, box);
    Size size =
        Size.of(shapes, width / dotsPerPixel, height / dotsPerPixel).within(most / dotsPerPixel);
    return new Placed(shapes, size, box, dotsPerPixel);
  }

  /**
   * The size of a picture in pixels; what the style does not say keeps the shape of the picture.
   */
  private record Size(float width, float height) {
    /**
     * @param width of the style; negative when it says nothing
     */
    static Size of(SvgShapes shapes, double width, double height) {
      if (width > 0 && height > 0) {
        return new Size((float) width, (float) height);
      }
      Size own = new Size(shapes.width(), shapes.height());
      return height > 0
          ? own.ofHeight((float) height)
          : width > 0 ? own.ofWidth((float) width) : own;
    }

    /**
     * @param most width; negative when there is no limit
     */
    Size within(double most) {
      return most > 0 && width > (float) most ? ofWidth((float) most) : this;
    }

    private Size ofWidth(float wanted) {
      return new Size(wanted, height * wanted / width);
    }

    private Size ofHeight(float wanted) {
      return new Size(width * wanted / height, wanted);
    }
  }

  /** A picture in its place. */
  private record Placed(SvgShapes shapes, Size size, Box box, double dotsPerPixel)
      implements SVGImage {

    @Override
    public int getIntrinsicWidth() {
      return (int) (size.width() * dotsPerPixel);
    }

    @Override
    public int getIntrinsicHeight() {
      return (int) (size.height() * dotsPerPixel);
    }

    @Override
    public void drawSVG(OutputDevice paper, RenderingContext context, double x, double y) {
      Rectangle room = box.getContentAreaEdge(box.getAbsX(), box.getAbsY(), context);
      paper.drawWithGraphics(
          (float) x,
          (float) y,
          (float) (room.width / dotsPerPixel),
          (float) (room.height / dotsPerPixel),
          graphics -> paint(graphics, room));
    }

    private void paint(Graphics2D graphics, Rectangle room) {
      AffineTransform scale =
          ReplacedElementScaleHelper.createScaleTransform(
              dotsPerPixel, room, size.width(), size.height());
      if (scale != null) {
        graphics.transform(scale);
      }
      graphics.transform(inTheMiddle());
      shapes.paint(graphics);
    }

    /** The whole picture, as large as it can be without changing its shape. */
    private AffineTransform inTheMiddle() {
      double factor = Math.min(size.width() / shapes.width(), size.height() / shapes.height());
      AffineTransform placed =
          AffineTransform.getTranslateInstance(
              (size.width() - factor * shapes.width()) / 2,
              (size.height() - factor * shapes.height()) / 2);
      placed.scale(factor, factor);
      return placed;
    }
  }

  @Override
  public void importFontFaceRules(List<FontFaceRule> fonts, SharedContext shared) {
    // Lettering is outlines here.
  }

  @Override
  public void addFontFile(File font, String family, Integer weight, FontStyle style) {
    // Lettering is outlines here.
  }

  @Override
  public void withUserAgent(UserAgentCallback fetching) {
    // Nothing is fetched.
  }

  @Override
  public void close() {
    // Nothing is open.
  }
}
