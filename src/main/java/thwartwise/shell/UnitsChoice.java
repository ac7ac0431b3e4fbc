package thwartwise.shell;

import thwartwise.boat.Boat;
import thwartwise.measure.PrintableText;
import thwartwise.measure.UnitSystem;
import thwartwise.record.RecordEntry;

/** The units for one run, instead of those in which the boat was measured. */
final class UnitsChoice {
  static final OptionWord UNITS =
      new OptionWord(
          "units", "UNITS", "metric or feet, instead of those it was measured in", false);

  private UnitsChoice() {}

  static Boat of(Boat boat, CommandInput given, ShellCommand command) {
    return given.text(UNITS).map(typed -> boat.in(system(typed, command))).orElse(boat);
  }

  static RecordEntry of(RecordEntry record, CommandInput given, ShellCommand command) {
    return given.text(UNITS).map(typed -> record.in(system(typed, command))).orElse(record);
  }

  /** The units for a page that has none of its own. */
  static UnitSystem defaultSystem(CommandInput given, ShellCommand command) {
    return given.text(UNITS).map(typed -> system(typed, command)).orElse(UnitSystem.METRIC);
  }

  private static UnitSystem system(String typed, ShellCommand command) {
    return switch (typed) {
      case "metric" -> UnitSystem.METRIC;
      case "feet" -> UnitSystem.FEET_INCHES_POUNDS;
      default ->
          throw UsageError.refused(
              command, "--units is metric or feet, not " + PrintableText.excerpt(typed) + ".");
    };
  }
}
