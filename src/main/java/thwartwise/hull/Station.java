package thwartwise.hull;

import java.util.List;
import thwartwise.geometry.Vector3;

/**
 * Points measured across the boat at one place along it, keel to rail, on the outside of the hull.
 * Port points have y ≥ 0, starboard points y ≤ 0; a hull measured on one side only is mirrored.
 */
public record Station(String name, List<Vector3> port, List<Vector3> starboard) {

  public Station {
    port = List.copyOf(port);
    starboard = List.copyOf(starboard);
  }

  public static Station mirrored(String name, List<Vector3> port) {
    return new Station(name, port, port.stream().map(Vector3::mirrored).toList());
  }

  public boolean isSymmetric() {
    return starboard.equals(port.stream().map(Vector3::mirrored).toList());
  }

  public Vector3 portRail() {
    return port.get(port.size() - 1);
  }

  public Vector3 starboardRail() {
    return starboard.get(starboard.size() - 1);
  }
}
