package thwartwise.measure;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Reads a day as people write one: year, month, day; day and month with the month as a word; or a
 * word such as yesterday or last Saturday, counted back from today. Of two numbers that may both be
 * the month it takes the order that lies in the past, and asks where both do.
 */
public final class DayReader {
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern DOTS = Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4})");
  private static final Pattern EITHER = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{4})");
  private static final Pattern DAY_MONTH =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?\\.? (?:of )?([a-z]{3,9})\\.?,? (\\d{4})");
  private static final Pattern MONTH_DAY =
      Pattern.compile("([a-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4})");
  private static final Pattern AGO =
      Pattern.compile("(\\d{1,3}|an?|one|two|three) (day|week|month|year)s? ago");
  private static final Pattern WEEKDAY = Pattern.compile("(?:(?:last|on) )?([a-z]{3,9})");

  private static final Map<String, ChronoUnit> UNITS =
      Map.of(
          "day", ChronoUnit.DAYS,
          "week", ChronoUnit.WEEKS,
          "month", ChronoUnit.MONTHS,
          "year", ChronoUnit.YEARS);

  private final LocalDate today;

  public DayReader(LocalDate today) {
    this.today = today;
  }

  public Reading<LocalDate> read(String typed) {
    String plain =
        NormalizedInput.isTooLong(typed) ? "" : NormalizedInput.of(typed).replaceAll("\\s+", " ");
    return Stream.<Function<String, Optional<Reading<LocalDate>>>>of(
            this::word,
            this::ago,
            this::weekday,
            p -> written(YEAR_FIRST, p, 1, 2, 3),
            p -> written(DOTS, p, 3, 2, 1),
            p -> written(DAY_MONTH, p, 3, 2, 1),
            p -> written(MONTH_DAY, p, 3, 1, 2),
            p -> eitherOrder(typed, p))
        .map(reader -> reader.apply(plain))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseGet(() -> notADay(typed));
  }

  private Optional<Reading<LocalDate>> word(String plain) {
    return switch (plain) {
      case "today" -> Optional.of(understood(today));
      case "yesterday" -> Optional.of(understood(today.minusDays(1)));
      default -> Optional.empty();
    };
  }

  private Optional<Reading<LocalDate>> ago(String plain) {
    Matcher ago = AGO.matcher(plain);
    return ago.matches()
        ? Optional.of(understood(today.minus(count(ago.group(1)), UNITS.get(ago.group(2)))))
        : Optional.empty();
  }

  private static int count(String typed) {
    return switch (typed) {
      case "a", "an", "one" -> 1;
      case "two" -> 2;
      case "three" -> 3;
      default -> Integer.parseInt(typed);
    };
  }

  /** The last such day of the week before today; today's own name means a week ago. */
  private Optional<Reading<LocalDate>> weekday(String plain) {
    Matcher word = WEEKDAY.matcher(plain);
    return word.matches()
        ? Arrays.stream(DayOfWeek.values())
            .filter(
                day -> begins(day.getDisplayName(TextStyle.FULL, Locale.ENGLISH), word.group(1)))
            .findFirst()
            .map(day -> understood(today.with(TemporalAdjusters.previous(day))))
        : Optional.empty();
  }

  private static boolean begins(String name, String typed) {
    return name.toLowerCase(Locale.ROOT).startsWith(typed);
  }

  private Optional<Reading<LocalDate>> written(
      Pattern pattern, String plain, int year, int month, int day) {
    Matcher matcher = pattern.matcher(plain);
    return matcher.matches()
        ? month(matcher.group(month))
            .flatMap(m -> calendar(matcher.group(year), m, matcher.group(day)))
            .map(this::understood)
        : Optional.empty();
  }

  private static Optional<Integer> month(String typed) {
    return Character.isDigit(typed.charAt(0))
        ? Optional.of(Integer.parseInt(typed))
        : Arrays.stream(Month.values())
            .filter(m -> begins(m.getDisplayName(TextStyle.FULL, Locale.ENGLISH), typed))
            .findFirst()
            .map(Month::getValue);
  }

  private static Optional<LocalDate> calendar(String year, int month, String day) {
    try {
      return Optional.of(LocalDate.of(Integer.parseInt(year), month, Integer.parseInt(day)));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** 5/11 is in November to one reader and in May to another. */
  private Optional<Reading<LocalDate>> eitherOrder(String typed, String plain) {
    Matcher matcher = EITHER.matcher(plain);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String year = matcher.group(3);
    List<LocalDate> days =
        Stream.of(
                calendar(year, Integer.parseInt(matcher.group(2)), matcher.group(1)),
                calendar(year, Integer.parseInt(matcher.group(1)), matcher.group(2)))
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    List<LocalDate> over = days.stream().filter(day -> !day.isAfter(today)).toList();
    List<LocalDate> likely = over.isEmpty() ? days : over;
    return switch (likely.size()) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(understood(likely.get(0)));
      default -> Optional.of(Reading.refused(whichMonth(typed, likely)));
    };
  }

  private static String whichMonth(String typed, List<LocalDate> days) {
    return "%s may be %s or %s: which is the month? Type %s or %s."
        .formatted(
            PrintableText.excerpt(typed),
            inWords(days.get(0)),
            inWords(days.get(1)),
            days.get(0),
            days.get(1));
  }

  private static String inWords(LocalDate day) {
    return day.getDayOfMonth()
        + " "
        + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH)
        + " "
        + day.getYear();
  }

  private Reading<LocalDate> understood(LocalDate day) {
    return Reading.understood(day, day.toString());
  }

  private static Reading<LocalDate> notADay(String typed) {
    return Reading.refused(
        PrintableText.excerpt(typed)
            + " is not a day. Type year-month-day such as 2026-05-02, or today, yesterday, last"
            + " Saturday, 2 May 2026.");
  }
}
