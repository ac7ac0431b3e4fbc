package thwartwise.shell;

import org.springframework.shell.core.command.CommandExecutionException;
import thwartwise.boat.UnusableBoat;
import thwartwise.files.UnusableInput;

/** What went wrong, in one line for a person; never a stack trace. */
record Failure(String line) {

  static Failure of(Throwable thrown) {
    Throwable cause = unwrapped(thrown);
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

  /** A record is the last thing any command writes, so none exists when something fails. */
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
