package thwartwise.picture;

import java.util.ArrayList;
import java.util.List;
import thwartwise.measure.PrintableText;
import thwartwise.page.LineWrap;

/** The key under a picture, two entries next to each other or one over the whole breadth. */
final class PictureKey {
  private static final double ROW = 30;
  private static final double LEFT = 12;
  private static final double MARK_WIDTH = 46;
  private static final int LONGEST_LIST = 3;

  private final List<Entry> entries = new ArrayList<>();
  private double height;
  private boolean half;

  /** Draws the sign before the words, in the middle of the given point. */
  interface Sign {
    void draw(Canvas canvas, Point middle);
  }

  private record Entry(Sign sign, List<String> lines, double x, double y) {}

  /** A name, cut short where half the breadth does not hold it. */
  PictureKey name(Sign sign, String typed) {
    int letters = letters(Canvas.WIDTH / 2);
    double x = half ? Canvas.WIDTH / 2 : LEFT;
    entries.add(new Entry(sign, List.of(cut(PrintableText.of(typed), letters)), x, height));
    height += half ? ROW : 0;
    half = !half;
    return this;
  }

  /** A list of names, on three lines at most. */
  PictureKey list(Sign sign, String words) {
    endRow();
    int letters = letters(Canvas.WIDTH);
    List<String> all = LineWrap.lines(words, "", "", letters);
    List<String> lines = new ArrayList<>(all.subList(0, Math.min(LONGEST_LIST, all.size())));
    if (all.size() > LONGEST_LIST) {
      String last = lines.get(LONGEST_LIST - 1);
      lines.set(LONGEST_LIST - 1, cut(last + "…", letters));
    }
    entries.add(new Entry(sign, List.copyOf(lines), LEFT, height));
    height += lines.size() * ROW;
    return this;
  }

  PictureKey endRow() {
    height += half ? ROW : 0;
    half = false;
    return this;
  }

  double height() {
    return height + (half ? ROW : 0);
  }

  void draw(Canvas canvas, double top) {
    for (Entry entry : entries) {
      double y = top + entry.y() + ROW / 2;
      entry.sign().draw(canvas, new Point(entry.x() + MARK_WIDTH / 2 - 8, y));
      for (int i = 0; i < entry.lines().size(); i++) {
        Point at = new Point(entry.x() + MARK_WIDTH, y + i * ROW + 8);
        canvas.small("key-word", at, Canvas.Anchor.START, entry.lines().get(i));
      }
    }
  }

  private static int letters(double width) {
    return (int) ((width - MARK_WIDTH - LEFT) / Svg.width("x", Svg.SMALL));
  }

  private static String cut(String words, int letters) {
    List<String> lines = LineWrap.lines(words, "", "", letters - 1);
    return lines.size() == 1 ? lines.get(0) : lines.get(0) + "…";
  }
}
