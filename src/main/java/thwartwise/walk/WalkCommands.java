package thwartwise.walk;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.ReplayResult;
import thwartwise.walk.engine.ReplayResult.AcceptedAnswer;
import thwartwise.walk.engine.Reply;

/** The replies to the commands that work at every question, such as back and list. */
final class WalkCommands {
  private static final Pattern CHANGE = Pattern.compile("change\\s*(\\d{0,4})");

  private static final String NO_SKETCH =
      "There is no sketch for this one; why tells how to measure it.";

  private static final String GOVERNS =
      "The units decide what all later numbers mean. Go back to them with back, or start anew.";

  private WalkCommands() {}

  /** The reply, or empty if the word is no command. */
  static Optional<Reply> reply(ReplayResult played, String word) {
    Matcher change = CHANGE.matcher(word);
    if (change.matches()) {
      return Optional.of(change(played, change.group(1)));
    }
    return switch (word) {
      case "back" -> Optional.of(back(played));
      case "list" -> Optional.of(new Reply.Listed(listed(played)));
      case "help start" -> Optional.of(new Reply.Explained(Introduction.REST));
      case "why", "help", "?" -> Optional.of(new Reply.Explained(explained(played)));
      case "show" -> Optional.of(new Reply.Explained(shown(played)));
      case "skip" -> Optional.of(skipped(played));
      case "stop" -> Optional.of(new Reply.Stopped(stopped(played)));
      default -> Optional.empty();
    };
  }

  private static Reply back(ReplayResult played) {
    int count = played.accepted().size();
    return count == 0
        ? new Reply.Refused("This is the first question; there is nothing to go back to.")
        : open(played, played.accepted().get(count - 1));
  }

  private static Reply change(ReplayResult played, String digits) {
    int number = digits.isEmpty() ? 0 : Integer.parseInt(digits);
    if (number < 1 || number > played.accepted().size()) {
      return new Reply.Refused(
          "Type change and the number of an answer, as in change 2; list shows the numbers.");
    }
    AcceptedAnswer wanted = played.accepted().get(number - 1);
    return wanted.governsTheRest() && number < played.accepted().size()
        ? new Reply.Refused(GOVERNS)
        : open(played, wanted);
  }

  private static Reply open(ReplayResult played, AcceptedAnswer wanted) {
    return new Reply.WentBack(played.without(wanted), "Asked again. You had: " + wanted.line());
  }

  private static String listed(ReplayResult played) {
    if (played.accepted().isEmpty()) {
      return "No answers yet.";
    }
    // Every number has a blank before it, so that a terminal indents the rest of a long line.
    int width = Math.max(3, String.valueOf(played.accepted().size()).length() + 1);
    return IntStream.range(0, played.accepted().size())
        .mapToObj(i -> line(width, i + 1, played.accepted().get(i)))
        .collect(Collectors.joining("\n"));
  }

  private static String line(int width, int number, AcceptedAnswer answer) {
    return String.format(Locale.ROOT, "%" + width + "d. %s", number, answer.line());
  }

  private static String explained(ReplayResult played) {
    return played
        .open()
        .map(open -> String.join("\n", open.entry().question().help()))
        .orElse(TypedAnswer.FINISHED);
  }

  private static String shown(ReplayResult played) {
    return played
        .open()
        .map(open -> open.entry().question().sketch())
        .map(sketch -> sketch.isEmpty() ? NO_SKETCH : String.join("\n", sketch))
        .orElse(TypedAnswer.FINISHED);
  }

  private static Reply skipped(ReplayResult played) {
    Optional<Question> question = played.open().map(open -> open.entry().question());
    return question.isPresent() && question.get().skipped().isEmpty()
        ? new Reply.Refused(
            question.get().whenOmitted() + " Type stop to keep all answers and come back with it.")
        : TypedAnswer.reply(played, "");
  }

  private static String stopped(ReplayResult played) {
    long count = played.accepted().size() + played.rest().size();
    return "Stopped. Your " + (count == 1 ? "answer is kept." : count + " answers are kept.");
  }
}
