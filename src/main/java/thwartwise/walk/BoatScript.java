package thwartwise.walk;

import java.time.LocalDate;
import thwartwise.boat.Boat;

/** Every question of a full measuring, in the order of a person with a tape. */
final class BoatScript {
  private final LocalDate today;

  BoatScript(LocalDate today) {
    this.today = today;
  }

  Boat boat(Replay replay) {
    String name =
        replay.ask(
            Entry.of(
                "name",
                "Name of the boat",
                "",
                "a name",
                typed -> thwartwise.measure.Reading.understood(typed, typed)));
    throw new Unanswered(Entry.of("todo." + today, name, "", "", null), java.util.Optional.empty());
  }
}
