package thwartwise.walk;

import java.time.LocalDate;
import java.util.function.Function;
import thwartwise.boat.Boat;
import thwartwise.measure.ChoiceReader;
import thwartwise.plausibility.PlausibleLimits;
import thwartwise.walk.borrowed.BorrowedScript;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;
import thwartwise.walk.questions.ConfirmationQuestions;

/** The kinds of walk, chosen by one question; each ends in a boat. */
final class WalkModes {
  private final Function<Replay, Boat> own;
  private final Function<Replay, Boat> borrowed;
  private final Function<Replay, Boat> changed;
  private final boolean anyKnown;

  WalkModes(LocalDate today, PreviousBoats known, PlausibleLimits limits) {
    ConfirmationQuestions kept = new ConfirmationQuestions(limits, today);
    this.own = new BoatScript(today, limits, kept)::boat;
    this.borrowed = new BorrowedScript(today, kept)::boat;
    this.changed = new ChangedScript(today, known, limits, kept)::boat;
    this.anyKnown = !known.boats().isEmpty();
  }

  Boat boat(Replay replay) {
    Function<Replay, Boat> way =
        replay.ask(
            WordQuestions.choice("way", "Your own boat, or a borrowed one", ways())
                .how(
                    "own: everything is measured, in an hour or two; the record is worth most.",
                    "borrowed: a dozen questions on the bank, twenty where a trial was seen.",
                    "Full of water, it holds up nobody until a leak test is shown or a trial",
                    "was seen.",
                    anyKnown
                        ? "changed: only what has changed on a boat that was measured before."
                        : "Once a boat is measured, its changes can be asked for alone.")
                .why("What is not measured is taken at the end that flatters nobody.")
                .orElse(own, "own"));
    Boat boat = way.apply(replay);
    return boat.withAssumptions(replay.guesses());
  }

  private ChoiceReader<Function<Replay, Boat>> ways() {
    ChoiceReader<Function<Replay, Boat>> ways =
        ChoiceReader.of(own, "own", "mine", "my own", "my boat", "ours", "full")
            .or(borrowed, "borrowed", "a borrowed one", "short", "lent", "hired", "rented");
    return anyKnown ? ways.or(changed, "changed", "refit") : ways;
  }
}
