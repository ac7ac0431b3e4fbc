package thwartwise.picture;

import java.util.List;
import thwartwise.page.Block.Illustration;
import thwartwise.picture.Canvas.Anchor;

/** Drawings of what is measured where, for the person with the tape; the boat is no real one. */
public final class MeasuringPictures {
  private static final double HEIGHT = 268;
  private static final double BASE = 205;

  private MeasuringPictures() {}

  public static List<Illustration> all() {
    return List.of(
        drawn(
            "Along the boat",
            "A boat from the side with five stations, over a level line at its lowest point.",
            "Forward: level from the aft end. Baseline: a line stretched level at the lowest point.",
            MeasuringPictures::along),
        drawn(
            "Across, at each station",
            "A section with the middle line, a half-breadth and a height.",
            "To the outside of the hull. Half-breadth: level from the middle line. Height: straight"
                + " up from the baseline.",
            MeasuringPictures::across),
        drawn(
            "Without a thwart to lay a level on",
            "A boat upside down with a level string that touches its bottom, and heights down.",
            "Upside down, a string stretched level over it, just touching the bottom: heights of keel,"
                + " chine and rail are straight down from it.",
            MeasuringPictures::upsideDown),
        drawn(
            "One scale under each end in turn",
            "A boat level on two narrow blocks, a bathroom scale under one of them.",
            "Empty and level; then the scale under the other block and as much height under this"
                + " one. Tape from the aft end to each block.",
            MeasuringPictures::scales),
        drawn(
            "Chambers and seats, from above",
            "A boat from above with a fore locker, a thwart with its reach, and a side seat.",
            "Limits of a chamber: inside its walls. Reach: from the middle line to the middle of"
                + " whoever sits farthest out. Starboard with a minus.",
            MeasuringPictures::above));
  }

  private interface Drawing {
    void on(Canvas canvas);
  }

