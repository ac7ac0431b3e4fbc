package thwartwise.walk;

import java.time.LocalDate;
import thwartwise.boat.Boat;
import thwartwise.boat.Chamber;
import thwartwise.boat.ChamberPart;
import thwartwise.boat.Filling;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.ChamberQuestions;
import thwartwise.walk.questions.FillingQuestions;

/** Asks again for the leak tests that are out of date. */
record OutdatedTests(Replay replay, QuantityQuestions quantities, LocalDate today) {
  Boat asked(Boat boat) {
    Boat asked = boat;
    for (Chamber chamber : boat.chambers()) {
      for (int i = 0; i < chamber.parts().size(); i++) {
        asked = again(asked, chamber.name(), i);
      }
    }
    return asked;
  }

  /** Looks the chamber up again, because its twin may have been tested a moment ago. */
  private Boat again(Boat boat, String name, int i) {
    ChamberPart part =
        boat.chambers().stream()
            .filter(c -> c.name().equals(name))
            .map(c -> c.parts().get(i))
            .findFirst()
            .orElseThrow();
    return part.filling() instanceof Filling.Air air && air.isTestOutdated(today)
        ? again(boat, part, air)
        : boat;
  }

  private Boat again(Boat boat, ChamberPart part, Filling.Air air) {
    String key = "old." + part.name();
    String subject = ChamberQuestions.subject(part);
    boolean tested =
        replay.ask(
            WordQuestions.yesNo(key, subject + ", tested again since?")
                .how(
                    air.repairedSinceTest().isPresent()
                        ? "It was repaired or cut since its leak test, which counts for nothing now."
                        : "Its leak test is older than twelve months and counts for nothing now.")
                .why("Lids warp and seams open; only a fresh test counts.")
                .orElse(false, "no"));
    return tested
        ? ChangedScript.filled(
            boat, part, new FillingQuestions(replay, quantities, today).filling(key, subject))
        : boat;
  }
}
