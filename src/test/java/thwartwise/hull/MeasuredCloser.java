package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;

/** A hull alike on both sides, faired through some stations, measured halfway between them too. */
public final class MeasuredCloser {
  private MeasuredCloser() {}

  public static List<Station> than(List<Station> stations) {
    FairedLines lines = FairedLines.through(stations);
    List<Station> closer = new ArrayList<>();
    for (int i = 0; i + 1 < stations.size(); i++) {
      Section halfway = lines.at(i, 0.5, 0);
      String name = stations.get(i).name() + " to " + stations.get(i + 1).name();
      closer.add(stations.get(i));
      closer.add(Station.mirrored(name, halfway.port()));
    }
    closer.add(stations.get(stations.size() - 1));
    return closer;
  }
}
