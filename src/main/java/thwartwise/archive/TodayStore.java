package thwartwise.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** What was asked and answered before going out, by its moment, beside the records of the boat. */
record TodayStore(Path folder) {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("'today-'uuuu-MM-dd'T'HHmmss", Locale.ROOT);

  /** None is ever written over; a second one in the same moment gets a number. */
  Path add(OffsetDateTime moment, String text) {
    // Two at once would take the same number.
    return StoreLock.holding(folder.getParent(), () -> added(moment, text));
  }

  private Path added(OffsetDateTime moment, String text) {
    String wanted = MOMENT.format(moment);
    Path file = folder.resolve(wanted + ".txt");
    for (int next = 2; Files.exists(file); next++) {
      file = folder.resolve(wanted + "-" + next + ".txt");
    }
    AtomicFile.write(file, text);
    return file;
  }
}
