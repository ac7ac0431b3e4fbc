package thwartwise.record;

import java.util.Locale;

/** What was changed, added or lost among the pages of records: all messages in one place. */
public final class PaperFault {
  private static final String COPY = " Put it back from a copy.";

  private PaperFault() {}

  public static String changed(int number, String file) {
    return message("The page %s of record %d was changed after it was kept." + COPY, file, number);
  }

  public static String missing(int number, String file) {
    return message("The page %s of record %d is gone." + COPY, file, number);
  }

  public static String unexpected(String file) {
    return message("The page %s was added: no record vouches for it. Do not rely on it.", file);
  }

  /** A boat whose records are all gone. */
  public static String missingBoat(String folder) {
    return message(
        "The records of this boat are gone: the list of boats (boats.list) names the folder %s."
            + " Put it back from a copy; if that was meant, take its line out of the list.",
        folder);
  }

  public static String missingBoatsList() {
    return "The list of boats (boats.list) is lost: whether the records of another boat are gone"
        + " cannot be told. Put it back from a copy; otherwise the next inspection begins it anew.";
  }

  private static String message(String format, Object... parts) {
    return String.format(Locale.ROOT, format, parts);
  }
}
