package thwartwise.record;

import java.util.Locale;
import thwartwise.measure.PrintableText;
import thwartwise.record.Chain.ChainList;
import thwartwise.record.Chain.StoredRecord;

/** What was changed, added or lost in a chain of records: all messages in one place. */
final class ChainFault {
  private static final String COPY = " Put it back from a copy.";

  private ChainFault() {}

  static String missingList(int last) {
    return message(
        "The list of records (chain.list) is lost: whether a record after number %d was lost with"
            + " it"
            + " cannot be told."
            + COPY,
        last);
  }

  static String damagedLine(int line) {
    return message("Line %d of the list of records (chain.list) is damaged." + COPY, line);
  }

  static String restartedList(int number) {
    return message(
        "The list of records was lost or damaged before record %d was kept: whether a record was"
            + " lost with it cannot be told.",
        number);
  }

  static String missingRecord(ChainList.Line line) {
    return message(
        "Record %d (%s) is lost: it is in the list and not in the folder." + COPY,
        line.number(),
        line.file());
  }

  static String missingRecordAndLine(int number) {
    return message(
        "Record %d is lost, and its line in the list too: a record of a higher number is there."
            + COPY,
        number);
  }

  static String renamed(ChainList.Line line, String file) {
    return message(
        "Record %d was renamed from %s to %s. Give it its name back.",
        line.number(), line.file(), PrintableText.of(file));
  }

  static String changed(int number, String file) {
    return message(
        "Record %d (%s) was changed after it was saved: its content does not match its hash."
            + COPY,
        number,
        file);
  }

  static String rewritten(int number, String file) {
    return message(
        "Record %d (%s) was changed and its hash made anew: it does not fit the list." + COPY,
        number,
        file);
  }

  static String changedLine(int number) {
    return message(
        "The line of record %d in the list was changed: the record fits its own hash, and record %d"
            + " follows it."
            + COPY,
        number,
        number + 1);
  }

  static String removedLine(int number, String file) {
    return message(
        "The line of record %d (%s) was taken out of the list: record %d follows it." + COPY,
        number,
        file,
        number + 1);
  }

  static String wrongNumber(ChainList.Line line, int says) {
    return message(
        "The list calls %s number %d, and the record says %d: one of them was changed." + COPY,
        line.file(),
        line.number(),
        says);
  }

  static String brokenLink(int number, String file) {
    return message(
        "Record %d (%s) does not name record %d as the one before it: one of them was changed or"
            + " put in its place."
            + COPY,
        number,
        file,
        number - 1);
  }

  static String duplicateNumber(int number, String file) {
    return message(
        "%s was added: another record is number %d already.", PrintableText.of(file), number);
  }

  static String unlistedRecord(int number, String file) {
    return message(
        "Record %d (%s) was added: it follows the last one but is not in the list. If the program"
            + " was stopped while keeping it, the next inspection takes it in.",
        number, file);
  }

  static String added(StoredRecord record) {
    String what =
        record
            .unreadable()
            .map(why -> "it is not in the list and cannot be read as a record")
            .orElse("it is not in the list, and no record follows it");
    String boat =
        record.boat().map(name -> " It speaks of " + PrintableText.quoted(name) + ".").orElse("");
    return message("%s was added: %s.", PrintableText.of(record.file()), what) + boat;
  }

  static String unreadable(StoredRecord record) {
    return message("%s cannot be read as a record.", PrintableText.of(record.file()));
  }

  private static String message(String format, Object... parts) {
    return String.format(Locale.ROOT, format, parts);
  }
}
