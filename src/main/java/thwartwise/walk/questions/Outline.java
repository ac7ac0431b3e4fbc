package thwartwise.walk.questions;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;

/**
 * The bounds of the measured stations, to check whether a thing can lie within the boat. Straight
 * lines between stations; used for typing errors only and never for buoyancy.
 */
public record Outline(List<Station> stations) {

  public double aft() {
    return all(Vector3::x).min().orElseThrow();
  }

  public double fore() {
    return all(Vector3::x).max().orElseThrow();
  }

  public double lowest() {
    return all(Vector3::z).min().orElseThrow();
  }

  public double highest() {
    return all(Vector3::z).max().orElseThrow();
  }

  double halfBeam() {
    return all(p -> Math.abs(p.y())).max().orElseThrow();
  }

  /** The beam over both sides. */
  double beam() {
    return all(Vector3::y).max().orElseThrow() - all(Vector3::y).min().orElseThrow();
  }

  Box bounds() {
    return new Box(
        new Span(aft(), fore()), new Span(-halfBeam(), halfBeam()), new Span(lowest(), highest()));
  }

  /** Half-breadth of the wider rail at x. */
  public double railAt(double x) {
    double widest = 0;
    for (int i = 1; i < stations.size(); i++) {
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      widest = Math.max(widest, railBetween(a.portRail(), b.portRail(), x));
      widest = Math.max(widest, railBetween(a.starboardRail(), b.starboardRail(), x));
    }
    return widest;
  }

  /** Height of the lower rail at x. */
  double railHeightAt(double x) {
    double lowest = highest();
    for (int i = 1; i < stations.size(); i++) {
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      lowest = Math.min(lowest, heightBetween(a.portRail(), b.portRail(), x));
      lowest = Math.min(lowest, heightBetween(a.starboardRail(), b.starboardRail(), x));
    }
    return lowest;
  }

  /** Height of the higher rail at x; beyond an end of the rail the height of that end. */
  double higherRailAt(double x) {
    return Math.max(
        heightAt(stations.stream().map(Station::portRail).toList(), x),
        heightAt(stations.stream().map(Station::starboardRail).toList(), x));
  }

  private static double heightAt(List<Vector3> rail, double x) {
    double aft = rail.get(0).x();
    double fore = rail.get(rail.size() - 1).x();
    double within = Math.max(aft, Math.min(fore, x));
    return IntStream.range(1, rail.size())
        .mapToDouble(i -> heightBetween(rail.get(i - 1), rail.get(i), within))
        .min()
        .orElseThrow();
  }

  /** Height of the bottom on the middle line at x, by straight lines between stations. */
  double keelAt(double x) {
    Vector3 before = stations.get(0).port().get(0);
    for (Station station : stations) {
      Vector3 keel = station.port().get(0);
      if (x <= keel.x()) {
        return x > before.x() ? heightBetween(before, keel, x) : keel.z();
      }
      before = keel;
    }
    return before.z();
  }

  /** The x of the aft end at a height, by straight lines between the points of its station. */
  double aftEndAt(double z) {
    List<Vector3> up = stations.get(0).port();
    for (int i = 1; i < up.size(); i++) {
      Vector3 lower = up.get(i - 1);
      Vector3 upper = up.get(i);
      if (z <= upper.z() && lower.z() < upper.z()) {
        return lower.toward(upper, Math.max(0, (z - lower.z()) / (upper.z() - lower.z()))).x();
      }
    }
    return up.get(up.size() - 1).x();
  }

  private static double heightBetween(Vector3 aft, Vector3 fore, double x) {
    return aft.x() <= x && x <= fore.x() && aft.x() < fore.x()
        ? aft.toward(fore, (x - aft.x()) / (fore.x() - aft.x())).z()
        : Double.POSITIVE_INFINITY;
  }

  private static double railBetween(Vector3 aft, Vector3 fore, double x) {
    if (!(aft.x() <= x && x <= fore.x())) {
      return 0;
    }
    return Math.abs(aft.toward(fore, (x - aft.x()) / (fore.x() - aft.x())).y());
  }

  private DoubleStream all(java.util.function.ToDoubleFunction<Vector3> of) {
    return stations.stream()
        .flatMap(s -> Stream.concat(s.port().stream(), s.starboard().stream()))
        .mapToDouble(of);
  }
}
