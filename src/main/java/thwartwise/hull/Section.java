package thwartwise.hull;

import java.util.List;
import thwartwise.geometry.Vector3;

/** Points across the hull at one x of the faired lines, keel to rail on both sides. */
record Section(List<Vector3> port, List<Vector3> starboard) {

  Section {
    port = List.copyOf(port);
    starboard = List.copyOf(starboard);
  }

  boolean crossesItself() {
    return Crossing.of(port).isPresent() || Crossing.of(starboard).isPresent();
  }

  int size() {
    return port.size();
  }

  Vector3 portRail() {
    return port.get(size() - 1);
  }

  Vector3 starboardRail() {
    return starboard.get(size() - 1);
  }
}
