package thwartwise.walk.questions;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;
import thwartwise.measure.NumberReader;
import thwartwise.measure.NumberText;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the waters where the boat will be used, in terms that can be seen from the bank.
 */
public final class WatersQuestions {
  private static final String SHELTERED = "sheltered";

  /** Distances over water are paced or read off a map in metres, whatever the tape shows. */
  private static final QuantityQuestions METRIC = new QuantityQuestions(UnitSystem.METRIC);

  private static final double STICK_SECONDS = 10;

  private final Replay replay;
  private final QuantityQuestions quantities;

  public WatersQuestions(Replay replay, QuantityQuestions quantities) {
    this.replay = replay;
    this.quantities = quantities;
  }

  public Waters waters() {
    boolean sheltered =
        replay.ask(
            WordQuestions.yesNo(
                    "waters.sheltered", "Only sheltered, warm water close to the shore?")
                .how(
                    "yes: ripples, no weir, no wash, wind up to force 4, water of "
                        + quantities.either("15 °C", "59 °F")
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
        quantities
            .asked(BoatProperties.WAVES, key(BoatProperties.WAVES), BoatProperties.WAVES.subject())
            .orWord(SHELTERED, BoatProperties.WAVES.whenOmitted()));
  }

  private Optional<Boolean> breaking() {
    return yesNo(BoatProperties.BREAKING);
  }

  private Optional<Double> wind() {
    return replay
        .ask(
            WordQuestions.whole(
                    key(BoatProperties.WIND),
                    BoatProperties.WIND.subject(),
                    0,
                    Beaufort.values().length - 1)
                .worded(BoatProperties.WIND)
                .how(looks())
                .orWord(SHELTERED, BoatProperties.WIND.whenOmitted()))
        .map(force -> Beaufort.values()[force].most());
  }

  private static String[] looks() {
    return Stream.concat(
            BoatProperties.WIND.how().stream(),
            Arrays.stream(Beaufort.values())
                .filter(f -> f.force() >= 2 && f.force() <= 6)
                .map(f -> String.format(Locale.ROOT, "%3d  %s", f.force(), f.looks())))
        .toArray(String[]::new);
  }

  private Optional<Double> current() {
    return replay
        .ask(
            figure(
                    BoatProperties.CURRENT,
                    STICK_SECONDS,
                    "a number such as 4: the metres a stick drifts in ten seconds")
                .orWord(SHELTERED, BoatProperties.CURRENT.whenOmitted()))
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
        figure(BoatProperties.CELSIUS, 1, "a number such as 14")
            .orWord(SHELTERED, BoatProperties.CELSIUS.whenOmitted()));
  }

  private Optional<Double> offshore() {
    return replay.ask(
        METRIC
            .asked(
                BoatProperties.OFFSHORE,
                key(BoatProperties.OFFSHORE),
                BoatProperties.OFFSHORE.subject())
            .orWord(SHELTERED, BoatProperties.OFFSHORE.whenOmitted()));
  }

  private Optional<Boolean> yesNo(Property<Waters, Boolean> property) {
    return replay.ask(
        WordQuestions.yesNo(key(property), property.subject())
            .worded(property)
            .orWord(SHELTERED, property.whenOmitted()));
  }

  private static String key(Property<Waters, ?> property) {
    return "waters." + property.key();
  }

  /**
   * @param scale what is typed for one unit of the file
   */
  private static QuestionDefinition<Double> figure(
      Property<Waters, Double> property, double scale, String expected) {
    BoatQuantity quantity = property.type().quantity().orElseThrow();
    return QuestionDefinition.of(
            key(property), property.subject(), "", expected, NumberReader::figure)
        .worded(property)
        .unless(typed -> outside(typed, scale * quantity.least(), scale * quantity.most()));
  }

  private static Optional<String> outside(double typed, double least, double most) {
    return typed >= least && typed <= most
        ? Optional.empty()
        : Optional.of(
            "That is not between %s and %s. Type a number in between."
                .formatted(NumberText.number(least), NumberText.number(most)));
  }
}
