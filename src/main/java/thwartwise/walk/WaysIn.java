package thwartwise.walk;

import java.time.LocalDate;
import thwartwise.boat.Boat;
import thwartwise.measure.ChoiceReader;

/** The ways into a walk, chosen by one plain question; each ends in a boat. */
final class WaysIn {
  private final BoatScript own;
  private final BorrowedScript borrowed;

  WaysIn(LocalDate today) {
    this.own = new BoatScript(today);
    this.borrowed = new BorrowedScript(today);
  }

  Boat boat(Replay replay) {
    boolean brief =
        replay.ask(
            Words.choice("way", "Your own boat, or a borrowed one", ways())
                .how(
                    "own: everything is measured, in an hour or two; the record is worth most.",
                    "borrowed: at most twenty-five questions, in twenty minutes on the bank.")
                .why("What is not measured is taken at the end that flatters nobody.")
                .orElse(false, "own"));
    Boat boat = brief ? borrowed.boat(replay) : own.boat(replay);
    return boat.assuming(replay.guesses());
  }

  private static ChoiceReader<Boolean> ways() {
    return ChoiceReader.of(false, "own", "mine", "full").or(true, "borrowed", "short", "lent");
  }
}
