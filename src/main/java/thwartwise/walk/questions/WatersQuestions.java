package thwartwise.walk.questions;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;
import thwartwise.measure.NumberReader;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.Property;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.WordQuestions;

/** Where the boat will be used, by what can be seen from the bank. */
public final class WatersQuestions {
  private static final String SHELTERED = "sheltered";
  private static final String AS_SHELTERED = "taken as sheltered";

  /** Distances over water are paced or read off a map in metres, whatever the tape is marked in. */
  private static final Tape METRIC = new Tape(UnitSystem.METRIC);

  private static final double STICK_SECONDS = 10;

  private final Replay replay;
  private final Tape tape;

  public WatersQuestions(Replay replay, Tape tape) {
    this.replay = replay;
    this.tape = tape;
  }

  public Waters waters() {
    boolean sheltered =
        replay.ask(
            WordQuestions.yesNo(
                    "waters.sheltered", "Only sheltered, warm water close to the shore?")
                .how(
                    "yes: ripples, no weir, no wash, wind up to force 4, water of "
                        + tape.either("15 °C", "59 °F")
                        + " or warmer.",
                    "no: a few questions on what can be seen there. In doubt: no.")
                .why("The limits follow from the waters; rougher ones make them stricter.")
                .ifUnknown(false, "no"));
    return sheltered ? Waters.NOT_STATED : described();
  }

  private Waters described() {
    return new Waters(
        waves(), breaking(), wind(), current(), weir(), wash(), temperature(), offshore());
  }

  private Optional<Double> waves() {
    return replay.ask(
        tape.asked(BoatProperties.WAVES, "waters.waves", BoatProperties.WAVES.subject())
            .orWord(SHELTERED, AS_SHELTERED));
  }

  private Optional<Boolean> breaking() {
    return yesNo(BoatProperties.BREAKING);
  }

  private Optional<Double> wind() {
    return replay
        .ask(
            WordQuestions.whole("waters.wind", "Strongest wind, force", 0, 12)
                .how(looks())
                .why("Wind pushes the boat over and away, and makes the waves.")
                .orWord(SHELTERED, AS_SHELTERED))
        .map(force -> Beaufort.values()[force].most());
  }

  private static String[] looks() {
    return Stream.concat(
            Stream.of("By what you see at its strongest:"),
            Arrays.stream(Beaufort.values())
                .filter(f -> f.force() >= 2 && f.force() <= 6)
                .map(f -> String.format(Locale.ROOT, "%3d  %s", f.force(), f.looks())))
        .toArray(String[]::new);
  }

  private Optional<Double> current() {
    return replay
        .ask(
            figure(
                    "waters.current",
                    "Current, metres in ten seconds",
                    "a number such as 4: the metres a stick drifts in ten seconds")
                .how("Throw a stick in where it runs fastest; pace how far it gets in that time.")
                .why("A current pulls a moored boat under and carries a swamped one away.")
                .unless(metres -> within(metres, 0, 100))
                .orWord(SHELTERED, AS_SHELTERED))
        .map(metres -> metres / STICK_SECONDS);
  }

  private Optional<Boolean> weir() {
    return yesNo(BoatProperties.WEIR);
  }

  private Optional<Boolean> wash() {
    return yesNo(BoatProperties.WASH);
  }

  private Optional<Double> temperature() {
    return replay.ask(
        figure("waters.celsius", "Coldest water, degrees Celsius", "a number such as 14")
            .how("Hang a thermometer in the water; ask where there is none.")
            .why("Under 15 degrees hands soon cannot hold on: the boat must bear more.")
            .unless(degrees -> within(degrees, 0, 40))
            .orWord(SHELTERED, AS_SHELTERED));
  }

  private Optional<Double> offshore() {
    return replay.ask(
        METRIC
            .asked(BoatProperties.OFFSHORE, "waters.offshore", BoatProperties.OFFSHORE.subject())
            .orWord(SHELTERED, AS_SHELTERED));
  }

  private Optional<Boolean> yesNo(Property<Waters, Boolean> property) {
    return replay.ask(
        WordQuestions.yesNo("waters." + property.key(), property.subject())
            .how(property.how().toArray(String[]::new))
            .why(property.why().toArray(String[]::new))
            .orWord(SHELTERED, AS_SHELTERED));
  }

  private static Entry<Double> figure(String key, String subject, String expected) {
    return Entry.of(key, subject, "", expected, NumberReader::figure);
  }

  private static Optional<String> within(double typed, int least, int most) {
    return typed >= least && typed <= most
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "That is not between %d and %d. Type a number in between.",
                least,
                most));
  }
}
