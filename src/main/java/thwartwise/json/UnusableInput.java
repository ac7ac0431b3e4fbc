package thwartwise.json;

/**
 * A file that cannot be read or written: one line for a person, saying where, what was there, what
 * was wanted and what to do.
 */
public final class UnusableInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public UnusableInput(String message) {
    super(message);
  }

  public UnusableInput(String message, Throwable cause) {
    super(message, cause);
  }
}
