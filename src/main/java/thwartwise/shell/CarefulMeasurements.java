package thwartwise.shell;

import java.util.EnumSet;
import java.util.Set;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.Reading;
import thwartwise.report.InputWords;
import thwartwise.spread.InputKind;

/** The measurements that somebody states were taken with more care. */
final class CarefulMeasurements {
  static final OptionWord BETTER =
      new OptionWord("better", "LIST", "what was measured with care, apart by commas", false);

  private static final ChoiceReader<InputKind> KINDS = kinds();

  private CarefulMeasurements() {}

  private static ChoiceReader<InputKind> kinds() {
    ChoiceReader<InputKind> reader =
        ChoiceReader.of(InputKind.EDGE_HEIGHTS, InputWords.name(InputKind.EDGE_HEIGHTS));
    for (InputKind kind : InputKind.values()) {
      if (kind.hasBetterWay() && kind != InputKind.EDGE_HEIGHTS) {
        reader = reader.or(kind, InputWords.name(kind));
      }
    }
    return reader;
  }

  /** Empty if the option was not given. */
  static Set<InputKind> of(CommandInput given, ShellCommand command) {
    return given.text(BETTER).map(typed -> read(typed, command)).orElse(Set.of());
  }

  private static Set<InputKind> read(String typed, ShellCommand command) {
    Set<InputKind> kinds = EnumSet.noneOf(InputKind.class);
    for (String name : typed.split(",")) {
      Reading<InputKind> read = KINDS.read(name.strip());
      read.as(kinds::add);
      read.refusal()
          .ifPresent(
              reason -> {
                throw UsageError.refused(command, reason);
              });
    }
    return kinds;
  }
}
