package thwartwise.page;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.util.Locale;

/** An outline as the path of a picture. */
public final class GlyphOutline {
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
        written.append(i > 0 ? " " : "").append(String.format(Locale.ROOT, "%.2f", at[i]));
      }
    }
    return written.toString();
  }
}
