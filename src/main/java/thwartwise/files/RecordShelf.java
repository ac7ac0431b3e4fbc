package thwartwise.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Paper;

/** The records of one boat. The name of a record is its moment and a piece of its own hash. */
record RecordShelf(Path folder) {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss", Locale.ROOT);

  Path add(InspectionRecord inspection, Function<String, List<Paper>> papers) {
    String json = RecordFile.write(inspection);
    String name = freeName(MOMENT.format(inspection.date()) + "-" + Digest.of(json), json);
    // The pages first: a record that is there has its pages.
    papers
        .apply(name)
        .forEach(p -> AtomicFile.write(folder.resolve(name + p.ending()), p.content()));
    Path file = folder.resolve(name + ".json");
    AtomicFile.write(file, json);
    return file;
  }

  /** The name itself, or with a number when another record already has it. */
  private String freeName(String wanted, String json) {
    String name = wanted;
    for (int next = 2; taken(folder.resolve(name + ".json"), json); next++) {
      name = wanted + "-" + next;
    }
    return name;
  }

  private static boolean taken(Path file, String json) {
    return Files.exists(file)
        && !InputFile.text(file, Format.RECORD.noun(), InputFile.RECORD_BYTES).equals(json);
  }
}
