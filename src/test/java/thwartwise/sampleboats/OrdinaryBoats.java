package thwartwise.sampleboats;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.geometry.Vector3;

/** Boats of the kinds this program is for, each with buoyancy that is proven. */
public final class OrdinaryBoats {
  /** The day they are inspected on; their leak tests are two months old. */
  public static final LocalDate TODAY = BoatBuilder.TODAY;

  private OrdinaryBoats() {}

  /** One of each kind. */
  public static List<Boat> all() {
    return List.of(
        FlatBottomedBoats.pram(),
        MouldedBoats.roundDinghy(),
        FlatBottomedBoats.sideTankDinghy(),
        FlatBottomedBoats.jon(),
        FlatBottomedBoats.punt(),
        MouldedBoats.pullingBoat(),
        FlatBottomedBoats.skiff(),
        MouldedBoats.deepV(),
        FlatBottomedBoats.flatWithSealedSeats(),
        MouldedBoats.canoe(),
        FlatBottomedBoats.dory());
  }

  /** Those eleven, and eleven like them in other sizes or with other things aboard. */
  public static List<Boat> twentyTwo() {
    List<Boat> boats = new ArrayList<>(all());
    boats.add(scaled(FlatBottomedBoats.pram(), 1.10, 1.06, 1.05));
    boats.add(scaled(MouldedBoats.roundDinghy(), 0.92, 0.96, 1.0));
    boats.add(scaled(FlatBottomedBoats.sideTankDinghy(), 1.10, 1.08, 1.06));
    boats.add(withKit(FlatBottomedBoats.jon(), "battery and tools", 32, 0.80, 0.15));
    boats.add(scaled(FlatBottomedBoats.punt(), 1.08, 1.0, 0.95));
    boats.add(withKit(MouldedBoats.pullingBoat(), "camping gear", 20, 1.2, 0.20));
    boats.add(scaled(FlatBottomedBoats.skiff(), 0.90, 0.95, 1.0));
    boats.add(scaled(MouldedBoats.deepV(), 0.95, 0.95, 0.95));
    boats.add(scaled(FlatBottomedBoats.flatWithSealedSeats(), 0.92, 0.93, 0.96));
    boats.add(scaled(MouldedBoats.canoe(), 1.05, 1.04, 1.0));
    boats.add(scaled(FlatBottomedBoats.dory(), 0.88, 1.0, 0.95));
    return List.copyOf(boats);
  }

  /** Those, and eighteen more of the plainer kinds: for what is cheap to ask. */
  public static List<Boat> forty() {
    List<Boat> boats = new ArrayList<>(twentyTwo());
    double[][] sizes = {{0.94, 1.0, 1.04}, {1.04, 0.97, 1.0}, {1.0, 1.05, 0.96}};
    for (double[] size : sizes) {
      boats.add(scaled(FlatBottomedBoats.pram(), size[0], size[1], size[2]));
      boats.add(scaled(MouldedBoats.roundDinghy(), size[0], size[1], size[2]));
      boats.add(scaled(FlatBottomedBoats.sideTankDinghy(), size[0], size[1], size[2]));
      boats.add(scaled(MouldedBoats.pullingBoat(), size[0], size[1], size[2]));
      boats.add(scaled(FlatBottomedBoats.jon(), size[0], size[1], size[2]));
      boats.add(scaled(FlatBottomedBoats.dory(), size[0], size[1], size[2]));
    }
    return List.copyOf(boats);
  }

  private static Boat scaled(Boat boat, double along, double across, double up) {
    String name =
        String.format(
            Locale.ROOT, "%s, x %.2f long, %.2f broad, %.2f deep", boat.name(), along, across, up);
    return new ScaledBoat(along, across, up).of(boat, name);
  }

  private static Boat withKit(Boat boat, String title, double mass, double x, double z) {
    List<Kit> kit = new ArrayList<>(boat.kit());
    Vector3 at = Vector3.of(x, 0, z);
    kit.add(new Kit(title, mass, at, Optional.of(mass * 0.0006), true, Optional.empty()));
    return new ScaledBoat(1, 1, 1).of(boat.withKit(kit), boat.name() + " with " + title);
  }
}
