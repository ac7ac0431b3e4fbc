package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import thwartwise.geometry.Vector3;

/**
 * Sections of the inside of a shell: each panel moved inward by the thickness, square to the panel
 * in space, and neighbouring panels met again.
 *
 * <p>Points move athwart and up only, never along the boat, so a panel is seen as the plane x =
 * const cuts it: along the trace square to N, with a step longer than the thickness by |N| / |N
 * across|, N the panel's normal. For a station measured square to the boat the trace is the panel
 * as measured; for one measured at a slant it is not, and the two must not be mixed up. The rail
 * stays at its height, the keel stays in the middle plane, and where the shell is thicker than the
 * space the inside has no width.
 */
final class InsideOffset {
  // A panel facing almost straight ahead would need an endless step; the end panel stops it first.
  private static final double STEEPEST = 4;

  private final List<Section> outside;
  private final double thickness;

  private InsideOffset(List<Section> outside, double thickness) {
    this.outside = outside;
    this.thickness = thickness;
  }

  static List<Section> inward(FairedLines lines, List<Section> outside, double thickness) {
    List<Section> moved = new ArrayList<>(outside);
    int last = outside.size() - 1;
    moved.set(0, lines.aftMovedForward(thickness * endSlant(outside.get(0))));
    moved.set(last, lines.foreMovedAft(thickness * endSlant(outside.get(last))));
    InsideOffset shrink = new InsideOffset(moved, thickness);
    List<Section> inside = new ArrayList<>();
    for (int j = 0; j <= last; j++) {
      inside.add(shrink.section(j));
    }
    return inside;
  }

  /**
   * The factor by which a raked end panel's step along x exceeds the thickness, on the worse side.
   */
  private static double endSlant(Section end) {
    return Math.max(
        slant(end.port().get(0), end.portRail()),
        slant(end.starboard().get(0), end.starboardRail()));
  }

  private static double slant(Vector3 keel, Vector3 rail) {
    double rise = rail.z() - keel.z();
    return rise > 0 ? Math.min(STEEPEST, Math.hypot(1, (rail.x() - keel.x()) / rise)) : 1;
  }

  private Section section(int j) {
    List<Vector3> port = side(j, s -> s.port(), 1);
    List<Vector3> starboard = side(j, s -> s.starboard(), -1);
    double keel = Math.max(port.get(0).z(), starboard.get(0).z());
    return new Section(withKeel(port, keel), withKeel(starboard, keel));
  }

  private static List<Vector3> withKeel(List<Vector3> points, double z) {
    List<Vector3> changed = new ArrayList<>(points);
    changed.set(0, Vector3.of(points.get(0).x(), 0, z));
    return changed;
  }

  private List<Vector3> side(
      int j, java.util.function.Function<Section, List<Vector3>> pick, double sign) {
    List<Vector3> here = pick.apply(outside.get(j));
    List<Vector3> aft = pick.apply(outside.get(Math.max(0, j - 1)));
    List<Vector3> fore = pick.apply(outside.get(Math.min(outside.size() - 1, j + 1)));
    SectionOffset across = new SectionOffset();
    for (int k = 0; k + 1 < here.size(); k++) {
      Vector3 panel = here.get(k + 1).minus(here.get(k));
      Vector3 along =
          fore.get(k).plus(fore.get(k + 1)).minus(aft.get(k)).minus(aft.get(k + 1)).times(0.5);
      Trace trace = trace(panel, along.cross(panel));
      across.panel(
          mirrored(here.get(k), sign),
          mirrored(here.get(k + 1), sign),
          mirrored(trace.direction, sign),
          thickness * trace.slant);
    }
    return placed(here, across.points(), sign);
  }

  private static Vector3 mirrored(Vector3 v, double sign) {
    return Vector3.of(v.x(), sign * v.y(), v.z());
  }

  /**
   * The intersection of a panel with a plane across the boat.
   *
   * @param direction in that plane, keel to rail; not of unit length
   * @param slant how much longer than the thickness the step in that plane is
   */
  private record Trace(Vector3 direction, double slant) {}

  private static Trace trace(Vector3 panel, Vector3 normal) {
    double inPlane = Math.hypot(normal.y(), normal.z());
    if (!(normal.norm() < STEEPEST * inPlane)) {
      return new Trace(panel, inPlane > 0 ? STEEPEST : 1);
    }
    Vector3 cut = Vector3.of(0, normal.z() / inPlane, -normal.y() / inPlane);
    double with = cut.y() * panel.y() + cut.z() * panel.z();
    // Sections closer than the thickness change places when an end moves in: N then points outward.
    return new Trace(with < 0 ? cut.times(-1) : cut, normal.norm() / inPlane);
  }

  private static List<Vector3> placed(List<Vector3> outer, List<double[]> inner, double sign) {
    List<Vector3> points = new ArrayList<>();
    double rail = outer.get(outer.size() - 1).z();
    for (int k = 0; k < outer.size(); k++) {
      double y = Math.max(0, inner.get(k)[0]);
      double z = Math.min(rail, inner.get(k)[1]);
      points.add(Vector3.of(outer.get(k).x(), sign * y, z));
    }
    return points;
  }

  /**
   * One half section, keel to rail, with its straight panels moved inward and met again. Panels run
   * outward and up, so the inside lies to their left.
   */
  private static final class SectionOffset {
    private static final double NUMERIC = 1e-9;
    // Two panels that almost fold back on each other would meet far away.
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
     * @param trace the direction of the panel in this plane, keel to rail
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

    /**
     * The point where the first moved panel meets the middle plane; an upright one leaves no width
     * there.
     */
    private double[] keel(Panel p) {
      double rise = p.dy > NUMERIC ? p.leftZ() - p.leftY() * p.dz / p.dy : p.step;
      return new double[] {0, p.z + Math.min(rise, LONGEST_MITRE * p.step)};
    }

    /** The point where the last moved panel reaches the height of the rail. */
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
}
