package thwartwise.files.boat;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PrintableText;

/** Since when a battery is used. */
final class BatteryDate {
  static final String KEY = "since";
  private static final String SINCE =
      "Write the day it was first used, as in 2024-05-01, or leave it out.";

  private BatteryDate() {}

  static Optional<LocalDate> read(ObjectReader battery) {
    return battery.optional(KEY).map(value -> day(value.words(SINCE), battery));
  }

  private static LocalDate day(String typed, ObjectReader battery) {
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeException e) {
      throw battery
          .spot()
          .fault(
              "\""
                  + KEY
                  + "\" is "
                  + PrintableText.quoted(typed)
                  + ", which is not a day. "
                  + SINCE);
    }
  }
}
