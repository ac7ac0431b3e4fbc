package thwartwise.boat;

import java.util.ArrayList;
import java.util.List;

/**
 * One half section, keel to rail, with its straight panels moved inward and met again. Panels run
 * outward and up, so the inside lies to their left.
 */
final class Offset2 {
  private static final double NUMERIC = 1e-9;
  // Two panels that nearly fold back on each other would meet far away.
  private static final double LONGEST_MITRE = 4;

  private record Panel(double y, double z, double dy, double dz, double step) {
    double leftY() {
      return -dz * step;
    }

    double leftZ() {
      return dy * step;
    }
  }

  private final List<Panel> panels = new ArrayList<>();
  private double endY;
  private double endZ;

  void panel(double y0, double z0, double y1, double z1, double step) {
    double length = Math.hypot(y1 - y0, z1 - z0);
    endY = y1;
    endZ = z1;
    if (length > NUMERIC) {
      panels.add(new Panel(y0, z0, (y1 - y0) / length, (z1 - z0) / length, step));
    } else {
      panels.add(panels.isEmpty() ? new Panel(y0, z0, 0, 1, step) : repeat(y0, z0, step));
    }
  }

  private Panel repeat(double y, double z, double step) {
    Panel before = panels.get(panels.size() - 1);
    return new Panel(y, z, before.dy, before.dz, step);
  }

  List<double[]> points() {
    List<double[]> points = new ArrayList<>();
    points.add(keel(panels.get(0)));
    for (int k = 1; k < panels.size(); k++) {
      points.add(corner(panels.get(k - 1), panels.get(k)));
    }
    points.add(rail(panels.get(panels.size() - 1)));
    return points;
  }

  /** Where the first moved panel meets the middle plane; an upright one leaves no width there. */
  private double[] keel(Panel p) {
    double rise = p.dy > NUMERIC ? p.leftZ() - p.leftY() * p.dz / p.dy : p.step;
    return new double[] {0, p.z + Math.min(rise, LONGEST_MITRE * p.step)};
  }

  /** Where the last moved panel reaches the height of the rail. */
  private double[] rail(Panel p) {
    double out = p.dz > NUMERIC ? p.leftY() - p.leftZ() * p.dy / p.dz : p.leftY();
    return new double[] {endY + Math.max(out, -LONGEST_MITRE * p.step), endZ};
  }

  private static double[] corner(Panel a, Panel b) {
    double turn = a.dy * b.dz - a.dz * b.dy;
    if (Math.abs(turn) < 1e-6) {
      return new double[] {b.y + (a.leftY() + b.leftY()) / 2, b.z + (a.leftZ() + b.leftZ()) / 2};
    }
    double gapY = b.leftY() - a.leftY();
    double gapZ = b.leftZ() - a.leftZ();
    double along = (gapY * b.dz - gapZ * b.dy) / turn;
    double most = LONGEST_MITRE * Math.max(a.step, b.step);
    double held = Math.max(-most, Math.min(most, along));
    return new double[] {b.y + a.leftY() + held * a.dy, b.z + a.leftZ() + held * a.dz};
  }
}
