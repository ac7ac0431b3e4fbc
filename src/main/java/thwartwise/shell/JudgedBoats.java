package thwartwise.shell;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.inspection.JudgedBoat;

/** Boats judged one after the other; one with other people aboard is not judged from the start. */
final class JudgedBoats {
  private final Map<Boat, Map<List<Person>, JudgedBoat>> byEmptyBoat = new HashMap<>();

  /**
   * @param judge judges it from the start
   */
  JudgedBoat of(Boat boat, Supplier<JudgedBoat> judge) {
    Map<List<Person>, JudgedBoat> alike =
        byEmptyBoat.computeIfAbsent(boat.withAboard(List.of()), empty -> new HashMap<>());
    JudgedBoat known = alike.get(boat.aboard());
    if (known != null) {
      return known;
    }
    JudgedBoat judged =
        alike.values().stream()
            .findFirst()
            .map(other -> other.withAboard(boat.aboard()))
            .orElseGet(judge);
    alike.put(boat.aboard(), judged);
    return judged;
  }
}
