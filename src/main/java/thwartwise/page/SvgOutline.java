package thwartwise.page;

import java.awt.geom.Path2D;
import java.util.NoSuchElementException;
import java.util.StringTokenizer;

/** The outline that the {@code d} of a path describes, in the commands that our pictures use. */
final class SvgOutline {
  private final StringTokenizer words;
  private final Path2D.Float drawn = new Path2D.Float(Path2D.WIND_NON_ZERO);

  private SvgOutline(String commands) {
    this.words = new StringTokenizer(commands, "MLHVQCZ ", true);
  }

  /**
   * The outline.
   *
   * @param commands absolute ones, each with the points of one step
   * @throws IllegalArgumentException for any other command, so that no picture loses a part of it
   */
  static Path2D of(String commands) {
    SvgOutline outline = new SvgOutline(commands);
    try {
      while (outline.words.hasMoreTokens()) {
        outline.step(outline.words.nextToken());
      }
    } catch (NoSuchElementException | NumberFormatException e) {
      throw new IllegalArgumentException("A path cannot be drawn: " + commands, e);
    }
    return outline.drawn;
  }

  private void step(String command) {
    switch (command) {
      case " " -> {}
      case "M" -> drawn.moveTo(number(), number());
      case "L" -> drawn.lineTo(number(), number());
      case "H" -> drawn.lineTo(number(), (float) drawn.getCurrentPoint().getY());
      case "V" -> drawn.lineTo((float) drawn.getCurrentPoint().getX(), number());
      case "Q" -> drawn.quadTo(number(), number(), number(), number());
      case "C" -> drawn.curveTo(number(), number(), number(), number(), number(), number());
      case "Z" -> drawn.closePath();
      default -> throw new NumberFormatException(command);
    }
  }

  private float number() {
    String word = words.nextToken();
    return Float.parseFloat(word.isBlank() ? words.nextToken() : word);
  }
}
