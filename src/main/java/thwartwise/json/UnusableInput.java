package thwartwise.json;

/**
 * A file that cannot be read or written: one line for a person with where, what was there, what was
 * wanted and what to do.
 */
public final class UnusableInput extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String key;

  public UnusableInput(String message) {
    this(message, "");
  }

  /**
   * A fault of one key.
   *
   * @param key what in the file it is about
   */
  UnusableInput(String message, String key) {
    super(message);
    this.key = key;
  }

  public UnusableInput(String message, Throwable cause) {
    super(message, cause);
    this.key = "";
  }

  /** The key whose value is missing or wrong; blank where the fault is not about one key. */
  public String key() {
    return key;
  }
}
