package thwartwise.walk.engine;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.DayReader;
import thwartwise.measure.Dimension;
import thwartwise.measure.NameReader;
import thwartwise.measure.NumberReader;
import thwartwise.measure.PrintableText;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitSystem;
import thwartwise.measure.UnknownAnswer;
import thwartwise.measure.YesOrNo;
import thwartwise.measured.Property;

/** Questions for a word, a number or a day. */
public final class WordQuestions {
  /** Commands that work at every question, so no name may be one of them. */
  public static final List<String> OBEYED =
      List.of("again", "back", "change", "help", "list", "show", "skip", "stop", "why");

  /** The word that confirms an unlikely value. */
  private static final String KEEP = "keep";

  private static final int LONGEST_NAME = 30;
  private static final int LONGEST_REMARK = 60;

  /** The room for a name in a prompt. */
  private static final int SHORT = 20;

  private WordQuestions() {}

  public static QuestionDefinition<String> name(String key, String subject, List<String> taken) {
    return label(key, subject, taken).unless(WordQuestions::noName);
  }

  /** A name that may be a figure. */
  public static QuestionDefinition<String> label(String key, String subject, List<String> taken) {
    return QuestionDefinition.of(
            key,
            subject,
            "",
            "a name of at most " + LONGEST_NAME + " characters",
            new NameReader(LONGEST_NAME)::read)
        .unless(WordQuestions::obeyed)
        .unless(name -> twice(name, taken));
  }

  private static Optional<String> noName(String typed) {
    return isAnotherAnswer(typed)
        ? Optional.of(
            PrintableText.excerpt(typed)
                + " is an answer to another question, and a name is asked for. Type a name, or"
                + " back.")
        : Optional.empty();
  }

  /**
   * Whether the name looks like the answer to another question; then lines and questions are out of
   * step.
   */
  public static boolean isAnotherAnswer(String typed) {
    return YesOrNo.read(typed).refusal().isEmpty()
        || UnknownAnswer.matches(typed)
        || typed.strip().equalsIgnoreCase(KEEP)
        || NumberReader.whole(typed).refusal().isEmpty()
        || isMeasured(typed)
        || typed.matches("\\d{4}-\\d{2}-\\d{2}");
  }

  private static boolean isMeasured(String typed) {
    return Arrays.stream(Dimension.values())
        .anyMatch(d -> new QuantityReader(d, UnitSystem.METRIC).read(typed).refusal().isEmpty());
  }

  public static QuestionDefinition<String> remark(String key, String subject) {
    return QuestionDefinition.of(
            key,
            subject,
            "",
            "a few words, at most " + LONGEST_REMARK + " characters",
            typed -> said(typed, LONGEST_REMARK))
        .unless(WordQuestions::obeyed);
  }

  /**
   * What something is, in a word or two; yes alone is refused.
   *
   * @param what completes "Type what"
   */
  public static QuestionDefinition<String> name(String key, String subject, String what) {
    return QuestionDefinition.of(
            key,
            subject,
            "or no",
            "a word or two, at most " + LONGEST_NAME + " characters, or no",
            typed -> said(typed, LONGEST_NAME))
        .unless(WordQuestions::obeyed)
        .unless(typed -> namesNothing(typed, what));
  }

  private static Optional<String> namesNothing(String typed, String what) {
    return YesOrNo.read(typed).refusal().isEmpty()
        ? Optional.of(
            "%s names nothing. Type what %s; or no.".formatted(PrintableText.excerpt(typed), what))
        : Optional.empty();
  }

  /** "Don't know" leaves it unsaid. */
  private static Reading<String> said(String typed, int longest) {
    return UnknownAnswer.matches(typed)
        ? Reading.refused(PrintableText.excerpt(typed) + " says nothing. Type what is so.")
        : new NameReader(longest).read(typed);
  }

