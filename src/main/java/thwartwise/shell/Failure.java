package thwartwise.shell;

import java.util.concurrent.CancellationException;
import org.springframework.shell.core.command.CommandExecutionException;
import thwartwise.hull.UnusableBoat;
import thwartwise.json.UnusableInput;

/** What went wrong, in one line for a person; never a stack trace. */
record Failure(String line) {

  static Failure of(Throwable thrown) {
    Throwable cause = unwrapped(thrown);
    if (cause instanceof CancellationException) {
      return new Failure("Stopped. Nothing was written.");
    }
    if (cause instanceof OutOfMemoryError) {
      return new Failure(
          "There is not enough memory for this boat; no record was written. Give Java more, as in"
              + " java -Xmx4g -jar thwartwise.jar, or give the boat fewer stations and places.");
    }
    if (cause instanceof StackOverflowError) {
      return new Failure(
          "This boat has too many parts to be worked out; no record was written. Give the boat file"
              + " fewer places, chambers or pieces of kit.");
    }
    return isForPeople(cause) ? new Failure(oneLine(cause.getMessage())) : ourOwnFault(cause);
  }

  private static Throwable unwrapped(Throwable thrown) {
    boolean wrapped = thrown instanceof CommandExecutionException && thrown.getCause() != null;
    return wrapped ? thrown.getCause() : thrown;
  }

  private static boolean isForPeople(Throwable cause) {
    return cause instanceof UsageError
        || cause instanceof UnusableInput
        || cause instanceof UnusableBoat;
  }

  /**
   * The message for an internal error. A command writes its record last, so there is none when
   * something fails.
   */
  private static Failure ourOwnFault(Throwable cause) {
    String said = cause.getMessage() == null ? "" : " (" + oneLine(cause.getMessage()) + ")";
    return new Failure(
        "Something went wrong inside thwartwise: %s%s; no record was written. Please report this with the boat file."
            .formatted(cause.getClass().getSimpleName(), said));
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\R\\s*", " ");
  }
}
