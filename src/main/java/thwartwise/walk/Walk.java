package thwartwise.walk;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The conversation that measures a whole boat, as a pure function of the answers given so far. Keep
 * the list of answers and nothing is lost: the same list always leads to the same question or boat.
 */
public final class Walk {
  /** Said before question one. */
  public static final String OPENING = Opening.TEXT;

  private final BoatScript script;

  private Walk(BoatScript script) {
    this.script = script;
  }

  /**
   * @param today what the word {@code today} means, and the day no test may lie after
   */
  public static Walk on(LocalDate today) {
    return new Walk(new BoatScript(today));
  }

  /** The question to ask now, or the boat. */
  public Step next(List<Answer> answers) {
    Played played = play(answers);
    return played
        .open()
        .<Step>map(open -> new Step.Ask(open.entry().question(), misfit(played, open)))
        .orElseGet(() -> new Step.Done(played.boat().orElseThrow(), leftOver(played)));
  }

  /** Takes one typed line: an answer to the question {@link #next} gives, or one of the words. */
  public Reply take(List<Answer> answers, String typed) {
    Played played = play(answers);
    String word = typed.length() > 40 ? "" : typed.strip().toLowerCase(Locale.ROOT);
    return switch (word) {
      case "back" -> back(played);
      case "list" -> new Reply.Listed(listed(played));
      case "why", "help", "?" -> new Reply.Explained(explained(played));
      case "stop" -> new Reply.Stopped(stopped(played));
      default -> answered(played, typed);
    };
  }

  private Played play(List<Answer> answers) {
    return Played.of(script::boat, answers);
  }

  private static Reply answered(Played played, String typed) {
    return played
        .open()
        .map(open -> open.entry())
        .map(entry -> read(played, entry, typed))
        .orElseGet(() -> new Reply.Refused(FINISHED));
  }

  private static <T> Reply read(Played played, Entry<T> entry, String typed) {
    var reading = entry.read(typed);
    if (reading instanceof thwartwise.measure.Reading.Refused<T> refused) {
      return new Reply.Refused(refused.reason());
    }
    String text = ((thwartwise.measure.Reading.Understood<T>) reading).text();
    return new Reply.Accepted(played.with(entry, typed), entry.subject() + ": " + text);
  }

  private static Reply back(Played played) {
    if (played.given().isEmpty()) {
      return new Reply.Refused("This is the first question; there is nothing to go back to.");
    }
    Given last = played.given().get(played.given().size() - 1);
    return new Reply.WentBack(played.without(last), "Asked again. You had: " + last.line());
  }

  private static String listed(Played played) {
    if (played.given().isEmpty()) {
      return "No answers yet.";
    }
    return IntStream.range(0, played.given().size())
        .mapToObj(i -> String.format(Locale.ROOT, "%3d. %s", i + 1, played.given().get(i).line()))
        .collect(Collectors.joining("\n"));
  }

  private static String explained(Played played) {
    return played
        .open()
        .map(open -> String.join("\n", open.entry().question().help()))
        .orElse(FINISHED);
  }

  private static String stopped(Played played) {
    int count = played.given().size();
    return "Stopped. Your " + count + (count == 1 ? " answer is kept." : " answers are kept.");
  }

  private static Optional<String> misfit(Played played, Unanswered open) {
    return open.misfit().map(reason -> "An answer kept from before does not fit. " + reason);
  }

  private static Optional<String> leftOver(Played played) {
    return Optional.of(played.rest())
        .filter(rest -> !rest.isEmpty())
        .map(rest -> "Answers kept from before that no question asked for: " + rest.size() + ".");
  }

  private static final String FINISHED =
      "Every question is answered. Type back to return to the last one, or list to see them all.";
}
