package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import thwartwise.geometry.Vector3;

/**
 * One half section, keel to rail, with its straight panels moved inward and met again. Panels run
 * outward and up, so the inside lies to their left.
 */
final class SectionOffset {
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

  /**
   * Adds the panel from one point to the next; only y and z count.
   *
   * @param trace which way the panel runs in this plane, keel to rail
   * @param step how far it moves in this plane
   */
  void panel(Vector3 from, Vector3 to, Vector3 trace, double step) {
    endY = to.y();
    endZ = to.z();
    double across = Math.hypot(trace.y(), trace.z());
    if (Math.hypot(to.y() - from.y(), to.z() - from.z()) > NUMERIC && across > 0) {
      panels.add(new Panel(from.y(), from.z(), trace.y() / across, trace.z() / across, step));
    } else {
      panels.add(
          panels.isEmpty()
              ? new Panel(from.y(), from.z(), 0, 1, step)
              : repeat(from.y(), from.z(), step));
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
