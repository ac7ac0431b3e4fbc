package thwartwise.measure;

/** Reads yes or no. */
public final class YesOrNo {

  private YesOrNo() {}

  /** Whether the text means yes; everything else does not. */
  public static boolean isYes(String typed) {
    return read(typed) instanceof Reading.Understood<Boolean> said && said.value();
  }

  public static Reading<Boolean> read(String typed) {
    String plain = NormalizedInput.isTooLong(typed) ? "" : NormalizedInput.of(typed);
    return switch (plain) {
      case "y", "yes", "yeah", "yep", "yes please" -> Reading.understood(true, "yes");
      case "n", "no", "none", "nope", "nothing", "never", "-", "not at all" ->
          Reading.understood(false, "no");
      default ->
          Reading.refused(PrintableText.excerpt(typed) + " is neither yes nor no. Type yes or no.");
    };
  }
}
