package thwartwise.walk;

import java.util.List;
import thwartwise.boat.Boat;

/** The boats that were measured before, as they were when the walk began. */
public record PreviousBoats(List<Boat> boats) {
  public static final PreviousBoats NONE = new PreviousBoats(List.of());

  public PreviousBoats {
    boats = List.copyOf(boats);
  }

  List<String> names() {
    return boats.stream().map(Boat::name).toList();
  }

  Boat named(String name) {
    return boats.stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
  }
}
