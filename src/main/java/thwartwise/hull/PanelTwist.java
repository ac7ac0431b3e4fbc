package thwartwise.hull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.geometry.Vector3;

/**
 * The twist of a panel between two neighbouring lines from one station to the next. Bending along
 * the boat and the slant of a station are no twist: both ends of the panel are viewed along the
 * line that joins their middles.
 *
 * @param perMetre angle between the two ends over the distance of their middles, rad/m
 * @param line the lower of the two lines it lies between, from 0 at the keel
 * @param points how many points a station has
 * @param aft the name of the station at its aft end
 * @param fore the name of the next station forward
 */
public record PanelTwist(
    double perMetre, int line, int points, PanelSide side, String aft, String fore) {

  /**
   * On a narrower strip the tape cannot tell the direction of a panel, and any strip can be
   * twisted, m (judgement: 5 mm in 0.10 m are 3 degrees).
   */
  private static final double NARROW = 0.10;

  /** The side on which a panel lies; either, where both are alike. Records store the constants. */
  public enum PanelSide {
    EITHER,
    PORT,
    STARBOARD
  }

  /** The greatest twist; empty when every panel is narrower than a hand somewhere. */
  public static Optional<PanelTwist> greatest(List<Station> stations) {
    boolean symmetric = stations.stream().allMatch(Station::isSymmetric);
    List<PanelTwist> twists =
        new ArrayList<>(
            side(stations, Station::port, symmetric ? PanelSide.EITHER : PanelSide.PORT));
    if (!symmetric) {
      twists.addAll(side(stations, Station::starboard, PanelSide.STARBOARD));
    }
    return twists.stream().max(Comparator.comparingDouble(PanelTwist::perMetre));
  }

  private static List<PanelTwist> side(
      List<Station> stations, Function<Station, List<Vector3>> points, PanelSide side) {
    List<PanelTwist> twists = new ArrayList<>();
    for (int i = 0; i + 1 < stations.size(); i++) {
      List<Vector3> aft = points.apply(stations.get(i));
      List<Vector3> fore = points.apply(stations.get(i + 1));
      String aftName = stations.get(i).name();
      String foreName = stations.get(i + 1).name();
      for (int k = 0; k + 1 < aft.size(); k++) {
        int line = k;
        of(aft.get(k), aft.get(k + 1), fore.get(k), fore.get(k + 1))
            .ifPresent(
                perMetre ->
                    twists.add(
                        new PanelTwist(perMetre, line, aft.size(), side, aftName, foreName)));
      }
    }
    return twists;
  }

  private static Optional<Double> of(
      Vector3 aftLow, Vector3 aftHigh, Vector3 foreLow, Vector3 foreHigh) {
    Vector3 along = foreLow.plus(foreHigh).minus(aftLow).minus(aftHigh).times(0.5);
    Vector3 aft = across(aftHigh.minus(aftLow), along);
    Vector3 fore = across(foreHigh.minus(foreLow), along);
    if (!(aft.norm() >= NARROW && fore.norm() >= NARROW && along.norm() > 0)) {
      return Optional.empty();
    }
    double angle = Math.atan2(aft.cross(fore).norm(), aft.dot(fore));
    return Optional.of(angle / along.norm());
  }

  /** The part of an end of the panel that is perpendicular to its length. */
  private static Vector3 across(Vector3 end, Vector3 along) {
    return end.minus(along.times(end.dot(along) / along.dot(along)));
  }
}
