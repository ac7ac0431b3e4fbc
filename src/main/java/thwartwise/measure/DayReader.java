package thwartwise.measure;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** Reads a day in the one order nobody mistakes: year, month, day; or the word today. */
public final class DayReader {
  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");

  private final LocalDate today;

  public DayReader(LocalDate today) {
    this.today = today;
  }

  public Reading<LocalDate> read(String typed) {
    String plain = PlainInput.isTooLong(typed) ? "" : PlainInput.of(typed);
    if (plain.equals("today")) {
      return Reading.understood(today, today.toString());
    }
    return DAY.matcher(plain).matches() ? calendar(typed, plain) : notADay(typed);
  }

  private static Reading<LocalDate> calendar(String typed, String plain) {
    try {
      LocalDate day = LocalDate.parse(plain);
      return Reading.understood(day, day.toString());
    } catch (DateTimeException noSuchDay) {
      return notADay(typed);
    }
  }

  private static Reading<LocalDate> notADay(String typed) {
    return Reading.refused(
        QuotedText.of(typed) + " is not a day. Type year-month-day such as 2026-05-02, or today.");
  }
}
