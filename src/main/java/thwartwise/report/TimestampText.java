package thwartwise.report;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** A date and time as people write them, with their own offset. */
public final class TimestampText {
  private static final DateTimeFormatter WORDS =
      DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK);

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

  private TimestampText() {}

  static String day(LocalDate date) {
    return DAY.format(date);
  }

  public static String of(OffsetDateTime date) {
    String offset = date.getOffset().getTotalSeconds() == 0 ? "" : date.getOffset().getId();
    return WORDS.format(date) + " (UTC" + offset + ")";
  }
}