  private static Illustration drawn(
      String title, String alternative, String caption, Drawing drawing) {
    Svg svg = new Svg(HEIGHT);
    drawing.on(svg);
    return new Illustration(title, alternative, caption, svg.whole());
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  private static final List<Point> SIDE =
      List.of(
          at(70, 110),
          at(200, 122),
          at(330, 118),
          at(470, 100),
          at(570, 70),
          at(540, 150),
          at(470, 185),
          at(330, 204),
          at(200, 203),
          at(85, 190));

  private static void along(Canvas canvas) {
    canvas.polygon("hull", SIDE, "#fff", Pen.THICK);
    canvas.line("baseline", at(20, BASE), at(620, BASE), Pen.dashed(2, "10 6"));
    canvas.small("word", at(620, BASE + 30), Anchor.END, "baseline");
    double[][] stations = {{70, 110}, {200, 122}, {330, 118}, {470, 100}, {570, 70}};
    for (int i = 0; i < stations.length; i++) {
      double x = stations[i][0];
      canvas.line("station", at(x, stations[i][1] - 12), at(x, BASE + 8), Pen.FINE);
      canvas.small("number", at(x, stations[i][1] - 18), Anchor.MIDDLE, Integer.toString(i + 1));
    }
    dimension(canvas, at(70, BASE + 22), at(330, BASE + 22));
    canvas.small("word", at(200, BASE + 50), Anchor.MIDDLE, "forward of the aft end");
    canvas.small("word", at(632, 186), Anchor.END, "bow →");
  }

  private static void across(Canvas canvas) {
    canvas.path(
        "section",
        List.of(at(140, 50), at(190, 190), at(320, BASE), at(450, 190), at(500, 50)),
        Pen.THICK);
    canvas.line("baseline", at(60, BASE), at(600, BASE), Pen.dashed(2, "10 6"));
    canvas.line("middle", at(320, 20), at(320, BASE + 20), Pen.dashed(2, "14 5 2 5"));
    dimension(canvas, at(320, 50), at(500, 50));
    canvas.small("word", at(410, 40), Anchor.MIDDLE, "half-breadth");
    dimension(canvas, at(540, 50), at(540, BASE));
    canvas.small("word", at(552, 135), Anchor.START, "height");
    canvas.small("word", at(128, 52), Anchor.END, "rail");
    canvas.small("word", at(176, 180), Anchor.END, "chine");
    canvas.small("word", at(332, BASE + 26), Anchor.START, "keel");
    canvas.small("word", at(60, BASE + 26), Anchor.START, "baseline");
  }

  /** The same boat upside down, with the line over it. */
  private static void upsideDown(Canvas canvas) {
    double line = 60;
    canvas.polygon(
        "hull", SIDE.stream().map(p -> at(p.x(), line + 204 - p.y())).toList(), "#fff", Pen.THICK);
    canvas.line("baseline", at(20, line), at(620, line), Pen.dashed(2, "10 6"));
    canvas.small("word", at(620, line - 12), Anchor.END, "string, stretched level: baseline");
    dimension(canvas, at(540, line), at(540, line + 54));
    canvas.small("word", at(552, line + 36), Anchor.START, "keel");
    dimension(canvas, at(330, line), at(330, line + 86));
    canvas.small("word", at(342, line + 56), Anchor.START, "rail");
    canvas.line("ground", at(20, BASE + 10), at(620, BASE + 10), Pen.FINE);
    for (double x : new double[] {200, 480}) {
      double rail = x == 200 ? line + 82 : line + 100;
      canvas.polygon(
          "block",
          List.of(at(x - 14, rail), at(x + 14, rail), at(x + 14, BASE + 10), at(x - 14, BASE + 10)),
          "#ccc",
          Pen.PLAIN);
    }
    canvas.small("word", at(632, BASE + 40), Anchor.END, "bow →");
  }

  private static void scales(Canvas canvas) {
    double up = 40;
    canvas.polygon(
        "hull", SIDE.stream().map(p -> at(p.x(), p.y() - up)).toList(), "#fff", Pen.THICK);
    for (double x : new double[] {190, 440}) {
      double top = x == 190 ? 163 : 150;
      canvas.polygon(
          "block",
          List.of(at(x - 10, top), at(x + 10, top), at(x + 10, 185), at(x - 10, 185)),
          "#ccc",
          Pen.PLAIN);
      canvas.polygon(
          x == 190 ? "scale" : "stand",
          List.of(at(x - 50, 185), at(x + 50, 185), at(x + 50, BASE), at(x - 50, BASE)),
          x == 190 ? "#fff" : "#ccc",
          Pen.PLAIN);
    }
    canvas.small("word", at(246, BASE - 2), Anchor.START, "scale");
    canvas.small("word", at(500, BASE - 2), Anchor.START, "as high");
    canvas.line("aft-end", at(70, 75), at(70, BASE + 40), Pen.FINE);
    dimension(canvas, at(70, BASE + 14), at(190, BASE + 14));
    dimension(canvas, at(70, BASE + 34), at(440, BASE + 34));
  }

  private static void above(Canvas canvas) {
    canvas.polygon(
        "hull",
        List.of(
            at(60, 60),
            at(200, 38),
            at(340, 34),
            at(470, 60),
            at(590, 125),
            at(470, 190),
            at(340, 216),
            at(200, 212),
            at(60, 190)),
        "#fff",
        Pen.THICK);
    canvas.hatched("chamber", List.of(at(470, 60), at(590, 125), at(470, 190)), Hatching.COUNTS);
    canvas.polygon(
        "thwart", List.of(at(290, 36), at(340, 34), at(340, 216), at(290, 215)), "#eee", Pen.PLAIN);
    canvas.polygon(
        "side-seat", List.of(at(80, 58), at(210, 40), at(210, 78), at(80, 92)), "#eee", Pen.PLAIN);
    canvas.line("middle", at(30, 125), at(625, 125), Pen.dashed(2, "14 5 2 5"));
    dimension(canvas, at(315, 125), at(315, 60));
    canvas.small("word", at(352, 100), Anchor.START, "reach");
    canvas.small("word", at(352, 160), Anchor.START, "thwart");
    canvas.small("word", at(74, 118), Anchor.START, "side seat");
    canvas.small("word", at(560, 50), Anchor.MIDDLE, "chamber");
    canvas.small("word", at(8, 28), Anchor.START, "port");
    canvas.small("word", at(8, 240), Anchor.START, "starboard");
    canvas.small("word", at(632, 240), Anchor.END, "bow →");
  }

  /** A measured length, with a tick at either end. */
  private static void dimension(Canvas canvas, Point from, Point to) {
    boolean level = from.y() == to.y();
    double dx = level ? 0 : 7;
    double dy = level ? 7 : 0;
    canvas.strokes(
        "dimension",
        List.of(
            List.of(from, to),
            List.of(at(from.x() - dx, from.y() - dy), at(from.x() + dx, from.y() + dy)),
            List.of(at(to.x() - dx, to.y() - dy), at(to.x() + dx, to.y() + dy))),
        Pen.PLAIN);
  }
}