  public static QuestionDefinition<Boolean> yesNo(String key, String subject) {
    return QuestionDefinition.of(key, subject, "yes, no", "yes or no", YesOrNo::read)
        .choices(List.of("yes", "no"));
  }

  /** A yes-or-no value of the table. */
  public static QuestionDefinition<Boolean> yesNo(
      Property<?, Boolean> property, QuestionTopic topic) {
    return yesNo(topic.key(property), topic.subject(property)).worded(property);
  }

  public static QuestionDefinition<Integer> whole(String key, String subject, int least, int most) {
    return QuestionDefinition.of(
            key,
            subject,
            least + " to " + most,
            "a whole number from " + least + " to " + most,
            NumberReader::whole)
        .unless(n -> n >= least && n <= most ? Optional.empty() : outside(n, least, most));
  }

  public static <T> QuestionDefinition<T> choice(
      String key, String subject, ChoiceReader<T> choices) {
    return QuestionDefinition.of(
            key, subject, choices.words(), "one of: " + choices.words(), choices::read)
        .choices(choices.all());
  }

  /** A value of the table with a closed choice of words. */
  public static <T> QuestionDefinition<T> choice(
      Property<?, T> property, QuestionTopic topic, ChoiceReader<T> choices) {
    return choice(topic.key(property), topic.subject(property), choices).worded(property);
  }

  /** One of the names given before; they are too long for a prompt. */
  public static QuestionDefinition<String> oneOf(String key, String subject, List<String> names) {
    ChoiceReader<String> choices = among(names);
    return QuestionDefinition.of(
            key, subject, "its name", "one of: " + choices.words(), choices::read)
        .choices(names);
  }

  private static ChoiceReader<String> among(List<String> names) {
    ChoiceReader<String> choices = ChoiceReader.of(names.get(0), names.get(0));
    for (String name : names.subList(1, names.size())) {
      choices = choices.or(name, name);
    }
    return choices;
  }

  public static QuestionDefinition<LocalDate> day(String key, String subject, LocalDate today) {
    return QuestionDefinition.of(
            key,
            subject,
            "year-month-day, or today",
            "a day as year-month-day, such as 2026-05-02, or today",
            new DayReader(today)::read)
        .choices(List.of("today", "yesterday"))
        // "Yesterday" is another day when the walk is resumed later.
        .storedAs(LocalDate::toString);
  }

  /** A name in quotes, short enough for a prompt. */
  public static String quoted(String name) {
    int length = name.codePointCount(0, name.length());
    String shown =
        length <= SHORT ? name : name.substring(0, name.offsetByCodePoints(0, SHORT - 1)) + "…";
    return "\"" + shown + "\"";
  }

  private static Optional<String> outside(int typed, int least, int most) {
    return Optional.of(
        typed + " is not between " + least + " and " + most + ". Type a whole number in between.");
  }

  private static Optional<String> obeyed(String name) {
    // Such a name could never be typed again.
    return OBEYED.contains(name.toLowerCase(Locale.ROOT))
        ? Optional.of(
            PrintableText.excerpt(name) + " is a command of this walk. Type another name.")
        : Optional.empty();
  }

  /** The usual name of a thing, with a number if the name is taken. */
  public static String freeName(String usual, List<String> taken) {
    String free = usual;
    for (int number = 2; taken.stream().anyMatch(free::equalsIgnoreCase); number++) {
      free = usual + " " + number;
    }
    return free;
  }

  private static Optional<String> twice(String name, List<String> taken) {
    return taken.stream().anyMatch(name::equalsIgnoreCase)
        ? Optional.of(
            PrintableText.excerpt(name) + " is already the name of another. Type another name.")
        : Optional.empty();
  }

  /**
   * The key of a question about one measurement. A new measurement is a new question, so the
   * earlier answer does not count for it.
   */
  public static String bound(String key, String measured) {
    return key + "#" + Integer.toHexString(measured.hashCode());
  }
}
